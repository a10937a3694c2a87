using ShopPlanner.Scheduling.Networks;

namespace ShopPlanner.Scheduling.Checks;

/// <summary>Finds tasks that wait for each other.</summary>
internal static class Circle
{
    /// <summary>Returns the ids along a circle of precedences, the first once more at the end; null where there is
    /// none.</summary>
    public static string[]? Of(Network network)
    {
        if (network.Order.Length == network.Nodes.Length)
            return null;
        var sorted = network.Order.ToHashSet();
        // Each task that is left over waits for one that is left over: going back along those must come round.
        var way = new List<int>();
        var at = Enumerable.Range(0, network.Nodes.Length).First(i => !sorted.Contains(i));
        while (!way.Contains(at))
        {
            way.Add(at);
            at = network.Nodes[at].Before.First(link => !sorted.Contains(link.Task)).Task;
        }

        way.Add(at);
        return [.. way.Skip(way.IndexOf(at)).Reverse().Select(i => network.Nodes[i].Task.Id)];
    }
}
