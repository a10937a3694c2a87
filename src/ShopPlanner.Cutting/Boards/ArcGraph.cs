namespace ShopPlanner.Cutting.Boards;

/// <summary>One piece of an item, cut where so much of the stock is used already.</summary>
internal readonly record struct Arc(int Item, int From, int To);

/// <summary>
/// Patterns as paths along a stock, pieces in the model's order (Valério de Carvalho, Annals of Operations Research 86, 1999), as
/// far as a plan of at most a given total can use them: an arc is left out when the most valuable path through it falls short of
/// every stock's cost by more than total − bound, for the reason given at <see cref="PatternList"/>.
/// </summary>
internal sealed class ArcGraph
{
    private const long Unreached = long.MinValue / 4;
    private const long LargestTable = 20_000_000;
    private readonly CuttingModel model;
    private readonly DualPoint duals;
    private readonly long[][] ahead;

    private ArcGraph(CuttingModel model, DualPoint duals)
    {
        (this.model, this.duals) = (model, duals);
        ahead = new long[model.Count + 1][];
        ahead[^1] = Ends();
        for (var item = model.Count - 1; item >= 0; item--)
            ahead[item] = Before(item, ahead[item + 1]);
    }

    /// <summary>The graph for a model; null where its table would be too large.</summary>
    public static ArcGraph? For(CuttingModel model, DualPoint duals) =>
        (model.Longest + 1) * (model.Count + 1) > LargestTable ? null : new ArcGraph(model, duals);

    /// <summary>The arcs that a plan of at most the total can use; null when they are more than <paramref name="most"/>.
    /// </summary>
    public List<Arc>? Arcs(long total, int most)
    {
        var least = (Int128)duals.Bound - ((Int128)total * duals.Scale);
        var arcs = new List<Arc>();
        var reached = new long[model.Longest + 1];
        Array.Fill(reached, Unreached);
        reached[0] = 0;
        for (var item = 0; item < model.Count && arcs.Count <= most; item++)
            reached = After(item, reached, (long)Int128.Max(least, Unreached), arcs);
        return arcs.Count > most ? null : arcs;
    }

    // What it costs, negative, to end a path here: the cheapest stock at least so long.
    private long[] Ends()
    {
        var ends = new long[model.Longest + 1];
        Array.Fill(ends, Unreached);
        for (var kind = 0; kind < model.Kinds.Length; kind++)
        {
            var at = model.Kinds[kind].Capacity;
            ends[at] = Math.Max(ends[at], -(model.Kinds[kind].Cost * duals.Scale) - duals.Surcharges[kind]);
        }

        for (var at = ends.Length - 2; at >= 0; at--)
            ends[at] = Math.Max(ends[at], ends[at + 1]);
        return ends;
    }

    private long[] Before(int item, long[] without)
    {
        var size = (int)model.Sizes[item];
        var with = (long[])without.Clone();
        for (var at = 0; at + size < with.Length; at++)
        {
            var most = Math.Min(model.Demands[item], (with.Length - 1 - at) / size);
            for (var count = 1; count <= most; count++)
                with[at] = Math.Max(with[at], without[at + (count * size)] + (count * duals.Values[item]));
        }

        return with;
    }

    private long[] After(int item, long[] reached, long least, List<Arc> arcs)
    {
        var with = (long[])reached.Clone();
        var drawn = new bool[reached.Length];
        var last = reached;
        for (var count = 1; count <= Math.Min(model.Demands[item], model.Longest / model.Sizes[item]); count++)
        {
            if (OneMore(item, last, least, with, drawn) is not { } now)
                break;
            last = now;
        }

        var size = (int)model.Sizes[item];
        for (var at = 0; at < drawn.Length; at++)
            if (drawn[at])
                arcs.Add(new Arc(item, at, at + size));
        return with;
    }

    // Where one more piece of the item leads to; null when nowhere.
    private long[]? OneMore(int item, long[] last, long least, long[] with, bool[] drawn)
    {
        var (size, value, ahead) = ((int)model.Sizes[item], duals.Values[item], this.ahead[item]);
        var now = new long[last.Length];
        Array.Fill(now, Unreached);
        var any = false;
        for (var at = 0; at + size < now.Length; at++)
        {
            if (last[at] <= Unreached || last[at] + value + ahead[at + size] < least)
                continue;
            now[at + size] = last[at] + value;
            with[at + size] = Math.Max(with[at + size], now[at + size]);
            any = drawn[at] = true;
        }

        return any ? now : null;
    }
}
