using Google.OrTools.Sat;
using ShopPlanner.Scheduling.Networks;

namespace ShopPlanner.Scheduling.Exact;

/// <summary>Limits the use of each resource in a model.</summary>
internal sealed class ResourceLimits(CpModel model, Network network, TaskVariables?[] tasks)
{
    private readonly Dictionary<(int Task, Part Part), IntervalVar> intervals = [];

    // What an interval of a task covers, and on which axis.
    private enum Part
    {
        Work,
        Labor,
        Hold,
        Both,
    }

    public void Add()
    {
        var limits = Enumerable.Range(0, network.Capacity.Length).Select(Limit).Where(limit => limit.Matters).ToList();
        foreach (var limit in limits.Where(limit => !limits.Exists(other => Covers(other, limit))))
            Add(limit);
    }

    private UseList Limit(int resource)
    {
        var uses = new List<(int Task, int Labor, int Hold)>();
        for (var i = 0; i < tasks.Length; i++)
            if (tasks[i] is not null && Amounts(network.Nodes[i], resource) is var (labor, hold) && labor + hold > 0)
                uses.Add((i, labor, hold));
        return new UseList(resource, network.Capacity[resource], uses);
    }

    private static (int Labor, int Hold) Amounts(Node node, int resource) =>
        (
            node.Labor == 0 && node.Task.Fixed is null
                ? 0
                : node.LaborUses.Where(use => use.Resource == resource).Sum(use => use.Amount),
            node.Hold == 0 ? 0 : node.HoldUses.Where(use => use.Resource == resource).Sum(use => use.Amount)
        );

    // Where one of a kind is taken by each of some tasks, it need not be told again of a few of them.
    private static bool Covers(UseList other, UseList limit) =>
        other != limit
        && other.OneAtATime
        && limit.OneAtATime
        && !limit.OnCalendar
        && !other.OnCalendar
        && limit.Uses.TrueForAll(use => other.Uses.Exists(its => its.Task == use.Task))
        && (limit.Uses.Count < other.Uses.Count || limit.Resource > other.Resource);

    private void Add(UseList limit)
    {
        var taken = limit.Uses.SelectMany(use => Taken(use, limit.OnCalendar)).ToList();
        if (limit.OneAtATime)
        {
            model.AddNoOverlap(taken.Select(one => one.Interval));
            return;
        }

        var cumulative = model.AddCumulative(limit.Capacity);
        foreach (var (interval, amount) in taken)
            cumulative.AddDemand(interval, amount);
    }

    private IEnumerable<(IntervalVar Interval, int Amount)> Taken((int Task, int Labor, int Hold) use, bool onCalendar)
    {
        if (!onCalendar)
            return [(Interval(use.Task, Part.Work), use.Labor)];
        if (use.Labor == use.Hold)
            return [(Interval(use.Task, Part.Both), use.Labor)];
        return new[] { (Interval(use.Task, Part.Labor), use.Labor), (Interval(use.Task, Part.Hold), use.Hold) }.Where(one =>
            one.Item2 > 0
        );
    }

    private IntervalVar Interval(int task, Part part)
    {
        if (!intervals.TryGetValue((task, part), out var interval))
            intervals[(task, part)] = interval = Make(task, part);
        return interval;
    }

    private IntervalVar Make(int task, Part part)
    {
        var (node, its) = (network.Nodes[task], tasks[task]!);
        if (node.Task.Fixed is { } done)
            return Fixed(node, done, part);
        return part switch
        {
            Part.Work => model.NewFixedSizeIntervalVar(its.Work, node.Labor, ""),
            Part.Hold => model.NewFixedSizeIntervalVar(its.End, node.Hold, ""),
            Part.Labor when !node.IsSplit => model.NewFixedSizeIntervalVar(its.Start, node.Labor, ""),
            Part.Both when !node.IsSplit => model.NewFixedSizeIntervalVar(its.Start, node.Labor + node.Hold, ""),
            _ => Stretched(its, part == Part.Both ? node.Hold : 0),
        };
    }

    private IntervalVar Fixed(Node node, FixedLabor done, Part part)
    {
        var (from, to) = part switch
        {
            Part.Work => (network.Axis.OpenBefore(done.Start), network.Axis.OpenBefore(done.End)),
            Part.Hold => (done.End, done.End + node.Hold),
            Part.Labor => (done.Start, done.End),
            _ => (done.Start, done.End + node.Hold),
        };
        return model.NewFixedSizeIntervalVar(LinearExpr.Constant(from), to - from, "");
    }

    private IntervalVar Stretched(TaskVariables its, int hold)
    {
        var size = model.NewIntVar(0, network.Axis.Closes + (long)hold + 1, "");
        return model.NewIntervalVar(its.Start, size, its.End + hold, "");
    }

    // Who uses a resource, and how much of it.
    private sealed record UseList(int Resource, int Capacity, List<(int Task, int Labor, int Hold)> Uses)
    {
        public bool OnCalendar { get; } = Uses.Exists(use => use.Hold > 0);

        public bool OneAtATime { get; } =
            Uses.TrueForAll(use => (use.Labor == 0 || 2 * use.Labor > Capacity) && (use.Hold == 0 || 2 * use.Hold > Capacity));

        public bool Matters { get; } = Uses.Sum(use => (long)Math.Max(use.Labor, use.Hold)) > Capacity;
    }
}
