using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>
/// The longest row of items that a stock's side can hold: a layout pushed together uses no more of the side, so bounds may
/// count with this shorter side.
/// </summary>
internal static class ReachableSides
{
    private const long MostWork = 20_000_000;

    public static long Of(long side, IReadOnlyList<(long Length, int Count)> lengths)
    {
        if (side * lengths.Sum(l => Math.Min(l.Count, side / l.Length)) / 64 > MostWork)
            return side;
        var reached = new ulong[(side / 64) + 1];
        reached[0] = 1;
        foreach (var (length, count) in lengths)
        {
            for (var n = Math.Min(count, side / length); n > 0; n--)
                OrShifted(reached, length);
        }
        while ((reached[side >> 6] >> (int)(side & 63) & 1) == 0)
            side--;
        return side;
    }

    /// <summary>Lengths that occur along an axis, with how many pieces can lie that way.</summary>
    public static List<(long Length, int Count)> Lengths(IEnumerable<ItemType> types, bool alongX)
    {
        var counts = new Dictionary<long, int>();
        foreach (var type in types)
        {
            Add(counts, alongX ? type.W : type.H, type.Demand);
            if (type.CanTurn)
                Add(counts, alongX ? type.H : type.W, type.Demand);
        }
        return [.. counts.Select(c => (c.Key, c.Value))];
    }

    private static void Add(Dictionary<long, int> counts, long length, int count) =>
        counts[length] = counts.GetValueOrDefault(length) + count;

    private static void OrShifted(ulong[] bits, long shift)
    {
        var words = (int)(shift >> 6);
        var rest = (int)(shift & 63);
        for (var i = bits.Length - 1; i >= words; i--)
        {
            var low = rest == 0 || i - words == 0 ? 0 : bits[i - words - 1] >> (64 - rest);
            bits[i] |= (bits[i - words] << rest) | low;
        }
    }
}
