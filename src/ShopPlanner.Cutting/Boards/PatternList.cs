namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Lists every pattern that a plan of at most a given total can use. With item values w and surcharges s that no pattern's worth
/// exceeds (value ≤ cost + s), a plan's total is the dual bound plus what each of its patterns falls short, so a pattern that
/// falls short by more than total − bound is in no such plan. Only patterns to which nothing wanted can be added are listed, for
/// demands may be covered in excess, unless gaps are asked for. All in whole numbers.
/// </summary>
internal sealed class PatternList
{
    private const long LargestTable = 12_000_000;
    private readonly CuttingModel model;
    private readonly DualPoint duals;
    private readonly int most;
    private readonly long step;
    private readonly long[][] ahead;
    private readonly int[] counts;
    private readonly List<Pattern> found = [];
    private readonly long steps;
    private readonly bool withGaps;
    private long worth;
    private long done;

    private PatternList(CuttingModel model, DualPoint duals, int most, bool withGaps)
    {
        (this.model, this.duals, this.most, steps, this.withGaps) = (model, duals, most, 100L * most, withGaps);
        step = Math.Max(1, model.Longest * (model.Count + 1) / LargestTable);
        ahead = Ahead(model, duals.Values, step);
        counts = new int[model.Count];
    }

    /// <summary>The patterns, or null when they are more than <paramref name="most"/>.</summary>
    public static List<Pattern>? Of(CuttingModel model, DualPoint duals, long total, int most, bool withGaps = false)
    {
        var list = new PatternList(model, duals, most, withGaps);
        var gap = ((Int128)total * duals.Scale) - duals.Bound;
        for (var kind = 0; kind < model.Kinds.Length; kind++)
        {
            var worth = (Int128)(model.Kinds[kind].Cost * duals.Scale) + duals.Surcharges[kind] - gap;
            list.worth = (long)Int128.Max(worth, 0);
            if (!list.Descend(kind, 0, model.Kinds[kind].Capacity, 0))
                return null;
        }

        return list.found;
    }

    // Most that items from i on are worth in so much room; rooms are rounded up and sizes down to a coarser measure where the
    // table would be too large, which can only make it too high.
    private static long[][] Ahead(CuttingModel model, long[] values, long step)
    {
        var rooms = (int)(model.Longest / step) + 2;
        var ahead = new long[model.Count + 1][];
        ahead[^1] = new long[rooms];
        for (var item = model.Count - 1; item >= 0; item--)
            ahead[item] = With(ahead[item + 1], values[item], (int)(model.Sizes[item] / step), model.Demands[item]);
        return ahead;
    }

    private static long[] With(long[] without, long value, int size, int wanted)
    {
        var with = (long[])without.Clone();
        for (var room = size; room < with.Length; room++)
        {
            var most = size == 0 ? wanted : Math.Min(wanted, room / size);
            for (var count = 1; count <= most; count++)
                with[room] = Math.Max(with[room], without[room - (count * size)] + (count * value));
        }

        return with;
    }

    private bool Descend(int kind, int item, long room, long value)
    {
        if (++done > steps)
            return false;
        if (item == counts.Length)
            return Keep(kind, room);
        var most = (int)Math.Min(model.Demands[item], room / model.Sizes[item]);
        for (var count = most; count >= 0; count--)
        {
            var rest = room - (count * model.Sizes[item]);
            var worth = value + (count * duals.Values[item]);
            if (worth + ahead[item + 1][(rest + step - 1) / step] < this.worth)
                continue;
            counts[item] = count;
            if (!Descend(kind, item + 1, rest, worth))
                return false;
        }

        counts[item] = 0;
        return true;
    }

    private bool Keep(int kind, long room)
    {
        for (var item = counts.Length - 1; !withGaps && item >= 0 && model.Sizes[item] <= room; item--)
            if (counts[item] < model.Demands[item])
                return true;
        if (room == model.Kinds[kind].Capacity)
            return true;
        found.Add(Pattern.FromCounts(kind, counts));
        return found.Count <= most;
    }
}
