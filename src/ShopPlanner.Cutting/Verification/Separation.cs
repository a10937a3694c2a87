namespace ShopPlanner.Cutting.Verification;

/// <summary>Can straight cuts from edge to edge, each one kerf wide, free every rectangle?</summary>
internal static class Separation
{
    /// <summary>
    /// Parts the rectangles at every gap of at least a kerf, along x and across in turn, until each stands alone. Taking any cut
    /// that is possible loses nothing: a cut that frees the others stays possible in the pieces it leaves.
    /// </summary>
    public static bool IsPossible(IReadOnlyList<Rect> rects, long kerf)
    {
        var open = new Stack<Rect[]>();
        open.Push([.. rects]);
        while (open.TryPop(out var group))
        {
            if (group.Length <= 1) continue;
            var parted = Parted(group, kerf, true);
            if (parted.Count == 1) parted = Parted(group, kerf, false);
            if (parted.Count == 1) return false;
            foreach (var smaller in parted) open.Push(smaller);
        }

        return true;
    }

    private static List<Rect[]> Parted(Rect[] group, long kerf, bool alongX)
    {
        var sorted = group.OrderBy(rect => rect.Start(alongX)).ToArray();
        var parted = new List<Rect[]>();
        var (first, reach) = (0, sorted[0].End(alongX));
        for (var i = 1; i < sorted.Length; i++)
        {
            if (sorted[i].Start(alongX) - reach >= kerf)
            {
                parted.Add(sorted[first..i]);
                first = i;
            }

            reach = Math.Max(reach, sorted[i].End(alongX));
        }

        parted.Add(sorted[first..]);
        return parted;
    }
}
