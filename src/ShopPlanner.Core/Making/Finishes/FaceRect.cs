using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>A rectangle on the plane of a face, in ticks.</summary>
internal readonly record struct FaceRect(long U, long V, long EndU, long EndV)
{
    public bool IsEmpty => EndU <= U || EndV <= V;

    public Area Area => IsEmpty ? Area.Zero : Area.Of(Length.FromTicks(EndU - U), Length.FromTicks(EndV - V));

    public FaceRect Within(FaceRect other) =>
        new(Math.Max(U, other.U), Math.Max(V, other.V), Math.Min(EndU, other.EndU), Math.Min(EndV, other.EndV));

    /// <summary>Area that rectangles cover, each place counted once: strips between their sides, and in each strip the runs of
    /// those that cross it.</summary>
    public static Area Covered(IEnumerable<FaceRect> rects)
    {
        var all = rects.Where(rect => !rect.IsEmpty).OrderBy(rect => rect.V).ToList();
        if (all.Count == 0)
            return Area.Zero;
        var sides = all.SelectMany(rect => new[] { rect.U, rect.EndU }).Distinct().Order().ToList();
        return sides
            .Zip(sides.Skip(1))
            .Aggregate(
                Area.Zero,
                (sum, strip) => sum + Area.Of(Length.FromTicks(strip.Second - strip.First), Run(all, strip.First, strip.Second))
            );
    }

    // Those that cross the strip, by where they begin.
    private static Length Run(List<FaceRect> byStart, long from, long to)
    {
        var (run, reached) = (0L, long.MinValue);
        foreach (var rect in byStart)
            if (rect.U <= from && rect.EndU >= to && rect.EndV > reached)
            {
                run += rect.EndV - Math.Max(rect.V, reached);
                reached = rect.EndV;
            }

        return Length.FromTicks(run);
    }
}
