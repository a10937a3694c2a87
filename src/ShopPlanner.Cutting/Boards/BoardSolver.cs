namespace ShopPlanner.Cutting.Boards;

/// <summary>Solves the cutting of boards.</summary>
public static class BoardSolver
{
    private const int FirstDives = 3;
    private const double Shake = 0.5;

    /// <summary>The best plan found within the limits, with a bound that no plan can beat.</summary>
    /// <param name="problem">What is wanted and what can be had.</param>
    /// <param name="control">When to stop and whom to tell.</param>
    public static BoardSolution Solve(BoardProblem problem, SearchControl control)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(control);
        var model = CuttingModel.Of(problem);
        var search = new Search(model, control, GreedyStart.Build(model));
        search.Raise(DualPoint.BySize(model).Total);
        if (!search.Done) Improve(search);
        return SolutionText.Of(problem, search);
    }

    private static void Improve(Search search)
    {
        using var relaxation = new Relaxation(search);
        relaxation.Add(StartPatterns.For(search));
        relaxation.SolveWhole();
        var random = new Random(search.Seed);
        var dive = new Dive(search, relaxation, random);
        for (var round = 0; round < FirstDives && round < search.Iterations && !search.Done; round++)
            dive.Run(round == 0 ? 0 : Shake);
        if (!search.Done) new Closing(search, relaxation).Run();
        for (var round = (long)FirstDives; round < search.Iterations && !search.Done; round++)
            dive.Run(Shake);
    }
}
