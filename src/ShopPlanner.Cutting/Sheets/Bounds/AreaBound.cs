using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>The least cost at which stock of enough area can be had.</summary>
internal static class AreaBound
{
    public static long Of(SheetModel model, long area)
    {
        var cost = 0.0;
        foreach (var stock in model.Stocks.OrderBy(s => (double)s.Cost / s.Area))
        {
            var used = Math.Min(area, stock.Area * stock.Limit);
            cost += (double)used / stock.Area * stock.Cost;
            area -= used;
        }
        return Measures.DivideUp((long)Math.Ceiling(cost - 1e-6), model.CostStep) * model.CostStep;
    }
}
