using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>First packings: insertion in several orders, fits and ways of opening stock.</summary>
internal sealed class Constructor(SheetModel model)
{
    private readonly Recreate recreate = new(model, new Chance(1));

    /// <summary>The best of all ways, as far as <paramref name="stop"/> lets it go; the first is always tried.</summary>
    public Packing Run(Func<bool> stop, Action<Packing> tell)
    {
        var best = Seeded();
        if (best is not null)
            tell(best);
        foreach (var manner in Manners())
        {
            if (best is not null && stop())
                break;
            var packing = Build(manner);
            if (best is null || IsBetter(packing, best))
                tell(best = packing);
        }
        return best!;
    }

    private Packing? Seeded()
    {
        if (new SeededPacking(model).Start() is not { } ledger)
            return null;
        recreate.Run(ledger, new Manner(PieceOrder.Area, 0, 0, false, FitWeights.Usual, OpeningRule.CheapestArea), long.MaxValue);
        ledger.Keep();
        return ledger.Now;
    }

    public static bool IsBetter(Packing a, Packing b) => a.LeftArea != b.LeftArea ? a.LeftArea < b.LeftArea : a.Price < b.Price;

    private Packing Build(in Manner manner)
    {
        var ledger = new Ledger(model);
        recreate.Run(ledger, manner, long.MaxValue);
        ledger.Keep();
        return ledger.Now;
    }

    private IEnumerable<Manner> Manners()
    {
        OpeningRule[] rules =
            model.Stocks.Length == 1
                ? [OpeningRule.CheapestArea]
                : [OpeningRule.CheapestArea, OpeningRule.Smallest, OpeningRule.Largest];
        foreach (var rule in rules)
        {
            foreach (var order in Enum.GetValues<PieceOrder>())
                yield return new Manner(order, 0, 0, false, FitWeights.Usual, rule);
            yield return new Manner(PieceOrder.Area, 0, 0, true, FitWeights.Usual, rule);
        }
    }
}
