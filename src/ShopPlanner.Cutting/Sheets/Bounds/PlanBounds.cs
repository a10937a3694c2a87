using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>What no plan that places all of a model's pieces can be below.</summary>
/// <param name="Cost">In the problem's measure.</param>
/// <param name="Price">In the search's measure.</param>
internal sealed record PlanBounds(long Cost, long Price)
{
    /// <summary>From inequalities that every complete plan keeps.</summary>
    public static PlanBounds Of(SheetModel model, IReadOnlyList<CoverRow> rows) =>
        new(
            CoverCost.Whole(model, rows, [.. model.Stocks.Select(s => s.Cost)]),
            CoverCost.Whole(model, rows, [.. model.Stocks.Select(s => s.Price)])
        );

    /// <summary>Both hold, so the higher does.</summary>
    public PlanBounds Raised(PlanBounds other) => new(Math.Max(Cost, other.Cost), Math.Max(Price, other.Price));
}
