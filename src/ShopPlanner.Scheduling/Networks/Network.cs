using System.Collections.Immutable;
using ShopPlanner.Scheduling.Axes;

namespace ShopPlanner.Scheduling.Networks;

/// <summary>A request with numbers in place of names. Tasks whose labor is fixed are no part of its precedences: they hold back
/// what follows them, and nothing holds them back.</summary>
internal sealed class Network
{
    private Network(ScheduleRequest request)
    {
        Axis = new WorkAxis(request.Windows);
        Names = [.. request.Resources.Keys];
        Capacity = [.. request.Resources.Values];
        var ranks = Ranks(request);
        Levels = ranks.Values.DefaultIfEmpty(0).Max() + 1;
        Nodes = [.. request.Tasks.Select(task => Make(task, task.Begins is null ? ranks[task.Project] : 0))];
        Join(request);
        Order = Sorted();
        foreach (var i in Order.Reverse())
        foreach (var link in Nodes[i].Before)
            Nodes[link.Task].RaiseTo(Nodes[i].Level);
    }

    public WorkAxis Axis { get; }

    public ImmutableArray<string> Names { get; }

    public ImmutableArray<int> Capacity { get; }

    public ImmutableArray<Node> Nodes { get; }

    /// <summary>How many priorities there are.</summary>
    public int Levels { get; }

    /// <summary>The tasks' numbers, each after all that come before it. Shorter than the list of tasks where those go round in
    /// a circle.</summary>
    public ImmutableArray<int> Order { get; }

    public static Network Of(ScheduleRequest request) => new(request);

    /// <summary>The minute that a task's labor ends before.</summary>
    public int End(int task, int start) =>
        Nodes[task].Task.Fixed is { } done ? done.End : Axis.End(start, Nodes[task].Labor, Nodes[task].IsSplit)!.Value;

    /// <summary>The minute that a task's hold ends before.</summary>
    public int Finish(int task, int start) => End(task, start) + Nodes[task].Hold;

    /// <summary>The latest end of any hold of a priority.</summary>
    public int Finish(int[] starts, int level) =>
        Enumerable
            .Range(0, starts.Length)
            .Where(i => Nodes[i].Level == level)
            .Select(i => Finish(i, starts[i]))
            .DefaultIfEmpty(0)
            .Max();

    // Priorities by rank. Projects that are not listed share the last.
    private static Dictionary<string, int> Ranks(ScheduleRequest request)
    {
        var priorities = request.Projects.Select(one => one.Priority).Distinct().Order().ToList();
        var ranks = request.Projects.ToDictionary(one => one.Id, one => priorities.IndexOf(one.Priority), StringComparer.Ordinal);
        foreach (
            var project in request.Tasks.Select(task => task.Project).Distinct().Where(one => !ranks.ContainsKey(one)).ToList()
        )
            ranks[project] = priorities.Count;
        return ranks;
    }

    // What must begin at a minute takes its place before anything else does, with what it needs.
    private Node Make(ScheduleTask task, int level) =>
        new(task, level) { LaborUses = Uses(task.LaborUses), HoldUses = Uses(task.HoldUses) };

    private Use[] Uses(ImmutableSortedDictionary<string, int> uses) =>
        [.. uses.Where(one => one.Value > 0).Select(one => new Use(Names.IndexOf(one.Key), one.Value))];

    private void Join(ScheduleRequest request)
    {
        var numbers = request
            .Tasks.Select((task, i) => (task.Id, i))
            .ToDictionary(one => one.Id, one => one.i, StringComparer.Ordinal);
        foreach (var one in request.Precedences)
        {
            var (before, after) = (numbers[one.Before], numbers[one.After]);
            if (Nodes[after].Task.Fixed is not null)
                continue;
            Nodes[before].After.Add(new Link(after, one.Wait));
            Nodes[after].Before.Add(new Link(before, one.Wait));
        }
    }

    private ImmutableArray<int> Sorted()
    {
        var waiting = Nodes.Select(node => node.Before.Count).ToArray();
        var ready = new Queue<int>(Enumerable.Range(0, Nodes.Length).Where(i => waiting[i] == 0));
        var order = ImmutableArray.CreateBuilder<int>(Nodes.Length);
        while (ready.TryDequeue(out var i))
        {
            order.Add(i);
            foreach (var link in Nodes[i].After)
                if (--waiting[link.Task] == 0)
                    ready.Enqueue(link.Task);
        }

        return order.ToImmutable();
    }
}
