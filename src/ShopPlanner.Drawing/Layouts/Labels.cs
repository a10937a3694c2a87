using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>What is written on the pieces and leftovers, and what must be said beside them for want of room.</summary>
internal sealed class Labels
{
    private readonly LayoutPicture picture;
    private readonly View view;
    private readonly DrawingRoom room;
    private readonly Chain? chain;
    private readonly List<Shape> shapes = [];
    private readonly List<(PiecePicture Piece, LabelLevel Level)> labelled = [];
    private readonly List<PiecePicture> unlabelled = [];

    /// <summary>Labels the pieces.</summary>
    /// <param name="picture">Whose pieces.</param>
    /// <param name="view">With its top edge at zero.</param>
    /// <param name="room">How small type may be.</param>
    /// <param name="chain">The row of dimensions that gives the lengths; null where the labels must.</param>
    public Labels(LayoutPicture picture, View view, DrawingRoom room, Chain? chain)
    {
        this.picture = picture;
        this.view = view;
        this.room = room;
        this.chain = chain;
        foreach (var piece in picture.Pieces)
            AddPiece(piece);
        var flags = new List<Flag>();
        foreach (var leftover in picture.Leftovers.Where(l => l.Keep))
            AddKeeper(leftover, flags);
        flags.AddRange(chain is null ? SheetFlags() : ChainFlags(chain));
        Flags = flags;
    }

    /// <summary>Notes on leaders.</summary>
    public IReadOnlyList<Flag> Flags { get; }

    /// <summary>Pieces whose size has to be looked up in the key.</summary>
    public IEnumerable<PiecePicture> OnlyMarked =>
        chain is null ? labelled.Where(l => l.Level == LabelLevel.Mark).Select(l => l.Piece) : [];

    /// <summary>The labels.</summary>
    /// <param name="top">Page y of the stock's top edge.</param>
    /// <param name="taken">Receives what they cover.</param>
    public IEnumerable<Shape> Draw(double top, List<Box> taken)
    {
        var moved = shapes.Select(s => s.Moved(0, top)).ToList();
        taken.AddRange(moved.Select(Covered));
        return moved;
    }

    private void AddPiece(PiecePicture piece)
    {
        var figures = chain is null ? Figures.Of(piece.Area, piece.Turned, picture.Unit) : "";
        var mark = TurnedWords.Mark(MarkRange.Short(piece.Mark), piece) + (piece.Done ? " ✓" : "");
        var name = TurnedWords.After(Figures.Short(piece.Name), piece.Turned);
        var label = PieceLabel.Fit(mark, figures, name, view.Of(piece.Area), room);
        if (label is null)
            unlabelled.Add(piece);
        else
            labelled.Add((piece, label.Level));
        shapes.AddRange(label?.Shapes ?? []);
    }

    private void AddKeeper(LeftoverPicture leftover, List<Flag> flags)
    {
        var box = view.Of(leftover.Area);
        var tag = leftover.Tag is { } t ? "keep " + Figures.Short(t) : "keep";
        var size = Figures.Of(leftover.Area, turned: false, picture.Unit);
        string[] choices = chain is null ? [$"{tag}: {size}", size, tag] : [tag];
        foreach (var upward in new[] { false, true })
        foreach (var words in choices)
        {
            var caption = new Caption(box.Centre, words, room.NoteText, Anchor.Middle, Weight.Medium, Tone.Done, upward);
            if (caption.Extent is var e && (e.Width > box.Width - 10 || e.Height > box.Height - 4))
                continue;
            shapes.Add(caption);
            return;
        }

        flags.Add(FlagOver(box, chain is null ? $"{tag}: {size}" : $"{tag}: {Figures.Of(leftover.Area.Dx, picture.Unit)}"));
    }

    private IEnumerable<Flag> ChainFlags(Chain row) =>
        row
            .Steps.Where(s => s.Pieces.Count > 0 && (!s.Fits || s.Pieces.Any(unlabelled.Contains)))
            .Select(s => new Flag((s.From + s.To) / 2, 2, $"{MarkRange.Of([.. s.Pieces.Select(p => p.Mark)])}: {s.Words}"));

    // Neighbours alike in a row or in a stack share a note.
    private IEnumerable<Flag> SheetFlags() =>
        unlabelled
            .GroupBy(p => (p.Area.Dx, p.Area.Dy, p.Turned, InRow: IsInRow(p), Line: IsInRow(p) ? p.Area.Y : p.Area.X))
            .Select(g =>
                FlagOver(
                    Middle([.. g]),
                    $"{MarkRange.Of([.. g.Select(p => p.Mark)])}: "
                        + TurnedWords.After(Figures.Of(g.First().Area, g.Key.Turned, picture.Unit), g.Key.Turned)
                )
            );

    private bool IsInRow(PiecePicture piece) =>
        unlabelled.Any(p => p != piece && (p.Area.Dx, p.Area.Dy, p.Area.Y) == (piece.Area.Dx, piece.Area.Dy, piece.Area.Y));

    private Box Middle(List<PiecePicture> alike) =>
        view.Of(alike.OrderBy(p => p.Area.X).ThenBy(p => p.Area.Y).ElementAt(alike.Count / 2).Area);

    // The leader comes down where it crosses the least that is written.
    private Flag FlagOver(Box box, string words)
    {
        double[] along = [0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9];
        var x = along
            .Select(a => box.X + (box.Width * a))
            .MinBy(x => shapes.Count(s => Covered(s).Overlaps(new Box(x - 1, view.Top, 2, box.Centre.Y))));
        return new(x, box.Centre.Y, words);
    }

    private static Box Covered(Shape shape) =>
        shape switch
        {
            RingMark ring => ring.Extent,
            Caption caption => caption.Extent,
            _ => default,
        };
}
