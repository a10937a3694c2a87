using System.Collections.Immutable;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>Puts the parts of a layout drawing together, from the leader notes at the top to the key at the foot.</summary>
internal sealed class LayoutComposition
{
    private const double Margin = 7,
        TopMargin = 7;

    /// <summary>Beside a board: its end and the margins.</summary>
    public static double Beside => (2 * Margin) + EndSection.Room;

    private readonly LayoutPicture picture;
    private readonly DrawingRoom room;
    private readonly bool isBoard;
    private readonly View view;
    private readonly Chain? chain;
    private readonly Labels labels;
    private readonly Flags flags;
    private readonly LayoutKey key;

    /// <summary>Decides where everything stands.</summary>
    public LayoutComposition(LayoutPicture picture, DrawingRoom room, bool isBoard)
    {
        this.picture = picture;
        this.room = room;
        this.isBoard = isBoard;
        var left = Margin + (isBoard ? EndSection.Room : SideDimension);
        var flat = View.Fill(picture, left, room.Width - left - Margin, room, Stretch);
        var inRow = isBoard && picture.Pieces.All(p => p.Area.Dy == picture.Width);
        chain = inRow ? new Chain(picture, flat, room) : null;
        labels = new Labels(picture, flat, room, chain);
        flags = new Flags(labels.Flags, room.NoteText, room.Width);
        key = new LayoutKey(picture, labels.OnlyMarked, room.NoteText, room.Width - (2 * Margin));
        view = flat with { Top = TopMargin + flags.Height };
    }

    /// <summary>The whole-number scale of the drawing; null where it fills its width.</summary>
    public int? Scale => view.Scale;

    private double SideDimension => room.NoteText * 1.9;

    /// <summary>The drawing.</summary>
    public LineDrawing Draw()
    {
        var whole = view.Whole(picture);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        var taken = new List<Box>();
        var words = labels.Draw(view.Top, taken).ToList();
        shapes.AddRange(StockSketch.Draw(picture, view, taken));
        if (isBoard)
            shapes.AddRange(EndSection.Draw(picture, whole));
        shapes.AddRange(words);
        shapes.AddRange(flags.Draw(view.Top, taken));
        shapes.AddRange(StockSketch.NextCut(picture, view));
        shapes.AddRange(CutNumbers.Draw(picture, view, room.CutText, taken));
        var foot = Dimensions(whole, shapes);
        foot = FootNotes.Draw(picture, view, room, isBoard, Margin, foot, shapes);
        shapes.AddRange(key.Draw(Margin, foot));
        return new(picture.Title, LayoutWords.Describe(picture), room.Width, foot + key.Height + Margin, shapes.ToImmutable());
    }

    private double Dimensions(Box whole, ImmutableArray<Shape>.Builder shapes)
    {
        var (size, step) = (room.NoteText, room.NoteText * 1.75);
        var at = whole.Bottom + (size * 0.7);
        if (chain is not null)
        {
            shapes.AddRange(chain.Draw(at, whole.Bottom));
            at += step;
        }

        shapes.Add(
            new Dimension(Run.Across, whole.X, whole.Right, at, whole.Bottom, Figures.Of(picture.Length, picture.Unit), size)
        );
        if (!isBoard)
            shapes.Add(
                new Dimension(
                    Run.Up,
                    whole.Y,
                    whole.Bottom,
                    whole.X - (size * 0.6),
                    whole.X,
                    Figures.Of(picture.Width, picture.Unit),
                    size
                )
            );
        return at + step;
    }

    // A narrow board is drawn wider until a mark fits on its narrowest piece.
    private int Stretch(double perInch)
    {
        if (!isBoard)
            return 1;
        var narrowest = picture.Pieces.Select(p => p.Area.Dy).Append(picture.Width).Min();
        var wanted = room.LeastText * (narrowest == picture.Width ? 3.4 : 2.2);
        var least = Math.Ceiling(wanted / ((double)narrowest.ToInches() * perInch));
        var most = Math.Floor(room.Height / ((double)picture.Width.ToInches() * perInch));
        return (int)Math.Clamp(least, 1, Math.Max(1, most));
    }
}
