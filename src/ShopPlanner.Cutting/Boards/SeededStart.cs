using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Makes a plan of one that was made before an edit: patterns give up what no longer fits or is no longer wanted, what is missing
/// goes into the gaps that they have, and the rest to new stock.
/// </summary>
internal static class SeededStart
{
    /// <summary>The repaired plan; null when nothing of the earlier one serves.</summary>
    public static Plan? Build(CuttingModel model, BoardProblem problem)
    {
        if (problem.Seed.IsEmpty)
            return null;
        var wanted = (int[])model.Demands.Clone();
        var cuts = Plan.Trimmed(Within(model, Told(model, problem)), wanted);
        if (cuts.Count == 0)
            return null;
        var left = GreedyStart.Limits(model);
        foreach (var (pattern, times) in cuts)
            left[pattern.Kind] -= times;
        FillGaps(model, cuts, wanted);
        return Plan.Of(model, cuts.Concat(GreedyStart.Fill(model, wanted, left)));
    }

    // In the model's items and kinds, each pattern short enough for its stock.
    private static IEnumerable<(Pattern Pattern, int Times)> Told(CuttingModel model, BoardProblem problem)
    {
        var items = Inverse(model.Members, problem.Items.Length);
        var kinds = Inverse([.. model.Kinds.Select(kind => kind.Members)], problem.Stocks.Length);
        foreach (var pattern in problem.Seed)
        {
            if (kinds[pattern.Stock] is not { } kind)
                continue;
            var counts = new int[model.Count];
            for (var item = 0; item < pattern.Counts.Length; item++)
                if (items[item] is { } merged)
                    counts[merged] += pattern.Counts[item];
            Shorten(model, counts, model.Kinds[kind].Capacity);
            yield return (Pattern.FromCounts(kind, counts), pattern.Times);
        }
    }

    private static int?[] Inverse(int[][] members, int count)
    {
        var inverse = new int?[count];
        for (var group = 0; group < members.Length; group++)
            foreach (var member in members[group])
                inverse[member] = group;
        return inverse;
    }

    // The shortest piece that is long enough goes; while there is none, the longest.
    private static void Shorten(CuttingModel model, int[] counts, long capacity)
    {
        while (counts.Select((count, item) => count * model.Sizes[item]).Sum() - capacity is var excess and > 0)
        {
            var enough = Array.FindLastIndex(model.Sizes, size => size >= excess);
            while (enough >= 0 && counts[enough] == 0)
                enough--;
            counts[enough >= 0 ? enough : Array.FindIndex(counts, count => count > 0)]--;
        }
    }

    private static IEnumerable<(Pattern Pattern, int Times)> Within(
        CuttingModel model,
        IEnumerable<(Pattern Pattern, int Times)> cuts
    )
    {
        var left = GreedyStart.Limits(model);
        foreach (var (pattern, times) in cuts)
        {
            var now = Math.Min(times, left[pattern.Kind]);
            left[pattern.Kind] -= now;
            if (now > 0)
                yield return (pattern, now);
        }
    }

    // Longest piece first, each into the smallest gap that takes it.
    private static void FillGaps(CuttingModel model, List<(Pattern Pattern, int Times)> cuts, int[] wanted)
    {
        var gaps = cuts.Select(cut => model.Kinds[cut.Pattern.Kind].Capacity - cut.Pattern.Used(model)).ToList();
        for (var item = 0; item < wanted.Length; item++)
        {
            for (; wanted[item] > 0; wanted[item]--)
            {
                var at = Smallest(gaps, model.Sizes[item]);
                if (at < 0)
                    break;
                Add(model, cuts, gaps, at, item);
            }
        }
    }

    private static int Smallest(List<long> gaps, long size)
    {
        var best = -1;
        for (var at = 0; at < gaps.Count; at++)
            if (gaps[at] >= size && (best < 0 || gaps[at] < gaps[best]))
                best = at;
        return best;
    }

    private static void Add(CuttingModel model, List<(Pattern Pattern, int Times)> cuts, List<long> gaps, int at, int item)
    {
        var (pattern, times) = cuts[at];
        var counts = new int[model.Count];
        foreach (var piece in pattern.Pieces)
            counts[piece.Item] = piece.Count;
        counts[item]++;
        if (times > 1)
        {
            cuts.Add((pattern, times - 1));
            gaps.Add(gaps[at]);
        }

        cuts[at] = (Pattern.FromCounts(pattern.Kind, counts), 1);
        gaps[at] -= model.Sizes[item];
    }
}
