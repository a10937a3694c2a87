using Google.OrTools.LinearSolver;

namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Whole flows along the arcs of a graph, at least total: an integer program. Flow that ends between two capacities is cut from
/// stock of the upper one or, over the bridges, from any longer one.
/// </summary>
internal sealed class ArcFlowProgram : IDisposable
{
    private readonly CuttingModel model;
    private readonly Arc[] arcs;
    private readonly Solver solver = SolverParameters.IntegerSolver();
    private readonly SortedDictionary<int, Constraint> nodes = [];
    private readonly Constraint[] collectors;
    private readonly Variable[] flows;
    private readonly Variable[] stocks;
    private readonly Dictionary<int, Variable> ends = [];

    public ArcFlowProgram(CuttingModel model, IEnumerable<Arc> arcs)
    {
        this.model = model;
        this.arcs = [.. arcs];
        collectors = [.. model.Kinds.Select(_ => solver.MakeConstraint(0, 0))];
        var demands = model.Demands.Select(demand => solver.MakeConstraint(demand, double.PositiveInfinity)).ToArray();
        flows = [.. this.arcs.Select(arc => Flow(arc, demands[arc.Item]))];
        foreach (var node in nodes.Keys.Where(node => node > 0))
            ends[node] = End(node);
        stocks = [.. model.Kinds.Select((kind, index) => Stock(kind, index))];
        for (var kind = 1; kind < model.Kinds.Length; kind++)
            Bridge(kind);
        for (var item = 0; item < model.Count; item++)
            ProgramParts.AddShortage(solver, model, item, demands[item]);
        solver.Objective().SetMinimization();
    }

    /// <summary>Solves within the time left.</summary>
    public ProgramResult Solve(Search search) => SolverParameters.Solve(solver, search, Plan);

    public void Dispose() => solver.Dispose();

    private Variable Flow(Arc arc, Constraint demand)
    {
        var variable = solver.MakeIntVar(0, model.Demands[arc.Item], "");
        demand.SetCoefficient(variable, 1);
        if (arc.From > 0)
            Node(arc.From).SetCoefficient(variable, -1);
        Node(arc.To).SetCoefficient(variable, 1);
        return variable;
    }

    private Constraint Node(int at)
    {
        if (!nodes.TryGetValue(at, out var node))
            nodes[at] = node = solver.MakeConstraint(0, 0);
        return node;
    }

    private Variable End(int node)
    {
        var variable = solver.MakeNumVar(0, model.Pieces, "");
        nodes[node].SetCoefficient(variable, -1);
        collectors[Array.FindLastIndex(model.Kinds, kind => kind.Capacity >= node)].SetCoefficient(variable, 1);
        return variable;
    }

    private Variable Stock(StockKind kind, int index)
    {
        var variable = solver.MakeIntVar(0, kind.Limit, "");
        collectors[index].SetCoefficient(variable, -1);
        solver.Objective().SetCoefficient(variable, kind.Cost);
        return variable;
    }

    private void Bridge(int kind)
    {
        var variable = solver.MakeNumVar(0, model.Pieces, "");
        collectors[kind].SetCoefficient(variable, -1);
        collectors[kind - 1].SetCoefficient(variable, 1);
    }

    private Plan Plan() =>
        FlowPaths.Split(
            model,
            [.. arcs.Select((arc, at) => (arc, Whole(flows[at])))],
            ends.ToDictionary(end => end.Key, end => Whole(end.Value)),
            [.. stocks.Select(Whole)]
        );

    private static int Whole(Variable variable) => (int)Math.Round(variable.SolutionValue());
}
