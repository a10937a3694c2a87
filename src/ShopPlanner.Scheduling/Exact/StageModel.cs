using Google.OrTools.Sat;
using ShopPlanner.Scheduling.Networks;

namespace ShopPlanner.Scheduling.Exact;

/// <summary>
/// The constraint model of the tasks up to a priority: for each one decision, its labor's start on the axis of open minutes; a
/// literal for each window ties it to the calendar. What is used by labor alone is limited on the axis of open minutes, the
/// rest on
/// the calendar.
/// </summary>
internal sealed class StageModel
{
    private readonly Network network;
    private readonly int level;
    private readonly TaskVariables?[] tasks;

    public StageModel(Network network, Spans spans, int level)
    {
        (this.network, this.level) = (network, level);
        tasks = new TaskVariables?[network.Nodes.Length];
        var maker = new TaskVariableMaker(Model, network, spans);
        for (var i = 0; i < tasks.Length; i++)
            if (network.Nodes[i].Level <= level || network.Nodes[i].Task.Fixed is not null)
                tasks[i] = maker.Make(i);
        Precede();
        new ResourceLimits(Model, network, tasks).Add();
    }

    public CpModel Model { get; } = new();

    /// <summary>Makes the finish of the priority as small as can be.</summary>
    public void MinimizeFinish(int least, int most)
    {
        var finish = Model.NewIntVar(least, most, "finish");
        foreach (var i in Free().Where(i => network.Nodes[i].Level == level && !network.Nodes[i].After.Exists(Counts)))
            Model.Add(tasks[i]!.End + network.Nodes[i].Hold <= finish);
        Model.Minimize(finish);
    }

    /// <summary>Makes the sum of all ends as small as can be.</summary>
    public void MinimizeEnds() => Model.Minimize(LinearExpr.Sum(Free().Select(i => tasks[i]!.End)));

    /// <summary>Makes the minutes that tasks move from an earlier schedule as few as can be; among equals, the sum of
    /// ends.</summary>
    public void MinimizeMoves()
    {
        var count = Free().Count() + 1;
        var moves = new List<LinearExpr>();
        foreach (var i in Free())
            if (network.Nodes[i].Task.Earlier is { } earlier)
                moves.Add(Distance(tasks[i]!.Start, earlier) * (count * (long)network.Axis.Closes));
        Model.Minimize(LinearExpr.Sum(moves.Concat(Free().Select(i => tasks[i]!.End))));
    }

    /// <summary>Tells the solver where to look first.</summary>
    public void Hint(int[] starts)
    {
        foreach (var i in Free())
            tasks[i]!.Hint(Model, starts[i], network.End(i, starts[i]));
    }

    /// <summary>The starts that the solver found; what is no part of the model keeps its own.</summary>
    public int[] Read(CpSolver solver, int[]? others) =>
        [
            .. tasks.Select(
                (task, i) =>
                    network.Nodes[i].Task.Fixed?.Start ?? (task is null ? others?[i] ?? 0 : (int)solver.Value(task.Start))
            ),
        ];

    private IEnumerable<int> Free() =>
        Enumerable.Range(0, tasks.Length).Where(i => tasks[i] is not null && network.Nodes[i].Task.Fixed is null);

    private bool Counts(Link link) => network.Nodes[link.Task].Level == level;

    private IntVar Distance(LinearExpr start, int earlier)
    {
        var distance = Model.NewIntVar(0, Math.Max(network.Axis.Closes, earlier) + 1, "");
        Model.Add(distance >= start - earlier);
        Model.Add(distance >= earlier - start);
        return distance;
    }

    // The same order holds on the axis of open minutes, where it helps whoever has one pair of hands.
    private void Precede()
    {
        foreach (var i in Free())
        foreach (var link in network.Nodes[i].Before)
        {
            var before = tasks[link.Task]!;
            Model.Add(tasks[i]!.Start >= before.End + (network.Nodes[link.Task].Hold + link.Wait));
            if (network.Axis.Windows.Length > 1 && network.Nodes[link.Task].Task.Fixed is null)
                Model.Add(tasks[i]!.Work >= before.Work + network.Nodes[link.Task].Labor);
        }
    }
}
