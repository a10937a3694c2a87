using System.Collections.Immutable;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Sheets.Model;

/// <summary>Items of one size: the members say which of the problem's items they are, in the order pieces are handed
/// out.</summary>
internal sealed record ItemType(int W, int H, bool CanTurn, int Demand, long Area, ImmutableArray<int> Members)
{
    /// <summary>The longer side.</summary>
    public int Long => Math.Max(W, H);

    /// <summary>The shorter side.</summary>
    public int Short => Math.Min(W, H);
}

/// <summary>Joins equal items.</summary>
internal static class ItemTypes
{
    public static ItemType[] From(SheetProblem problem, AxisScale scale, StockType[] stocks)
    {
        var groups = new Dictionary<(int, int, bool), List<int>>();
        for (var i = 0; i < problem.Items.Length; i++)
        {
            var key = Key(problem.Items[i], scale, stocks);
            if (!groups.TryGetValue(key, out var members))
                groups.Add(key, members = []);
            members.Add(i);
        }
        return
        [
            .. groups
                .Select(g => Make(problem, g.Key, g.Value))
                .OrderByDescending(t => t.Area)
                .ThenByDescending(t => t.W)
                .ThenBy(t => t.CanTurn),
        ];
    }

    // An item that fits one way only lies that way; one that may turn is written longer side first.
    private static (int W, int H, bool CanTurn) Key(SheetItem item, AxisScale scale, StockType[] stocks)
    {
        var w = (int)(item.Dx / scale.X);
        var h = (int)(item.Dy / scale.Y);
        if (!item.CanTurn || w == h)
            return (w, h, false);
        var straight = Array.Exists(stocks, s => s.Holds(w, h));
        var turned = Array.Exists(stocks, s => s.Holds(h, w));
        if (straight && turned)
            return (Math.Max(w, h), Math.Min(w, h), true);
        return straight ? (w, h, false) : (h, w, false);
    }

    private static ItemType Make(SheetProblem problem, (int W, int H, bool CanTurn) key, List<int> members) =>
        new(key.W, key.H, key.CanTurn, members.Sum(m => problem.Items[m].Demand), (long)key.W * key.H, [.. members]);
}
