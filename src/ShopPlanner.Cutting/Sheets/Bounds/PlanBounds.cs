using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>What no plan that places all of a model's pieces can be below.</summary>
/// <param name="Cost">In the problem's measure.</param>
/// <param name="Price">In the search's measure.</param>
internal sealed record PlanBounds(long Cost, long Price)
{
    public static PlanBounds Of(SheetModel model)
    {
        if (model.Pieces == 0)
            return new(0, 0);
        var rows = new ScaleBound(model).Rows();
        return new(
            CoverCost.Whole(model, rows, [.. model.Stocks.Select(s => s.Cost)]),
            CoverCost.Whole(model, rows, [.. model.Stocks.Select(s => s.Price)]));
    }
}
