using Google.OrTools.LinearSolver;

namespace ShopPlanner.Cutting.Boards;

/// <summary>Whole numbers of times for given patterns, at least total: an integer program.</summary>
internal sealed class PatternChoice : IDisposable
{
    private readonly CuttingModel _model;
    private readonly List<Pattern> _patterns;
    private readonly Solver _solver = SolverText.IntegerSolver();
    private readonly Variable[] _times;

    public PatternChoice(CuttingModel model, List<Pattern> patterns)
    {
        (_model, _patterns) = (model, patterns);
        var limits = model.Kinds.Select(kind => _solver.MakeConstraint(0, kind.Limit)).ToArray();
        var demands = model.Demands.Select(demand => _solver.MakeConstraint(demand, double.PositiveInfinity)).ToArray();
        _times = [.. patterns.Select(pattern => Column(pattern, limits, demands))];
        for (var item = 0; item < model.Count; item++)
            AddShortage(item, demands[item]);
        _solver.Objective().SetMinimization();
    }

    /// <summary>Solves within the time left, or briefly.</summary>
    public ChoiceResult Solve(Search search, bool briefly = false) => SolverText.Solve(_solver, search, Plan, briefly);

    public void Dispose() => _solver.Dispose();

    private Plan Plan() =>
        Boards.Plan.Of(
            _model,
            _times
                .Select((variable, column) => (_patterns[column], (int)Math.Round(variable.SolutionValue())))
                .Where(cut => cut.Item2 > 0)
        );

    private Variable Column(Pattern pattern, Constraint[] limits, Constraint[] demands)
    {
        var most = Math.Min(_model.Kinds[pattern.Kind].Limit, pattern.Pieces.Max(piece => Cover(piece)));
        var variable = _solver.MakeIntVar(0, most, "");
        limits[pattern.Kind].SetCoefficient(variable, 1);
        foreach (var piece in pattern.Pieces)
            demands[piece.Item].SetCoefficient(variable, piece.Count);
        _solver.Objective().SetCoefficient(variable, _model.Kinds[pattern.Kind].Cost);
        return variable;
    }

    private int Cover(Piece piece) => (_model.Demands[piece.Item] + piece.Count - 1) / piece.Count;

    private void AddShortage(int item, Constraint demand)
    {
        if (_model.AlwaysFits(item))
            return;
        var variable = _solver.MakeIntVar(0, _model.Demands[item], "");
        demand.SetCoefficient(variable, 1);
        _solver.Objective().SetCoefficient(variable, _model.Shortage);
    }
}
