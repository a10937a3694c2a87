using Google.OrTools.Sat;

namespace ShopPlanner.Scheduling.Exact;

/// <summary>What a run of the solver gave.</summary>
/// <param name="Starts">Of the best solution; null where none was found.</param>
/// <param name="Bound">No solution is better.</param>
/// <param name="IsProven">True where the solution is the best, or where it is certain that there is none.</param>
internal sealed record CpAnswer(int[]? Starts, long Bound, bool IsProven);

/// <summary>Runs the solver on a model.</summary>
internal static class CpRun
{
    /// <param name="model">With its goal.</param>
    /// <param name="others">Starts of what is no part of it.</param>
    /// <param name="settings">Of the solver.</param>
    /// <param name="cancel">Ends the run with the best so far.</param>
    public static CpAnswer Solve(StageModel model, int[]? others, string settings, CancellationToken cancel)
    {
        if (cancel.IsCancellationRequested)
            return new CpAnswer(null, 0, false);
        using var solver = new CpSolver { StringParameters = settings };
        using var stop = cancel.Register(solver.StopSearch);
        var status = solver.Solve(model.Model);
        return status switch
        {
            CpSolverStatus.Optimal => new CpAnswer(model.Read(solver, others), Bound(solver), true),
            CpSolverStatus.Feasible => new CpAnswer(model.Read(solver, others), Bound(solver), false),
            CpSolverStatus.Infeasible => new CpAnswer(null, 0, true),
            CpSolverStatus.ModelInvalid => throw new InvalidOperationException(model.Model.Validate()),
            _ => new CpAnswer(null, Bound(solver), false),
        };
    }

    // The solver counts in whole numbers; the allowance is for its telling them in floating point.
    private static long Bound(CpSolver solver) =>
        double.IsFinite(solver.BestObjectiveBound) ? (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6) : 0;
}
