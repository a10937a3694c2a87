using System.Globalization;
using System.Text;
using System.Xml;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Svg;

/// <summary>
/// Writes a drawing as SVG: text stays text, style classes carry the looks, so that the page's theme colours it. Inline in a
/// page,
/// the page includes <see cref="SvgStyle.Sheet"/> once; on its own the style travels inside.
/// </summary>
public static class SvgWriter
{
    /// <summary>Writes a drawing.</summary>
    /// <param name="drawing">What.</param>
    /// <param name="id">Of the element, unique on its page: letters, figures and hyphens; ids within begin with it.</param>
    /// <param name="alone">True for a file of its own, false for a part of a page.</param>
    public static string Write(LineDrawing drawing, string id, bool alone = false)
    {
        var text = new StringBuilder();
        var settings = new XmlWriterSettings
        {
            OmitXmlDeclaration = true,
            Indent = true,
            IndentChars = " ",
            NewLineChars = "\n",
        };
        using (var xml = XmlWriter.Create(text, settings))
            WriteRoot(xml, drawing, id, alone);
        return text.ToString();
    }

    private static void WriteRoot(XmlWriter xml, LineDrawing drawing, string id, bool alone)
    {
        xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
        Attributes(
            xml,
            ("id", id),
            ("class", "line-drawing"),
            ("viewBox", $"0 0 {Number(drawing.Width)} {Number(drawing.Height)}")
        );
        // A picture has no parts for those who hear it; where parts can be chosen it is a group.
        var role = drawing.Shapes.Any(shape => shape is Marked { Name: not null }) ? "group" : "img";
        Attributes(xml, ("role", role), ("aria-labelledby", $"{id}-title {id}-desc"));
        Element(xml, "title", Legal(drawing.Title), ("id", id + "-title"));
        Element(xml, "desc", Legal(drawing.Description), ("id", id + "-desc"));
        if (alone)
            Element(xml, "style", SvgStyle.Alone);
        WriteShapes(xml, drawing.Primitives(), alone);
        xml.WriteEndElement();
    }

    // Lines of one kind that follow each other, as in a hatch, are one path: a fifth of the text.
    private static void WriteShapes(XmlWriter xml, IEnumerable<Shape> shapes, bool alone)
    {
        var lines = new List<Line>();
        foreach (var shape in shapes)
        {
            if (lines.Count > 0 && (shape as Line)?.Stroke != lines[0].Stroke)
                WriteLines(xml, lines);
            if (shape is Line line)
                lines.Add(line);
            else
                Write(xml, shape, alone);
        }

        WriteLines(xml, lines);
    }

    private static void WriteLines(XmlWriter xml, List<Line> lines)
    {
        if (lines.Count > 0)
            Element(
                xml,
                "path",
                null,
                Class(lines[0].Stroke),
                (
                    "d",
                    string.Concat(lines.Select(l => $"M{Number(l.From.X)} {Number(l.From.Y)}L{Number(l.To.X)} {Number(l.To.Y)}"))
                )
            );
        lines.Clear();
    }

    private static void Write(XmlWriter xml, Shape shape, bool alone)
    {
        switch (shape)
        {
            case Polyline polyline:
                Write(xml, polyline);
                break;
            case Frame frame:
                Write(xml, frame);
                break;
            case Patch patch:
                Write(xml, patch);
                break;
            case Caption caption:
                Write(xml, caption, alone);
                break;
            case Face face:
                Write(xml, face);
                break;
            case Marked marked:
                Write(xml, marked, alone);
                break;
            default:
                throw new ArgumentException($"a {shape.GetType().Name} cannot be written as SVG", nameof(shape));
        }
    }

    private static void Write(XmlWriter xml, Polyline line) =>
        Element(xml, line.Closed ? "polygon" : "polyline", null, Class(line.Stroke), ("points", Points(line.Spots)));

    private static void Write(XmlWriter xml, Face face)
    {
        xml.WriteStartElement("polygon");
        Attributes(xml, ("class", SvgStyle.ClassOf(face.Fill)));
        Paint(xml, face.Fill, face.Fill == Fill.Wood ? face.Shaded : "");
        Attributes(xml, ("points", Points(face.Spots)));
        xml.WriteEndElement();
        if (face.Fill != Fill.Clear)
            Element(xml, "polygon", null, Class(face.Edge), ("points", Points(face.Spots)));
    }

