using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>
/// Lengths up to a side, told in so many marks, ⌊x·marks/side⌋: no row of pieces measures more than what it is cut from, so
/// every layout stays one when all lengths are measured like this, and what bounds the measured ones bounds the true ones.
/// </summary>
internal readonly record struct CoarseRule(int Side, int Marks)
{
    /// <summary>Every length as it is.</summary>
    public static CoarseRule None(int side) => new(side, side);

    public int Of(int length) => (int)((long)length * Marks / Side);

    /// <summary>At most so many marks, and not many fewer, so that the lengths lose least by rounding.</summary>
    public static CoarseRule Best(int side, int most, IReadOnlyList<(int Length, double Weight)> lengths)
    {
        if (side <= most)
            return None(side);
        return Enumerable
            .Range(most * 4 / 5, (most / 5) + 1)
            .Select(m => new CoarseRule(side, m))
            .MaxBy(rule => lengths.Sum(l => l.Weight * rule.Kept(l.Length)));
    }

    /// <summary>Sides that occur along an axis, weighted by area.</summary>
    public static List<(int Length, double Weight)> Lengths(SheetModel model, bool alongX) =>
        [.. model.Types.Where(t => t.Demand > 0).SelectMany(t => Sides(t, alongX).Select(l => (l, (double)t.Area * t.Demand)))];

    private static IEnumerable<int> Sides(ItemType type, bool alongX) =>
        type.CanTurn ? [type.W, type.H] : [alongX ? type.W : type.H];

    private double Kept(int length) => (double)Of(length) * Side / ((double)length * Marks);
}
