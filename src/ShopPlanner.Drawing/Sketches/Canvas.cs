using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>A small page that a sketch is put on. The sketch draws within <see cref="Area"/>; dimensions and words lie around
/// it.</summary>
internal sealed class Canvas
{
    /// <summary>Of all type.</summary>
    public const double Text = 14;

    /// <summary>From an outline to its dimension line.</summary>
    public const double Away = 14;

    private const double Page = 480,
        Least = 250,
        Margin = 10,
        GrainSpacing = 7,
        EndSpacing = 4;
    private const string Tint = "#F2E2C4";

    private readonly List<Shape> shapes = [];
    private double bottom;

    /// <summary>Where the piece itself goes: room is left for dimensions on the left, above and below.</summary>
    public static Box Area { get; } = new(74, 44, 352, 216);

    /// <summary>A place for a piece of this size, to scale, in the middle of the area.</summary>
    /// <param name="wide">In any unit, more than zero.</param>
    /// <param name="high">In the same unit.</param>
    /// <param name="into">The area; <see cref="Area"/> where not given.</param>
    /// <returns>The box and page units for one unit. A side that would be too thin to see is drawn thicker, and the note says
    /// so.</returns>
    public (Box Box, double Scale) Fit(double wide, double high, Box? into = null)
    {
        var room = into ?? Area;
        var scale = Math.Min(room.Width / wide, room.Height / high);
        var (w, h) = (Math.Max(wide * scale, 12), Math.Max(high * scale, 12));
        if (w > (wide * scale) + 0.5 || h > (high * scale) + 0.5)
            Note("The thin side is drawn thicker than it is.");
        return (new(room.X + ((room.Width - w) / 2), room.Y + ((room.Height - h) / 2), w, h), scale);
    }

    /// <summary>Wood seen from its face.</summary>
    public void Face(Box box, bool upright = false)
    {
        Add(new Patch(Fill.Wood, box, Tint));
        for (var along = GrainSpacing / 2; along < (upright ? box.Width : box.Height) - 1; along += GrainSpacing)
        {
            if (upright)
                Line(Stroke.Grain, box.X + along, box.Y, box.X + along, box.Bottom);
            else
                Line(Stroke.Grain, box.X, box.Y + along, box.Right, box.Y + along);
        }

        Add(new Frame(Stroke.Outline, box));
    }

    /// <summary>Wood cut across: hatched.</summary>
    public void End(Box box) =>
        Add(new Patch(Fill.Wood, box, Tint), new Hatch(Stroke.EndGrain, box, EndSpacing), new Frame(Stroke.Outline, box));

    /// <summary>A piece behind or before the others, without grain.</summary>
    public void Plain(Box box, Stroke edge = Stroke.Outline) => Add(new Patch(Fill.Wood, box, Tint), new Frame(edge, box));

    /// <summary>A hole seen from above, with its centre lines.</summary>
    public void Hole(Spot at, double radius)
    {
        var r = Math.Max(radius, 1.6);
        var box = new Box(at.X - r, at.Y - r, 2 * r, 2 * r);
        Add(new Patch(Fill.Paper, box, "", r), new Frame(Stroke.Thin, box, r));
        if (r < 3)
            return;
        Line(Stroke.Centre, box.X - 3, at.Y, box.Right + 3, at.Y);
        Line(Stroke.Centre, at.X, box.Y - 3, at.X, box.Bottom + 3);
    }

    /// <summary>A dimension from left to right; words that do not fit between the ticks stand at its right.</summary>
    public void Across(double from, double to, double at, double edge, string words)
    {
        var fits = Typeface.Width(words, Weight.Medium, Text) + 6 <= to - from;
        var below = at > edge;
        Add(new Dimension(Run.Across, from, to, at, edge, fits && below ? words : "", Text));
        if (fits && !below)
            Add(new Caption(new((from + to) / 2, at - (Text * 0.72)), words, Text, Anchor.Middle, Weight.Medium));
        if (!fits)
            Beside(to, at, words);
    }

    /// <summary>A dimension from bottom to top; words that do not fit stand beside it.</summary>
    public void Up(double from, double to, double at, double edge, string words)
    {
        var fits = Typeface.Width(words, Weight.Medium, Text) + 6 <= Math.Abs(to - from);
        Add(new Dimension(Run.Up, Math.Min(from, to), Math.Max(from, to), at, edge, fits && at < edge ? words : "", Text));
        var (middle, right) = ((from + to) / 2, at > edge);
        if (fits && right)
            Add(new Caption(new(at + (Text * 0.78), middle), words, Text, Anchor.Middle, Weight.Medium, Upward: true));
        if (!fits)
            Say(right ? at + 7 : at - 7, middle, words, right ? Anchor.Start : Anchor.End, Weight.Medium);
    }

    /// <summary>Words.</summary>
    public void Say(
        double x,
        double y,
        string words,
        Anchor anchor = Anchor.Middle,
        Weight weight = Weight.Regular,
        Tone tone = Tone.Ink
    ) => Add(new Caption(new(x, y), words, Text, anchor, weight, tone));

    /// <summary>A force: an arrow with its words at the blunt end.</summary>
    public void Arrow(double x, double fromY, double toY, string words)
    {
        var back = fromY < toY ? -6 : 6;
        Line(Stroke.NextCut, x, fromY, x, toY);
        foreach (var side in new[] { -4, 4 })
            Line(Stroke.NextCut, x, toY, x + side, toY + back);
        if (words.Length > 0)
            Say(x, fromY + (fromY < toY ? -Text * 0.7 : Text * 0.8), words, weight: Weight.Medium);
    }

    /// <summary>A line.</summary>
    public void Line(Stroke stroke, double x1, double y1, double x2, double y2) =>
        Add(new Line(stroke, new(x1, y1), new(x2, y2)));

    /// <summary>Any shapes.</summary>
    public void Add(params ReadOnlySpan<Shape> more) => shapes.AddRange(more);

    /// <summary>A line under the drawing.</summary>
    public void Note(string words)
    {
        if (notes.Count < 3 && !notes.Contains(words))
            notes.Add(words);
    }

    /// <summary>The drawing.</summary>
    public LineDrawing Finish(string title, string description)
    {
        foreach (var shape in shapes.OfType<Caption>())
            bottom = Math.Max(bottom, shape.Extent.Bottom);
        foreach (var shape in shapes.OfType<Frame>())
            bottom = Math.Max(bottom, shape.Box.Bottom);
        foreach (var shape in shapes.OfType<Dimension>().Where(one => one.Run == Run.Across))
            bottom = Math.Max(bottom, shape.At + (Text * 1.4));
        var y = Math.Max(bottom, Least) + (Text * 1.3);
        // As large as the figures: a phone shows the page at two thirds of its size.
        foreach (var line in notes.SelectMany(words => TextFit.Wrap(words, Weight.Regular, Text, Page - (2 * Margin), 3)))
        {
            Add(new Caption(new(Margin, y), line, Text, Tone: Tone.Faded));
            y += Text * 1.3;
        }

        return new(title, description, Page, Math.Ceiling(y), [.. shapes]);
    }

    private readonly List<string> notes = [];

    private void Beside(double x, double y, string words)
    {
        var long_ = Typeface.Width(words, Weight.Medium, Text);
        var at = Math.Min(x + 8, Page - Margin - long_);
        Add(new Patch(Fill.Paper, new(at - 2, y - (Text * 0.6), long_ + 4, Text * 1.2)));
        Say(at, y, words, Anchor.Start, Weight.Medium);
    }
}
