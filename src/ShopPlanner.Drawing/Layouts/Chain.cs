using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>One step of the row of dimensions: a piece, a kept leftover, or neighbouring pieces alike.</summary>
/// <param name="Pieces">The pieces; none for a leftover.</param>
/// <param name="From">Page x.</param>
/// <param name="To">Page x.</param>
/// <param name="Words">The figure: <c>34 ½</c>, <c>6 × 3 ½</c>.</param>
/// <param name="Fits">Whether the figure fits between the ticks.</param>
internal sealed record ChainStep(IReadOnlyList<PiecePicture> Pieces, double From, double To, string Words, bool Fits);

/// <summary>The row of dimensions under a board whose pieces are as wide as the board.</summary>
internal sealed class Chain
{
    private readonly LayoutPicture picture;
    private readonly View view;
    private readonly double size;

    /// <summary>Decides the steps: like neighbours too short for their figure share one.</summary>
    public Chain(LayoutPicture picture, View view, DrawingRoom room)
    {
        this.picture = picture;
        this.view = view;
        size = room.NoteText;
        var steps = new List<ChainStep>();
        foreach (var piece in picture.Pieces.OrderBy(p => p.Area.X))
            Add(steps, piece);
        steps.AddRange(
            picture.Leftovers.Where(l => l.Keep).Select(l => Step([], l.Area, l.Area, Figures.Of(l.Area.Dx, picture.Unit)))
        );
        Steps = steps;
    }

    /// <summary>The steps, those of pieces from left to right.</summary>
    public IReadOnlyList<ChainStep> Steps { get; }

    /// <summary>The dimensions.</summary>
    public IEnumerable<Shape> Draw(double at, double edge) =>
        Steps.Select(s => new Dimension(Run.Across, s.From, s.To, at, edge, s.Fits ? s.Words : "", size));

    private void Add(List<ChainStep> steps, PiecePicture piece)
    {
        var step = Step([piece], piece.Area, piece.Area, Figures.Of(piece.Area.Dx, picture.Unit));
        if (!step.Fits && steps.Count > 0 && Joins(steps[^1], piece))
        {
            IReadOnlyList<PiecePicture> pieces = [.. steps[^1].Pieces, piece];
            steps[^1] = Step(pieces, pieces[0].Area, piece.Area, $"{pieces.Count} × {Figures.Of(piece.Area.Dx, picture.Unit)}");
        }
        else
            steps.Add(step);
    }

    private static bool Joins(ChainStep before, PiecePicture piece)
    {
        if (before.Pieces.Count == 0 || before.Pieces[^1].Area.Dx != piece.Area.Dx)
            return false;
        var gap = piece.Area.X - before.Pieces[^1].Area.X - piece.Area.Dx;
        return gap < piece.Area.Dx;
    }

    private ChainStep Step(IReadOnlyList<PiecePicture> pieces, StockArea first, StockArea last, string words)
    {
        var (from, to) = (view.Of(first).X, view.Of(last).Right);
        return new(pieces, from, to, words, Typeface.Width(words, Weight.Medium, size) + 4 <= to - from);
    }
}
