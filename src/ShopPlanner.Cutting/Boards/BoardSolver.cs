using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Boards;

/// <summary>Solves the cutting of boards.</summary>
public static class BoardSolver
{
    private const int FirstDives = 3;
    private const double Randomization = 0.5;

    // Bound and relaxation this close, as a share of the total, steer a dive as well as if they met.
    private const double CloseEnough = 1e-4;

    /// <summary>
    /// The best plan found within the limits, with a bound that no plan can beat: as many pieces placed as the stock has room
    /// for, then least cost, then the best <see cref="BoardObjectives"/>. The bound is exact; what the search for these finds is
    /// only the best that a short time brings. No time at all brings a first plan and a bound by size.
    /// </summary>
    /// <param name="problem">What is wanted and what can be had.</param>
    /// <param name="control">When to stop and whom to tell.</param>
    public static BoardSolution Solve(BoardProblem problem, SearchControl control)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(control);
        var model = CuttingModel.Of(problem);
        var seeded = SeededStart.Build(model, problem);
        var search = new Search(model, control, First(model, seeded));
        using var pulse = search.Pulse();
        var reserve = PlanPolishing.Reserve(model, control.Time);
        search.KeepBack(reserve);
        search.Raise(DualPoint.BySize(model).Total);
        if (control.Time <= TimeSpan.Zero || (search.Proven && reserve == TimeSpan.Zero))
            return SolutionBuilder.Of(problem, search);
        using var relaxation = new Relaxation(search);
        relaxation.Add(StartPatterns.For(search));
        if (seeded is not null)
            relaxation.Add(seeded.Cuts.Select(cut => cut.Pattern));
        if (!search.Done)
            LowerCost(search, relaxation);
        search.LeaveOnly(search.Proven ? PlanPolishing.Longest : reserve);
        if (reserve > TimeSpan.Zero)
            new PlanPolishing(search, relaxation).Run();
        return SolutionBuilder.Of(problem, search);
    }

    // Of two equals the one that resembles the plan before.
    private static Plan First(CuttingModel model, Plan? seeded) =>
        GreedyStart.Build(model) is var greedy && seeded?.Total <= greedy.Total ? seeded : greedy;

    private static void LowerCost(Search search, Relaxation relaxation)
    {
        relaxation.SolveWhole(closeTo: CloseEnough);
        var dive = new DivingHeuristic(search, relaxation, new Random(search.Seed));
        for (var round = 0; round < FirstDives && round < search.Iterations && !search.Done; round++)
            dive.Run(round == 0 ? 0 : Randomization, plan => search.Offer(plan));
        if (!search.Done)
            new RestrictedMasterHeuristic(search, relaxation).Run();
        if (!search.Done)
            new ReducedCostFixing(search, relaxation).Run();
        if (!search.Done && search.Iterations > FirstDives)
            ParallelDiving.Run(search, relaxation, search.Iterations - FirstDives, Randomization);
    }
}
