namespace ShopPlanner.Cutting.Verification;

/// <summary>A rectangle by its four sides, in ticks.</summary>
internal readonly record struct Box(long Left, long Bottom, long Right, long Top)
{
    public static Box Of(PlacedPiece piece) =>
        new(piece.X.Ticks, piece.Y.Ticks, (piece.X + piece.Dx).Ticks, (piece.Y + piece.Dy).Ticks);

    public static Box Of(Leftover left) => new(left.X.Ticks, left.Y.Ticks, (left.X + left.Dx).Ticks, (left.Y + left.Dy).Ticks);

    public bool Contains(Box other) => other.Left >= Left && other.Bottom >= Bottom && other.Right <= Right && other.Top <= Top;

    public bool Overlaps(Box other) => other.Left < Right && other.Right > Left && other.Bottom < Top && other.Top > Bottom;

    /// <summary>True when straight edge-to-edge cuts of the kerf's width free every box.</summary>
    public static bool CanBeCutFree(IReadOnlyList<Box> boxes, long kerf)
    {
        // A stack of groups, not recursion: a long board holds thousands of pieces.
        var groups = new Stack<IReadOnlyList<Box>>();
        groups.Push(boxes);
        while (groups.TryPop(out var group))
        {
            if (group.Count <= 1)
                continue;
            var parted = Parted(group, kerf, box => box.Left, box => box.Right);
            if (parted.Count == 1)
                parted = Parted(group, kerf, box => box.Bottom, box => box.Top);
            if (parted.Count == 1)
                return false;
            foreach (var smaller in parted)
                groups.Push(smaller);
        }

        return true;
    }

    // At every gap at once. Any free cut may be made first: it never takes another one away.
    private static List<IReadOnlyList<Box>> Parted(IReadOnlyList<Box> boxes, long kerf, Func<Box, long> low, Func<Box, long> high)
    {
        var order = boxes.OrderBy(low).ToList();
        var parted = new List<IReadOnlyList<Box>>();
        var (first, reach) = (0, high(order[0]));
        for (var i = 1; i < order.Count; i++)
        {
            if (low(order[i]) - reach >= kerf)
            {
                parted.Add(order[first..i]);
                first = i;
            }

            reach = Math.Max(reach, high(order[i]));
        }

        parted.Add(order[first..]);
        return parted;
    }
}
