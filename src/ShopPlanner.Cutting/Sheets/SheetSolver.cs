using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Steering;

namespace ShopPlanner.Cutting.Sheets;

/// <summary>
/// Cuts rectangles from sheets by edge-to-edge cuts at least cost; at equal cost by less new stock and more of the bin, then
/// by larger and fewer leftovers, then by fewer different settings. Always returns the best it has found when it is stopped.
/// </summary>
public static class SheetSolver
{
    /// <summary>Searches until cost equals bound or <paramref name="control"/> ends it. No time at all brings a first plan and no
    /// bound.</summary>
    /// <exception cref="ArgumentException">The problem breaks a rule noted on its members.</exception>
    public static SheetSolution Solve(SheetProblem problem, SearchControl control)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(control);
        using var clock = new SearchClock(control);
        return new Portfolio(SheetModel.From(problem), control, clock).Run();
    }
}
