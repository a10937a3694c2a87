using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>The lines below a layout: scale, unit, section, and which way the face grain runs.</summary>
internal static class FootNotes
{
    /// <summary>Adds the lines and returns the page y below them.</summary>
    public static double Draw(
        LayoutPicture picture,
        View view,
        DrawingRoom room,
        bool isBoard,
        double left,
        double top,
        ImmutableArray<Shape>.Builder shapes
    )
    {
        var size = room.LeastText;
        var grain = picture.HasGrain && !isBoard;
        var words = (isBoard ? EndSection.Words(picture) : "") + view.Note(picture.Unit);
        var width = room.Width - (2 * left) - (grain ? GrainWidth(size) + 8 : 0);
        string?[] notes = [isBoard && room.IsScaleTold ? null : words, TurnedWords.Note(picture), BadPlaceNote.Of(picture)];
        foreach (var line in notes.OfType<string>().SelectMany(note => TextFit.Wrap(note, Weight.Regular, size, width)))
        {
            shapes.Add(new Caption(new(left, top), line, size, Tone: Tone.Faded));
            if (grain)
                shapes.AddRange(GrainArrow(room.Width - left, top, size));
            grain = false;
            top += size * 1.3;
        }

        return top - (size * 0.5);
    }

    private static double GrainWidth(double size) => Typeface.Width("grain", Weight.Regular, size) + (size * 5);

    private static Shape[] GrainArrow(double right, double y, double size)
    {
        var (from, to, head) = (right - (size * 4), right - 1, size * 0.3);
        return
        [
            new Caption(new(from - 4, y), "grain", size, Anchor.End, Tone: Tone.Faded),
            new Line(Stroke.Thin, new(from, y), new(to, y)),
            new Polyline(Stroke.Thin, [new(from + head, y - head), new(from, y), new(from + head, y + head)], Closed: false),
            new Polyline(Stroke.Thin, [new(to - head, y - head), new(to, y), new(to - head, y + head)], Closed: false),
        ];
    }
}
