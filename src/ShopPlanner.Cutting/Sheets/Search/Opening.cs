using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Steering;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>Which stock to open when a piece fits no sheet in work.</summary>
internal enum OpeningRule
{
    /// <summary>Least cost for its area, offcuts before new stock.</summary>
    CheapestArea,

    /// <summary>Least area, offcuts before new stock.</summary>
    Smallest,

    /// <summary>Largest.</summary>
    Largest,

    /// <summary>Any that may be opened.</summary>
    Random,
}

internal sealed class Opening(SheetModel model, RandomSource random)
{
    /// <summary>Index of a stock that holds the type and may be opened; less than zero for none.</summary>
    public int Choose(Packing now, int type, OpeningRule rule, long mostPrice)
    {
        var best = -1;
        var bestKey = double.MaxValue;
        foreach (var stock in model.Stocks)
        {
            if (!now.CanOpen(stock.Index, mostPrice) || !Takes(stock, type))
                continue;
            var key = Key(stock, rule);
            if (key < bestKey)
                (best, bestKey) = (stock.Index, key);
        }
        return best;
    }

    private bool Takes(StockType stock, int type) => model.Rule?.Takes(stock, type) ?? stock.Holds(model.Types[type]);

    private double Key(StockType stock, OpeningRule rule)
    {
        var offcutFirst = stock.FromBin ? 0.5 : 1;
        return rule switch
        {
            OpeningRule.CheapestArea => (double)stock.Price / stock.Area * offcutFirst,
            OpeningRule.Smallest => stock.Area * offcutFirst,
            OpeningRule.Largest => 1.0 / stock.Area,
            _ => random.Unit(),
        };
    }
}
