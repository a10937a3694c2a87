using ShopPlanner.Scheduling.Networks;

namespace ShopPlanner.Scheduling.Lists;

/// <summary>
/// The serial schedule generation scheme (Kelley 1963): one task after the other gets the earliest start that its
/// precedences, the
/// windows and what is left of the resources allow.
/// </summary>
internal sealed class ListScheduler(Network network)
{
    private readonly int[] starts = new int[network.Nodes.Length];
    private UsageProfile[] profiles = [];

    /// <summary>Returns the start of each task; null where one finds no time before the windows end.</summary>
    /// <param name="ranks">The smaller the rank of a task, the sooner its turn among those that are ready.</param>
    /// <param name="level">Tasks of a later priority are passed over, unless their labor is fixed.</param>
    /// <param name="kept">Starts that are taken as they are; null for a task that is to be placed.</param>
    /// <param name="floors">The minute that each task is not to begin before; null for any.</param>
    public int[]? Build(IReadOnlyList<double> ranks, int level, IReadOnlyList<int?> kept, IReadOnlyList<int>? floors = null)
    {
        profiles = [.. network.Capacity.Select(_ => new UsageProfile())];
        var (waiting, ready) = (
            network.Nodes.Select(node => node.Before.Count).ToArray(),
            new PriorityQueue<int, (double, int)>()
        );
        for (var i = 0; i < starts.Length; i++)
        {
            if (KeptStart(i, kept) is { } start)
                Take(i, start);
            if (waiting[i] == 0)
                ready.Enqueue(i, (ranks[i], i));
        }

        while (ready.TryDequeue(out var i, out _))
        {
            if (network.Nodes[i].Level <= level && !(KeptStart(i, kept) is null ? Place(i, floors?[i] ?? 0) : IsInTime(i)))
                return null;
            foreach (var link in network.Nodes[i].After)
                if (--waiting[link.Task] == 0)
                    ready.Enqueue(link.Task, (ranks[link.Task], link.Task));
        }

        return [.. starts];
    }

    private int? KeptStart(int i, IReadOnlyList<int?> kept) => network.Nodes[i].Given ?? kept[i];

    // What must begin at a minute finds done by then what it needs.
    private bool IsInTime(int i) =>
        network.Nodes[i].Task.Begins is not { } begins
        || network.Nodes[i].Before.TrueForAll(link => network.Finish(link.Task, starts[link.Task]) + link.Wait <= begins);

    private bool Place(int i, int floor)
    {
        var node = network.Nodes[i];
        var from = Math.Max(floor, node.Task.NotBefore);
        foreach (var link in node.Before)
            from = Math.Max(from, network.Finish(link.Task, starts[link.Task]) + link.Wait);
        while (network.Axis.EarliestStart(from, node.Labor, node.IsSplit) is { } start)
        {
            from = Later(i, start);
            if (from > start)
                continue;
            Take(i, start);
            return true;
        }

        return false;
    }

    private void Take(int i, int start)
    {
        starts[i] = start;
        var (node, end) = (network.Nodes[i], network.End(i, start));
        foreach (var use in node.LaborUses)
            profiles[use.Resource].Add(start, end, use.Amount);
        foreach (var use in node.HoldUses)
            profiles[use.Resource].Add(end, end + node.Hold, use.Amount);
    }

    // The start itself where all is free, otherwise the first that gets past what is short.
    private int Later(int i, int start)
    {
        var (node, end, later) = (network.Nodes[i], network.End(i, start), start);
        foreach (var use in node.LaborUses)
            if (Short(use, start, end) is { } until)
                later = Math.Max(later, until);
        foreach (var use in node.HoldUses)
            if (Short(use, end, end + node.Hold) is { } until)
                later = Math.Max(later, Math.Max(start + 1, StartToEndAt(node, until)));
        return later;
    }

    private int? Short(Use use, int from, int to) =>
        profiles[use.Resource].ShortUntil(from, to, use.Amount, network.Capacity[use.Resource]);

    // Labor that begins earlier ends before the minute.
    private int StartToEndAt(Node node, int end)
    {
        if (!node.IsSplit)
            return end - node.Labor;
        var open = network.Axis.OpenBefore(end) - node.Labor;
        return open <= 0 ? 0 : network.Axis.LatestStart(end, node.Labor, splittable: true) ?? 0;
    }
}
