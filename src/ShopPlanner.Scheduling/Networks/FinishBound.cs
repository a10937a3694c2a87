namespace ShopPlanner.Scheduling.Networks;

/// <summary>A minute that no schedule finishes before, from precedences and from the work that each resource must do.</summary>
internal static class FinishBound
{
    /// <summary>Returns it for the tasks of a priority and of those before it.</summary>
    /// <param name="network">Without a circle.</param>
    /// <param name="spans">Of it.</param>
    /// <param name="level">The priority.</param>
    public static int Of(Network network, Spans spans, int level)
    {
        var ways = Enumerable
            .Range(0, network.Nodes.Length)
            .Where(i => network.Nodes[i].Level == level)
            .Select(i => network.Finish(i, spans.Earliest[i]));
        var bound = ways.DefaultIfEmpty(0).Max();
        // The work of more urgent projects may be done later than that of this one, where those have time to wait.
        if (level == network.Levels - 1 && level == 0)
            for (var resource = 0; resource < network.Capacity.Length; resource++)
                bound = Math.Max(bound, ByWork(network, resource));
        return bound;
    }

    // All labor that takes the resource lies in open minutes: there must be enough of them.
    private static int ByWork(Network network, int resource)
    {
        var work = network
            .Nodes.Where(node => node.Task.Fixed is null)
            .Sum(node => (long)node.Labor * node.LaborUses.Where(use => use.Resource == resource).Sum(use => use.Amount));
        var capacity = network.Capacity[resource];
        if (work == 0 || capacity == 0)
            return 0;
        var open = (work + capacity - 1) / capacity;
        return open <= network.Axis.Total ? network.Axis.AtEnd((int)open)!.Value : network.Axis.Closes;
    }
}
