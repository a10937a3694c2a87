using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Labels;

/// <summary>Draws one label: hints along its edges, the mark with its triangle, name, size and project, and a code at the
/// right. Letters shrink to a floor and are then cut off with …; nothing leaves the label.</summary>
internal sealed class LabelFace
{
    // Kept clear within a label: a printer feeds a sheet a little askew.
    private const double Clear = 3.4;

    // Letters that can still be read at arm's length on wood, and the least that a phone reads a module of (common practice).
    private const double Least = 4.8,
        LeastModule = 0.72;

    private const double Gap = 2,
        Step = 0.2;

    private readonly Label label;
    private readonly double hint;
    private readonly List<Shape> shapes = [];

    private LabelFace(Label label, double height) => (this.label, hint) = (label, Math.Clamp(height / 13, 5, 7));

    /// <summary>The label in its box.</summary>
    public static ImmutableArray<Shape> Draw(Label label, Box box)
    {
        var face = new LabelFace(label, box.Height);
        var inner = face.Edges(box.Inset(Clear));
        face.Words(face.Code(inner));
        return [.. face.shapes];
    }

    private double Band => hint + 4.2;

    // A thick line and words at each edge that something is done to.
    private Box Edges(Box safe)
    {
        var hints = label.Hints;
        var (left, right) = (hints.Left.IsEmpty ? 0 : Band, hints.Right.IsEmpty ? 0 : Band);
        var (top, bottom) = (hints.Top.IsEmpty ? 0 : Band, hints.Bottom.IsEmpty ? 0 : Band);
        var inner = new Box(safe.X + left, safe.Y + top, safe.Width - left - right, safe.Height - top - bottom);
        var middle = inner.Centre;
        Edge(hints.Top, new(inner.X, safe.Y), new(inner.Right, safe.Y), new(middle.X, safe.Y + 1 + (Band / 2)), inner.Width);
        Edge(
            hints.Bottom,
            new(inner.X, safe.Bottom),
            new(inner.Right, safe.Bottom),
            new(middle.X, safe.Bottom - 1 - (Band / 2)),
            inner.Width
        );
        Edge(hints.Left, new(safe.X, inner.Y), new(safe.X, inner.Bottom), new(safe.X + 1 + (Band / 2), middle.Y), inner.Height);
        Edge(
            hints.Right,
            new(safe.Right, inner.Y),
            new(safe.Right, inner.Bottom),
            new(safe.Right - 1 - (Band / 2), middle.Y),
            inner.Height
        );
        return inner;
    }

    private void Edge(ImmutableArray<string> words, Spot from, Spot to, Spot at, double room)
    {
        if (words.IsEmpty)
            return;
        var (text, size) = Fitted(Clean(string.Join(", ", words), Weight.Medium), Weight.Medium, hint, room);
        shapes.Add(new Line(Stroke.Outline, from, to));
        shapes.Add(new Caption(at, text, size, Anchor.Middle, Weight.Medium, Upward: Math.Abs(from.X - to.X) < 1e-9));
    }

    // What is left of the code for words.
    private Box Code(Box inner)
    {
        if (QrCode.Of(label.Code) is not { } code)
            return inner;
        var side = Math.Min(Math.Min(inner.Height, 62), inner.Width * 0.42);
        if (side / code.Side < LeastModule)
            return inner;
        shapes.AddRange(code.Draw(new(inner.Right - side, inner.Centre.Y - (side / 2), side, side)));
        return inner with { Width = inner.Width - side };
    }

    private void Words(Box box)
    {
        var lines = Lines();
        var mark = Math.Clamp(box.Height * 0.34, 8, 27);
        Mark(new(box.X, box.Y, box.Width, mark));
        var room = box.Height - mark - 1;
        while (lines.Count > 1 && lines.Count * Least * 1.14 > room)
            lines.RemoveAt(lines.Count - 1);
        var scale = Math.Min(1.7, room / lines.Sum(line => line.Size * 1.14));
        var y = box.Y + mark + 1;
        foreach (var line in lines)
        {
            var (text, size) = Fitted(line.Text, line.Weight, Math.Max(Least, line.Size * scale), box.Width);
            var high = Math.Min(line.Size * scale, room / lines.Count * 1.6) * 1.14;
            shapes.Add(new Caption(new(box.X, y + (high / 2)), text, size, Weight: line.Weight));
            y += high;
        }
    }

    // In the order in which they are wanted; the last ones go where a label is too low for all.
    private List<(string Text, double Size, Weight Weight)> Lines()
    {
        var all = new List<(string Text, double Size, Weight Weight)>
        {
            (label.Size, 8, Weight.Bold),
            (label.Name, 7.2, Weight.Medium),
            (label.Of, 6, Weight.Regular),
            (label.Lies, 5.8, Weight.Regular),
            (label.Note, 5.8, Weight.Regular),
        };
        return [.. all.Where(line => line.Text.Length > 0).Select(line => line with { Text = Clean(line.Text, line.Weight) })];
    }

    private void Mark(Box box)
    {
        var width = box.Width;
        if (label.Triangle is { } triangle)
        {
            var wide = TriangleIcon.WidthOf(triangle, box.Height - 1);
            width -= wide + (2 * Gap);
            shapes.AddRange(TriangleIcon.Draw(triangle, new(box.Right - wide - Gap, box.Y + 0.5, wide, box.Height - 1)));
        }

        var (text, size) = Fitted(Clean(label.Mark, Weight.Bold), Weight.Bold, box.Height * 1.1, width);
        shapes.Add(new Caption(new(box.X, box.Centre.Y), text, size, Weight: Weight.Bold));
    }

    private static string Clean(string text, Weight weight) => TextFit.Clean(text.Length > 300 ? text[..300] : text, weight);

    private static (string Text, double Size) Fitted(string text, Weight weight, double size, double width)
    {
        var wide = Typeface.Width(text, weight, size);
        var fits = wide <= width ? size : Math.Max(Math.Min(Least, size), size * width / wide);
        // In steps, so that a file has few sizes.
        var stepped = Math.Max(Math.Min(Least, size), Math.Floor(fits / Step) * Step);
        return (TextFit.Shorten(text, weight, stepped, width), stepped);
    }
}
