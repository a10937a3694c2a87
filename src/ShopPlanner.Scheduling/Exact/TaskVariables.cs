using Google.OrTools.Sat;
using Google.OrTools.Util;
using ShopPlanner.Scheduling.Axes;
using ShopPlanner.Scheduling.Networks;

namespace ShopPlanner.Scheduling.Exact;

/// <summary>A task in the model.</summary>
/// <param name="Start">First minute of its labor, on the calendar.</param>
/// <param name="End">The minute its labor ends before, on the calendar.</param>
/// <param name="Work">Open minutes that have passed when it begins.</param>
internal sealed record TaskVariables(LinearExpr Start, LinearExpr End, LinearExpr Work)
{
    /// <summary>What is decided, each with the value that it has for a start and an end.</summary>
    public List<(IntVar Variable, Func<int, int, long> Value)> Decisions { get; } = [];

    /// <summary>Tells the solver a start.</summary>
    public void Hint(CpModel model, int start, int end)
    {
        foreach (var (variable, value) in Decisions)
            model.AddHint(variable, value(start, end));
    }
}

/// <summary>Makes the variables of tasks.</summary>
internal sealed class TaskVariableMaker(CpModel model, Network network, Spans spans)
{
    private readonly WorkAxis axis = network.Axis;

    public TaskVariables Make(int task)
    {
        var node = network.Nodes[task];
        if (node.Task.Fixed is { } done)
            return Fixed(done);
        var ranges = Ranges(spans.Earliest[task], spans.Latest[task], node);
        return ranges.Count == 1 && !node.IsSplit ? InOne(ranges[0], node) : InSome(ranges, node);
    }

    private TaskVariables Fixed(FixedLabor done) =>
        new(LinearExpr.Constant(done.Start), LinearExpr.Constant(done.End), LinearExpr.Constant(axis.OpenBefore(done.Start)));

    // The windows that a task may begin in, with its first and last position on the axis of open minutes.
    private List<(int Window, int First, int Last)> Ranges(int earliest, int latest, Node node)
    {
        var ranges = new List<(int, int, int)>();
        var from = axis.FirstClosingAfter(node.Labor == 0 ? earliest - 1 : earliest);
        for (var k = from; k < axis.Windows.Length && axis.Windows[k].Opens <= latest; k++)
        {
            var first = Math.Max(earliest, axis.Windows[k].Opens);
            var last = Math.Min(latest, axis.Windows[k].Closes - (node.IsSplit ? 1 : node.Labor));
            if (first <= last)
                ranges.Add((k, first - axis.Offset(k), last - axis.Offset(k)));
        }

        return ranges;
    }

    private TaskVariables InOne((int Window, int First, int Last) range, Node node)
    {
        var offset = axis.Offset(range.Window);
        var start = model.NewIntVar(range.First + offset, range.Last + offset, node.Task.Id);
        var made = new TaskVariables(start, start + node.Labor, start - offset);
        made.Decisions.Add((start, (at, _) => at));
        return made;
    }

    private TaskVariables InSome(List<(int Window, int First, int Last)> ranges, Node node)
    {
        var domain = Domain.FromFlatIntervals([.. ranges.SelectMany(one => new long[] { one.First, one.Last })]);
        var work = model.NewIntVarFromDomain(domain, node.Task.Id);
        var start = model.NewIntVar(
            ranges[0].First + axis.Offset(ranges[0].Window),
            ranges[^1].Last + axis.Offset(ranges[^1].Window),
            ""
        );
        var made = new List<(IntVar, Func<int, int, long>)> { (work, (at, _) => axis.OpenBefore(at)), (start, (at, _) => at) };
        Tie(work, 0, start, ranges, made, (at, _) => at);
        LinearExpr end = start + node.Labor;
        if (node.IsSplit)
            end = SplitEnd(work, ranges, node, made);
        var task = new TaskVariables(start, end, work);
        task.Decisions.AddRange(made);
        return task;
    }

    private IntVar SplitEnd(
        IntVar work,
        List<(int Window, int First, int Last)> starts,
        Node node,
        List<(IntVar, Func<int, int, long>)> made
    )
    {
        var (first, last) = (starts[0].First + node.Labor, starts[^1].Last + node.Labor);
        var ranges = new List<(int, int, int)>();
        for (var k = 0; k < axis.Windows.Length; k++)
        {
            var range = (First: Math.Max(first, axis.Before(k) + 1), Last: Math.Min(last, axis.Before(k + 1)));
            if (range.First <= range.Last)
                ranges.Add((k, range.First, range.Last));
        }

        var end = model.NewIntVar(axis.AtEnd(first)!.Value, axis.AtEnd(last)!.Value, "");
        made.Add((end, (_, to) => to));
        Tie(work, node.Labor, end, ranges, made, (_, to) => to - 1);
        return end;
    }

    // One literal for each window: in it, the calendar is so much later than the axis of open minutes.
    private void Tie(
        IntVar work,
        int labor,
        IntVar minute,
        List<(int Window, int First, int Last)> ranges,
        List<(IntVar, Func<int, int, long>)> made,
        Func<int, int, int> within
    )
    {
        var literals = ranges.Select(_ => model.NewBoolVar("")).ToList();
        model.AddExactlyOne(literals);
        for (var n = 0; n < ranges.Count; n++)
        {
            var (window, literal) = (axis.Windows[ranges[n].Window], literals[n]);
            model.AddLinearConstraint(work, ranges[n].First - labor, ranges[n].Last - labor).OnlyEnforceIf(literal);
            made.Add(
                (literal, (start, end) => within(start, end) >= window.Opens && within(start, end) <= window.Closes ? 1 : 0)
            );
        }

        model.Add(minute == work + labor + LinearExpr.WeightedSum(literals, ranges.Select(one => (long)axis.Offset(one.Window))));
    }
}
