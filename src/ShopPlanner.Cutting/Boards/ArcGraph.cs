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
    private readonly CuttingModel _model;
    private readonly DualPoint _duals;
    private readonly long[][] _ahead;

    private ArcGraph(CuttingModel model, DualPoint duals)
    {
        (_model, _duals) = (model, duals);
        _ahead = new long[model.Count + 1][];
        _ahead[^1] = Ends();
        for (var item = model.Count - 1; item >= 0; item--)
            _ahead[item] = Before(item, _ahead[item + 1]);
    }

    /// <summary>The graph for a model; null where its table would be too large.</summary>
    public static ArcGraph? For(CuttingModel model, DualPoint duals) =>
        (model.Longest + 1) * (model.Count + 1) > LargestTable ? null : new ArcGraph(model, duals);

    /// <summary>The arcs that a plan of at most the total can use; null when they are more than <paramref name="most"/>.</summary>
    public List<Arc>? Arcs(long total, int most)
    {
        var least = (Int128)_duals.Bound - ((Int128)total * _duals.Scale);
        var arcs = new List<Arc>();
        var reached = new long[_model.Longest + 1];
        Array.Fill(reached, Unreached);
        reached[0] = 0;
        for (var item = 0; item < _model.Count && arcs.Count <= most; item++)
            reached = After(item, reached, (long)Int128.Max(least, Unreached), arcs);
        return arcs.Count > most ? null : arcs;
    }

    // What it costs, negative, to end a path here: the cheapest stock at least so long.
    private long[] Ends()
    {
        var ends = new long[_model.Longest + 1];
        Array.Fill(ends, Unreached);
        for (var kind = 0; kind < _model.Kinds.Length; kind++)
        {
            var at = _model.Kinds[kind].Capacity;
            ends[at] = Math.Max(ends[at], -(_model.Kinds[kind].Cost * _duals.Scale) - _duals.Surcharges[kind]);
        }

        for (var at = ends.Length - 2; at >= 0; at--)
            ends[at] = Math.Max(ends[at], ends[at + 1]);
        return ends;
    }

    private long[] Before(int item, long[] without)
    {
        var size = (int)_model.Sizes[item];
        var with = (long[])without.Clone();
        for (var at = 0; at + size < with.Length; at++)
        {
            var most = Math.Min(_model.Demands[item], (with.Length - 1 - at) / size);
            for (var count = 1; count <= most; count++)
                with[at] = Math.Max(with[at], without[at + (count * size)] + (count * _duals.Values[item]));
        }

        return with;
    }

    private long[] After(int item, long[] reached, long least, List<Arc> arcs)
    {
        var with = (long[])reached.Clone();
        var drawn = new bool[reached.Length];
        var last = reached;
        for (var count = 1; count <= Math.Min(_model.Demands[item], _model.Longest / _model.Sizes[item]); count++)
        {
            if (OneMore(item, last, least, with, drawn) is not { } now)
                break;
            last = now;
        }

        var size = (int)_model.Sizes[item];
        for (var at = 0; at < drawn.Length; at++)
            if (drawn[at])
                arcs.Add(new Arc(item, at, at + size));
        return with;
    }

    // Where one more piece of the item leads to; null when nowhere.
    private long[]? OneMore(int item, long[] last, long least, long[] with, bool[] drawn)
    {
        var (size, value, ahead) = ((int)_model.Sizes[item], _duals.Values[item], _ahead[item]);
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
