using Google.OrTools.LinearSolver;

namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Whole flows along the arcs of a graph, at least total: an integer program. Flow that ends between two capacities is cut from
/// stock of the upper one or, over the bridges, from any longer one.
/// </summary>
internal sealed class FlowChoice : IDisposable
{
    private readonly CuttingModel _model;
    private readonly Arc[] _arcs;
    private readonly Solver _solver = SolverText.IntegerSolver();
    private readonly SortedDictionary<int, Constraint> _nodes = [];
    private readonly Constraint[] _collectors;
    private readonly Variable[] _flows;
    private readonly Variable[] _stocks;
    private readonly Dictionary<int, Variable> _ends = [];

    public FlowChoice(CuttingModel model, IEnumerable<Arc> arcs)
    {
        _model = model;
        _arcs = [.. arcs];
        _collectors = [.. model.Kinds.Select(_ => _solver.MakeConstraint(0, 0))];
        var demands = model.Demands.Select(demand => _solver.MakeConstraint(demand, double.PositiveInfinity)).ToArray();
        _flows = [.. _arcs.Select(arc => Flow(arc, demands[arc.Item]))];
        foreach (var node in _nodes.Keys.Where(node => node > 0))
            _ends[node] = End(node);
        _stocks = [.. model.Kinds.Select((kind, index) => Stock(kind, index))];
        for (var kind = 1; kind < model.Kinds.Length; kind++)
            Bridge(kind);
        for (var item = 0; item < model.Count; item++)
            AddShortage(item, demands[item]);
        _solver.Objective().SetMinimization();
    }

    /// <summary>Solves within the time left.</summary>
    public ChoiceResult Solve(Search search) => SolverText.Solve(_solver, search, Plan);

    public void Dispose() => _solver.Dispose();

    private Variable Flow(Arc arc, Constraint demand)
    {
        var variable = _solver.MakeIntVar(0, _model.Demands[arc.Item], "");
        demand.SetCoefficient(variable, 1);
        if (arc.From > 0)
            Node(arc.From).SetCoefficient(variable, -1);
        Node(arc.To).SetCoefficient(variable, 1);
        return variable;
    }

    private Constraint Node(int at)
    {
        if (!_nodes.TryGetValue(at, out var node))
            _nodes[at] = node = _solver.MakeConstraint(0, 0);
        return node;
    }

    private Variable End(int node)
    {
        var variable = _solver.MakeNumVar(0, _model.Pieces, "");
        _nodes[node].SetCoefficient(variable, -1);
        _collectors[Array.FindLastIndex(_model.Kinds, kind => kind.Capacity >= node)].SetCoefficient(variable, 1);
        return variable;
    }

    private Variable Stock(StockKind kind, int index)
    {
        var variable = _solver.MakeIntVar(0, kind.Limit, "");
        _collectors[index].SetCoefficient(variable, -1);
        _solver.Objective().SetCoefficient(variable, kind.Cost);
        return variable;
    }

    private void Bridge(int kind)
    {
        var variable = _solver.MakeNumVar(0, _model.Pieces, "");
        _collectors[kind].SetCoefficient(variable, -1);
        _collectors[kind - 1].SetCoefficient(variable, 1);
    }

    private void AddShortage(int item, Constraint demand)
    {
        if (_model.AlwaysFits(item))
            return;
        var variable = _solver.MakeIntVar(0, _model.Demands[item], "");
        demand.SetCoefficient(variable, 1);
        _solver.Objective().SetCoefficient(variable, _model.Shortage);
    }

    private Plan Plan() =>
        FlowPaths.Split(
            _model,
            [.. _arcs.Select((arc, at) => (arc, Whole(_flows[at])))],
            _ends.ToDictionary(end => end.Key, end => Whole(end.Value)),
            [.. _stocks.Select(Whole)]
        );

    private static int Whole(Variable variable) => (int)Math.Round(variable.SolutionValue());
}
