namespace ShopPlanner.Cutting.Boards;

/// <summary>Takes a whole flow apart into paths, which are patterns, and gives each a stock.</summary>
internal static class FlowPaths
{
    public static Plan Split(CuttingModel model, List<(Arc Arc, int Flow)> flows, Dictionary<int, int> ends, int[] stocks)
    {
        var leaving = flows
            .Where(flow => flow.Flow > 0)
            .GroupBy(flow => flow.Arc.From)
            .ToDictionary(node => node.Key, node => new Queue<(Arc Arc, int Flow)>(node));
        var cuts = new List<(int[] Counts, long Used)>();
        while (Next(model, leaving, ends) is { } path)
            cuts.Add(path);
        return Plan.Of(model, Assign(model, cuts, (int[])stocks.Clone()));
    }

    // A path of flow one from the start to where a flow ends.
    private static (int[] Counts, long Used)? Next(
        CuttingModel model,
        Dictionary<int, Queue<(Arc Arc, int Flow)>> leaving,
        Dictionary<int, int> ends
    )
    {
        var counts = new int[model.Count];
        var at = 0;
        while (ends.GetValueOrDefault(at) == 0)
        {
            if (!leaving.TryGetValue(at, out var arcs) || arcs.Count == 0)
                return null;
            var (arc, flow) = arcs.Dequeue();
            if (flow > 1)
                arcs.Enqueue((arc, flow - 1));
            counts[arc.Item]++;
            at = arc.To;
        }

        ends[at]--;
        return (counts, at);
    }

    // Longest path first to the shortest stock that takes it: the flow over the bridges shows that there is enough.
    private static IEnumerable<(Pattern, int)> Assign(CuttingModel model, List<(int[] Counts, long Used)> paths, int[] stocks)
    {
        foreach (var (counts, used) in paths.OrderByDescending(path => path.Used))
        {
            var kind = Array.FindLastIndex(model.Kinds, k => k.Capacity >= used);
            while (kind >= 0 && stocks[kind] == 0)
                kind--;
            if (kind < 0)
                continue;
            stocks[kind]--;
            yield return (Pattern.FromCounts(kind, counts), 1);
        }
    }
}
