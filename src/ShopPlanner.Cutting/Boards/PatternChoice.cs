using Google.OrTools.LinearSolver;

namespace ShopPlanner.Cutting.Boards;

/// <summary>Whole numbers of times for given patterns, at least total: an integer program.</summary>
internal sealed class PatternChoice : IDisposable
{
    private readonly CuttingModel _model;
    private readonly List<Pattern> _patterns;
    private readonly Solver _solver;
    private readonly Variable[] _times;

    public PatternChoice(CuttingModel model, List<Pattern> patterns, string solver)
    {
        (_model, _patterns) = (model, patterns);
        _solver = Solver.CreateSolver(solver)
            ?? throw new InvalidOperationException($"The solver {solver} is not part of this build.");
        var limits = model.Kinds.Select(kind => _solver.MakeConstraint(0, kind.Limit)).ToArray();
        var demands = model.Demands.Select(demand => _solver.MakeConstraint(demand, double.PositiveInfinity)).ToArray();
        _times = [.. patterns.Select(pattern => Column(pattern, limits, demands))];
        for (var item = 0; item < model.Count; item++) AddShortage(item, demands[item]);
        _solver.Objective().SetMinimization();
    }

    /// <summary>Solves.</summary>
    public ChoiceResult Solve(TimeSpan left, CancellationToken cancel)
    {
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        _solver.SetTimeLimit((long)Math.Clamp(left.TotalMilliseconds, 1, int.MaxValue));
        using var stop = cancel.Register(() => _solver.InterruptSolve());
        var status = _solver.Solve(parameters);
        return status switch
        {
            Solver.ResultStatus.INFEASIBLE => new(null, true),
            Solver.ResultStatus.OPTIMAL => new(Plan(), true),
            Solver.ResultStatus.FEASIBLE => new(Plan(), false),
            _ => new(null, false),
        };
    }

    public void Dispose() => _solver.Dispose();

    private Plan Plan() => Boards.Plan.Of(_model, _times
        .Select((variable, column) => (_patterns[column], (int)Math.Round(variable.SolutionValue())))
        .Where(cut => cut.Item2 > 0));

    private Variable Column(Pattern pattern, Constraint[] limits, Constraint[] demands)
    {
        var most = Math.Min(_model.Kinds[pattern.Kind].Limit, pattern.Pieces.Max(piece => Cover(piece)));
        var variable = _solver.MakeIntVar(0, most, "");
        limits[pattern.Kind].SetCoefficient(variable, 1);
        foreach (var piece in pattern.Pieces) demands[piece.Item].SetCoefficient(variable, piece.Count);
        _solver.Objective().SetCoefficient(variable, _model.Kinds[pattern.Kind].Cost);
        return variable;
    }

    private int Cover(Piece piece) => (_model.Demands[piece.Item] + piece.Count - 1) / piece.Count;

    private void AddShortage(int item, Constraint demand)
    {
        if (_model.AlwaysFits(item)) return;
        var variable = _solver.MakeIntVar(0, _model.Demands[item], "");
        demand.SetCoefficient(variable, 1);
        _solver.Objective().SetCoefficient(variable, _model.Shortage);
    }
}

/// <summary>Answer of an integer program.</summary>
/// <param name="Plan">The best found, if any.</param>
/// <param name="Settled">True when there is none better, or none at all.</param>
internal sealed record ChoiceResult(Plan? Plan, bool Settled);
