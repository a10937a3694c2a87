namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>
/// Where cuts across one axis need to be looked for: the sums of the sides of pieces (normal patterns, Christofides and Whitlock,
/// Operations Research 25, 1977). A layout pushed towards the origin has every cut at one of them.
/// </summary>
internal sealed class CutPoints
{
    private CutPoints(int[] at)
    {
        At = at;
        IsDense = at[^1] == at.Length - 1;
        Rest = [.. at.Select(RestOf)];
        Splits = Rest.Sum(r => (long)r.Length);
    }

    /// <summary>Ascending, the first is zero.</summary>
    public int[] At { get; }

    /// <summary>True when every whole length is a point.</summary>
    public bool IsDense { get; }

    /// <summary>For a length, point i, and its cuts in no more than the middle, points 1, 2, …: the point that the rest rounds
    /// down to.</summary>
    public int[][] Rest { get; }

    /// <summary>Cuts of all lengths together.</summary>
    public long Splits { get; }

    public int Count => At.Length;

    /// <summary>The points up to a side, all whole lengths when that is not many more; null when there are more than
    /// <paramref name="most"/>.</summary>
    public static CutPoints? Of(int side, IEnumerable<(int Length, int Count)> lengths, int most)
    {
        int[] points = [0];
        foreach (var (length, count) in lengths)
        {
            for (var n = Math.Min(count, side / length); n > 0; n--)
            {
                var before = points.Length;
                points = Merged(points, length, side);
                if (points.Length > most)
                    return null;
                if (points.Length == before)
                    break;
            }
        }
        return new(points.Length * 5 > points[^1] * 4 ? [.. Enumerable.Range(0, points[^1] + 1)] : points);
    }

    /// <summary>Index of the largest point not above a length.</summary>
    public int Floor(int length)
    {
        var index = Array.BinarySearch(At, length);
        return index >= 0 ? index : ~index - 1;
    }

    private int[] RestOf(int length)
    {
        var rest = new int[Floor(length / 2)];
        for (var k = 1; k <= rest.Length; k++)
            rest[k - 1] = Floor(length - At[k]);
        return rest;
    }

    // The points with and without one more of a length.
    private static int[] Merged(int[] points, int length, int side)
    {
        var merged = new List<int>(points.Length * 2);
        var longer = points.TakeWhile(p => p <= side - length).Select(p => p + length).ToArray();
        for (var (a, b) = (0, 0); a < points.Length || b < longer.Length; )
        {
            var isOld = b == longer.Length || (a < points.Length && points[a] <= longer[b]);
            var next = isOld ? points[a++] : longer[b++];
            if (merged.Count == 0 || merged[^1] != next)
                merged.Add(next);
        }
        return [.. merged];
    }
}
