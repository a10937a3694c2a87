namespace ShopPlanner.Cutting.Tests.Limits;

/// <summary>A tiny job in whole inches: one size of new sheet without margins, as many as wanted.</summary>
internal sealed record TinyJob(
    int Dx,
    int Dy,
    int Kerf,
    int? WidestRip,
    int? LongestCrosscut,
    int StoreCuts,
    int Tolerance,
    (int Longest, int Widest)? Car,
    (int Dx, int Dy, bool CanTurn)[] Pieces
);

/// <summary>
/// The fewest sheets of a tiny job by trying every cut at every inch, by the store and at home, and every way of sharing the pieces
/// between the two sides. Slow and simple on purpose: nothing of the planner is used.
/// </summary>
internal sealed class EveryPracticableCut(TinyJob job)
{
    private readonly Dictionary<(int, int, Rough, int), bool> known = [];

    [Flags]
    private enum Rough
    {
        None = 0,
        Left = 1,
        Right = 2,
        Bottom = 4,
        Top = 8,
    }

    /// <summary>Null when some piece cannot be cut at all.</summary>
    public int? FewestSheets()
    {
        var all = (1 << job.Pieces.Length) - 1;
        var fewest = new int?[all + 1];
        fewest[0] = 0;
        for (var set = 1; set <= all; set++)
        for (var one = set; one > 0; one = (one - 1) & set)
            if (fewest[set & ~one] + 1 is { } sheets && !(sheets >= fewest[set]) && OneSheet(one))
                fewest[set] = sheets;
        return fewest[all];
    }

    private bool OneSheet(int set)
    {
        if (GoesHome(job.Dx, job.Dy) && Home(job.Dx, job.Dy, Rough.None, set))
            return true;
        return job.StoreCuts > 0
            && (Store(true, 0, job.StoreCuts, Rough.None, set) || Store(false, 0, job.StoreCuts, Rough.None, set));
    }

    // What the store has not parted yet: from a place on to the end of the stock.
    private bool Store(bool alongX, int from, int cuts, Rough low, int set)
    {
        var rest = (alongX ? job.Dx : job.Dy) - from;
        if (rest <= 0)
            return set == 0;
        if (from > 0 && Panel(alongX, rest, low, set))
            return true;
        var high =
            job.Tolerance == 0 ? Rough.None
            : alongX ? Rough.Right
            : Rough.Top;
        var next =
            job.Tolerance == 0 ? Rough.None
            : alongX ? Rough.Left
            : Rough.Bottom;
        for (var at = 1; at < rest && cuts > 0; at++)
        for (var part = set; ; part = (part - 1) & set)
        {
            if (Panel(alongX, at, low | high, part) && Store(alongX, from + at + job.Kerf, cuts - 1, next, set & ~part))
                return true;
            if (part == 0)
                break;
        }

        return false;
    }

    private bool Panel(bool alongX, int size, Rough rough, int set)
    {
        var (dx, dy) = alongX ? (size, job.Dy) : (job.Dx, size);
        return GoesHome(dx, dy) && Home(dx, dy, rough, set);
    }

    private bool GoesHome(int dx, int dy) =>
        job.Car is not { } car || (Math.Max(dx, dy) <= car.Longest && Math.Min(dx, dy) <= car.Widest);

    private bool Home(int dx, int dy, Rough rough, int set)
    {
        if (set == 0)
            return true;
        if (dx <= 0 || dy <= 0 || Area(set) > dx * dy)
            return false;
        if (rough == Rough.None && IsFinished(dx, dy, set))
            return true;
        if (known.TryGetValue((dx, dy, rough, set), out var answer))
            return answer;
        return known[(dx, dy, rough, set)] = Square(dx, dy, rough, set) || Cross(dx, dy, rough, set) || Rip(dx, dy, rough, set);
    }

    private bool Square(int dx, int dy, Rough rough, int set) =>
        (rough.HasFlag(Rough.Left) && Crosses(dy) && Home(dx - job.Tolerance, dy, rough & ~Rough.Left, set))
        || (
            rough.HasFlag(Rough.Bottom)
            && Rips(Math.Max(0, job.Tolerance - job.Kerf), dy)
            && Home(dx, dy - job.Tolerance, rough & ~Rough.Bottom, set)
        );

    private bool Cross(int dx, int dy, Rough rough, int set)
    {
        for (var at = 1; at < dx && Crosses(dy); at++)
        for (var part = set; ; part = (part - 1) & set)
        {
            var sound = Sound(at, dx, part, set, rough.HasFlag(Rough.Left), rough.HasFlag(Rough.Right));
            if (
                sound
                && Home(at, dy, rough & ~Rough.Right, part)
                && Home(dx - at - job.Kerf, dy, rough & ~Rough.Left, set & ~part)
            )
                return true;
            if (part == 0)
                break;
        }

        return false;
    }

    private bool Rip(int dx, int dy, Rough rough, int set)
    {
        for (var at = 1; at < dy; at++)
        for (var part = set; Rips(at, dy); part = (part - 1) & set)
        {
            var sound = Sound(at, dy, part, set, rough.HasFlag(Rough.Bottom), rough.HasFlag(Rough.Top));
            if (
                sound
                && Home(dx, at, rough & ~Rough.Top, part)
                && Home(dx, dy - at - job.Kerf, rough & ~Rough.Bottom, set & ~part)
            )
                return true;
            if (part == 0)
                break;
        }

        return false;
    }

    // A cut through the wood left on for tolerance makes no square edge.
    private bool Sound(int at, int size, int first, int set, bool lowRough, bool highRough) =>
        !(highRough && first != 0 && at > size - job.Tolerance)
        && !(lowRough && (set & ~first) != 0 && at + job.Kerf < job.Tolerance);

    private bool Crosses(int dy) => !(dy > job.LongestCrosscut);

    private bool Rips(int at, int dy) => !(Math.Min(at, dy - at - job.Kerf) > job.WidestRip);

    private bool IsFinished(int dx, int dy, int set)
    {
        if ((set & (set - 1)) != 0)
            return false;
        var piece = job.Pieces[int.TrailingZeroCount(set)];
        return (piece.Dx == dx && piece.Dy == dy) || (piece.CanTurn && piece.Dx == dy && piece.Dy == dx);
    }

    private int Area(int set) => job.Pieces.Where((_, i) => (set >> i & 1) != 0).Sum(piece => piece.Dx * piece.Dy);
}
