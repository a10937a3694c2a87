using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Boards;

/// <summary>A first plan from the layouts of an earlier one, what is missing filled in greedily.</summary>
internal static class SeededStart
{
    /// <summary>The earlier patterns in the model's terms, within its capacities and limits.</summary>
    public static List<(Pattern Pattern, int Times)> Patterns(CuttingModel model, ImmutableArray<BoardPattern> seed)
    {
        var left = GreedyStart.Limits(model);
        var found = new List<(Pattern, int)>();
        foreach (var cut in seed)
        {
            var kind = Array.FindIndex(model.Kinds, one => one.Members.Contains(cut.Stock));
            if (kind < 0) continue;
            var pattern = Pattern.FromCounts(kind, [.. model.Members.Select(members => members.Sum(item => cut.Counts[item]))]);
            var times = Math.Min(cut.Times, left[kind]);
            if (times == 0 || pattern.Pieces.Length == 0 || pattern.Used(model) > model.Kinds[kind].Capacity) continue;
            left[kind] -= times;
            found.Add((pattern, times));
        }

        return found;
    }

    /// <summary>A whole plan from them.</summary>
    public static Plan Build(CuttingModel model, List<(Pattern Pattern, int Times)> patterns)
    {
        var kept = Plan.Of(model, patterns);
        var limits = GreedyStart.Limits(model);
        foreach (var (pattern, times) in kept.Cuts) limits[pattern.Kind] -= times;
        return Plan.Of(model, kept.Cuts.Concat(GreedyStart.Fill(model, kept.Unmet, [.. limits.Select(left => Math.Max(0, left))])));
    }
}
