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
        var model = CuttingModel.Of(problem);
        var search = new Search(model, control, GreedyStart.Build(model));
        search.Raise(SizeBound(model));
        if (!search.Done) Improve(search);
        return SolutionText.Of(problem, search);
    }

    private static void Improve(Search search)
    {
        using var relaxation = new Relaxation(search);
        relaxation.Add(StartPatterns.For(search));
        if (relaxation.SolveWhole() is null) return;
        var random = new Random(search.Seed);
        for (var round = 0L; round < search.Iterations && round < 3 && !search.Done; round++)
            new Dive(search, relaxation, random).Run(round == 0 ? 0 : 0.5, 1000);
        new Closing(search, relaxation).Run();
    }

    // Without any search: what size alone asks of the stock. Values of the items in proportion to their size.
    private static long SizeBound(CuttingModel model)
    {
        var most = model.Kinds.Select(kind => kind.Capacity).ToArray();
        if (model.Kinds.Length == 0) return model.Pieces * model.Shortage;
        return DualPoint.Of(model, model.Sizes, most, 1).Total;
    }
}
