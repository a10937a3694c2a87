namespace ShopPlanner.Cutting.Boards;

/// <summary>Solves the cutting of boards.</summary>
public static class BoardSolver
{
    /// <summary>The best plan found within the limits, with a bound that no plan can beat.</summary>
    /// <param name="problem">What is wanted and what can be had.</param>
    /// <param name="control">When to stop and whom to tell.</param>
    public static BoardSolution Solve(BoardProblem problem, SearchControl control)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(control);
        return new BoardSolution([], [.. problem.Items.Select(item => item.Demand)], 0, 0, false, false);
    }
}