    private static void Write(XmlWriter xml, Marked marked, bool alone)
    {
        xml.WriteStartElement("g");
        Attributes(xml, (marked.IsBay ? "data-bay" : "data-mark", Legal(marked.Mark)));
        if (marked.Name is { } name)
            Attributes(
                xml,
                ("tabindex", "0"),
                ("role", "button"),
                ("aria-label", Legal(name)),
                ("aria-pressed", marked.IsChosen ? "true" : "false")
            );
        WriteShapes(xml, marked.Shapes, alone);
        xml.WriteEndElement();
    }

    private static string Points(IEnumerable<Spot> spots) => string.Join(' ', spots.Select(s => $"{Number(s.X)},{Number(s.Y)}"));

    private static void Write(XmlWriter xml, Frame frame)
    {
        xml.WriteStartElement("rect");
        Attributes(xml, Class(frame.Stroke));
        Rectangle(xml, frame.Box, frame.Radius);
        xml.WriteEndElement();
    }

    private static void Write(XmlWriter xml, Patch patch)
    {
        xml.WriteStartElement("rect");
        Attributes(xml, ("class", SvgStyle.ClassOf(patch.Fill)));
        Paint(xml, patch.Fill, patch.Tint);
        Rectangle(xml, patch.Box, patch.Radius);
        xml.WriteEndElement();
    }

    // A page brings the font that texts are measured in. A file of its own may be shown in a wider one: each text keeps its
    // length.
    private static void Write(XmlWriter xml, Caption caption, bool alone)
    {
        xml.WriteStartElement("text");
        Attributes(xml, ("class", SvgStyle.ClassOf(caption)), ("font-size", Number(caption.Size)));
        if (caption.Anchor != Anchor.Start)
            Attributes(xml, ("text-anchor", caption.Anchor == Anchor.Middle ? "middle" : "end"));
        var (x, y) = (Number(caption.At.X), Number(caption.At.Y));
        if (caption.Upward)
            Attributes(xml, ("transform", $"translate({x} {y}) rotate(-90)"), ("y", Number(caption.Drop)));
        else
            Attributes(xml, ("x", x), ("y", Number(caption.At.Y + caption.Drop)));
        if (alone && caption.Words.Length > 0)
            Attributes(xml, ("textLength", Number(caption.Length)), ("lengthAdjust", "spacingAndGlyphs"));
        xml.WriteString(Legal(caption.Words));
        xml.WriteEndElement();
    }

    // A tint is the material's own; the other fills are the style sheet's.
    private static void Paint(XmlWriter xml, Fill fill, string tint)
    {
        if (fill == Fill.Wood)
            Attributes(xml, ("fill", tint));
        else if (fill == Fill.Clear)
            Attributes(xml, ("fill", "none"), ("pointer-events", "all"));
    }

    private static (string, string) Class(Stroke stroke) => ("class", Pen.Of(stroke).Style);

    private static void Rectangle(XmlWriter xml, Box box, double radius)
    {
        Attributes(xml, ("x", Number(box.X)), ("y", Number(box.Y)), ("width", Number(box.Width)), ("height", Number(box.Height)));
        if (radius > 0)
            Attributes(xml, ("rx", Number(radius)));
    }

    private static void Element(XmlWriter xml, string name, string? content, params (string Name, string Value)[] attributes)
    {
        xml.WriteStartElement(name);
        Attributes(xml, attributes);
        if (content is not null)
            xml.WriteString(content);
        xml.WriteEndElement();
    }

    private static void Attributes(XmlWriter xml, params (string Name, string Value)[] attributes)
    {
        foreach (var (name, value) in attributes)
            xml.WriteAttributeString(name, value);
    }

    // XML has no place for control characters or halves of surrogate pairs.
    private static string Legal(string text) =>
        string.Concat(text.EnumerateRunes().Where(r => r.Value is not 0xFFFD and (>= 0x20 or 9 or 10)).Select(r => r.ToString()));

    private static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
