namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// First plans within milliseconds: stock after stock is filled with the largest pieces that still fit (first fit decreasing
/// seen from the stock), and of all kinds of stock the one is opened that costs least for the size it holds.
/// </summary>
internal static class GreedyStart
{
    /// <summary>A plan for all that is wanted.</summary>
    public static Plan Build(CuttingModel model) => Plan.Of(model, Fill(model, model.Demands, Limits(model)));

    /// <summary>How much of each kind there is.</summary>
    public static int[] Limits(CuttingModel model) => [.. model.Kinds.Select(kind => kind.Limit)];

    /// <summary>Patterns for what is wanted, within what is to be had; pieces that find no room are left out.</summary>
    public static List<(Pattern Pattern, int Times)> Fill(CuttingModel model, int[] wanted, int[] limits)
    {
        var open = (int[])wanted.Clone();
        var left = (int[])limits.Clone();
        var cuts = new List<(Pattern, int)>();
        while (Next(model, open, left) is { } pattern)
        {
            var times = Math.Min(pattern.TimesWithin(open), left[pattern.Kind]);
            foreach (var piece in pattern.Pieces)
                open[piece.Item] -= piece.Count * times;
            left[pattern.Kind] -= times;
            cuts.Add((pattern, times));
        }

        return cuts;
    }

    private static Pattern? Next(CuttingModel model, int[] open, int[] left)
    {
        Pattern? best = null;
        var bestRate = double.PositiveInfinity;
        var first = Array.FindIndex(open, count => count > 0);
        if (first < 0)
            return null;
        for (var kind = 0; kind < left.Length; kind++)
        {
            if (left[kind] == 0)
                continue;
            var pattern = Largest(model, kind, open, first);
            var rate = model.Kinds[kind].Cost / (double)Math.Max(1, pattern.Used(model));
            if (pattern.Pieces.Length == 0 || rate >= bestRate)
                continue;
            (best, bestRate) = (pattern, rate);
        }

        return best;
    }

    private static Pattern Largest(CuttingModel model, int kind, int[] open, int first)
    {
        var room = model.Kinds[kind].Capacity;
        var pieces = new List<Piece>();
        for (var item = first; item < open.Length && room >= model.Sizes[^1]; item++)
        {
            var count = (int)Math.Min(open[item], room / model.Sizes[item]);
            if (count == 0)
                continue;
            pieces.Add(new Piece(item, count));
            room -= count * model.Sizes[item];
        }

        return new Pattern(kind, [.. pieces]);
    }
}
