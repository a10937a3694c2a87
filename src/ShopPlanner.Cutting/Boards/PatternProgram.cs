using Google.OrTools.LinearSolver;

namespace ShopPlanner.Cutting.Boards;

/// <summary>Whole numbers of times for given patterns, at least total: an integer program.</summary>
internal sealed class PatternProgram : IDisposable
{
    private readonly CuttingModel model;
    private readonly List<Pattern> patterns;
    private readonly Solver solver = SolverParameters.IntegerSolver();
    private readonly Variable[] times;

    public PatternProgram(CuttingModel model, List<Pattern> patterns)
    {
        (this.model, this.patterns) = (model, patterns);
        var limits = model.Kinds.Select(kind => solver.MakeConstraint(0, kind.Limit)).ToArray();
        var demands = model.Demands.Select(demand => solver.MakeConstraint(demand, double.PositiveInfinity)).ToArray();
        times = [.. patterns.Select(pattern => Column(pattern, limits, demands))];
        for (var item = 0; item < model.Count; item++)
            ProgramParts.AddShortage(solver, model, item, demands[item]);
        solver.Objective().SetMinimization();
    }

    /// <summary>Solves within the time left, or briefly.</summary>
    public ProgramResult Solve(Search search, bool briefly = false) => SolverParameters.Solve(solver, search, Plan, briefly);

    public void Dispose() => solver.Dispose();

    private Plan Plan() => ProgramParts.PlanOf(model, patterns, times);

    private Variable Column(Pattern pattern, Constraint[] limits, Constraint[] demands)
    {
        var most = Math.Min(model.Kinds[pattern.Kind].Limit, pattern.Pieces.Max(piece => Cover(piece)));
        var variable = solver.MakeIntVar(0, most, "");
        limits[pattern.Kind].SetCoefficient(variable, 1);
        foreach (var piece in pattern.Pieces)
            demands[piece.Item].SetCoefficient(variable, piece.Count);
        solver.Objective().SetCoefficient(variable, model.Kinds[pattern.Kind].Cost);
        return variable;
    }

    private int Cover(Piece piece) => (model.Demands[piece.Item] + piece.Count - 1) / piece.Count;
}
