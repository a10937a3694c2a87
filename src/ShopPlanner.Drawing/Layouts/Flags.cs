using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>A note above the drawing with a leader down to what is too small to hold it.</summary>
/// <param name="X">Page x of the leader.</param>
/// <param name="Foot">Page y where the leader ends, as if the stock's top edge lay at zero.</param>
/// <param name="Words">The note.</param>
internal sealed record Flag(double X, double Foot, string Words);

/// <summary>
/// Notes on leaders, in rows above the stock, so that no note covers another note or a leader. Each note starts at its leader
/// and reads to the right, or ends at it where the page's edge is near.
/// </summary>
internal sealed class Flags
{
    private const double Space = 3;

    private readonly List<Placed> placed = [];
    private readonly double size;
    private readonly double pageWidth;

    /// <summary>Arranges the notes.</summary>
    public Flags(IEnumerable<Flag> flags, double size, double pageWidth)
    {
        this.size = size;
        this.pageWidth = pageWidth;
        foreach (var flag in flags.OrderByDescending(f => f.X))
            placed.Add(Place(flag));
    }

    /// <summary>Height above the stock that they need.</summary>
    public double Height => placed.Count == 0 ? 0 : ((placed.Max(p => p.Row) + 1) * RowHeight) + 4;

    private double RowHeight => size * 1.3;

    /// <summary>The notes with their leaders, which break where something is written.</summary>
    /// <param name="top">Page y of the stock's top edge.</param>
    /// <param name="written">What is covered by words.</param>
    public IEnumerable<Shape> Draw(double top, IReadOnlyList<Box> written) => placed.SelectMany(p => Draw(p, top, written));

    private IEnumerable<Shape> Draw(Placed p, double top, IReadOnlyList<Box> written)
    {
        var y = top - 4 - ((p.Row + 0.5) * RowHeight);
        foreach (var leader in Leader(p.Flag.X, y - (size * 0.4), top + p.Flag.Foot, written))
            yield return leader;
        yield return new Line(
            Stroke.Thin,
            new(p.Flag.X - 1.5, top + p.Flag.Foot + 1.5),
            new(p.Flag.X + 1.5, top + p.Flag.Foot - 1.5)
        );
        var toTheLeft = p.Left < p.Flag.X;
        yield return new Caption(
            new(p.Flag.X + (toTheLeft ? -Space : Space), y),
            p.Flag.Words,
            size,
            toTheLeft ? Anchor.End : Anchor.Start,
            Weight.Medium
        );
    }

    private static IEnumerable<Line> Leader(double x, double from, double to, IEnumerable<Box> written)
    {
        foreach (var box in written.Where(b => b.X - 1 < x && x < b.Right + 1 && b.Bottom > from && b.Y < to).OrderBy(b => b.Y))
        {
            if (box.Y > from)
                yield return new(Stroke.Leader, new(x, from), new(x, box.Y));
            from = Math.Max(from, box.Bottom);
        }

        if (from < to)
            yield return new(Stroke.Leader, new(x, from), new(x, to));
    }

    // From right to left: a note lies above every leader that it would cross, and its own leader crosses no note below it.
    private Placed Place(Flag flag)
    {
        var candidate = Side(flag);
        var limit = placed.Count == 0 ? 0 : placed.Max(p => p.Row) + 1;
        for (var row = 0; row < limit; row++)
            if (Free(candidate with { Row = row }))
                return candidate with { Row = row };
        return candidate with { Row = limit };
    }

    // To the right where the page is wide enough, else to the left; shortened where neither side is.
    private Placed Side(Flag flag)
    {
        var wider = Math.Max(pageWidth - flag.X, flag.X) - (2 * Space);
        var shortened = flag with { Words = TextFit.Shorten(flag.Words, Weight.Medium, size, wider) };
        var width = Typeface.Width(shortened.Words, Weight.Medium, size) + (2 * Space);
        return flag.X + width <= pageWidth
            ? new(shortened, flag.X, flag.X + width, 0)
            : new(shortened, flag.X - width, flag.X, 0);
    }

    private bool Free(Placed candidate) =>
        placed.All(p =>
            (p.Row != candidate.Row || p.Right <= candidate.Left || candidate.Right <= p.Left)
            && (p.Row <= candidate.Row || !Crosses(p.Flag.X, candidate))
            && (p.Row >= candidate.Row || !Crosses(candidate.Flag.X, p))
        );

    private static bool Crosses(double leader, Placed note) => leader > note.Left - Space && leader < note.Right + Space;

    private sealed record Placed(Flag Flag, double Left, double Right, int Row);
}
