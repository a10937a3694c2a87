using PdfSharp.Drawing;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Pdf;

/// <summary>Draws shapes on a PDF page; text stays text, lines stay lines.</summary>
internal sealed class PdfPen(XGraphics graphics)
{
    private readonly Dictionary<(Weight, double, OtherFont?), XFont> fonts = [];
    private readonly Dictionary<Stroke, XPen> pens = [];

    /// <summary>Draws a shape that is not made of others.</summary>
    public void Draw(Shape shape)
    {
        switch (shape)
        {
            case Patch { Fill: Fill.Clear } or Face { Fill: Fill.Clear }:
                break;
            case Line line:
                graphics.DrawLine(Pen(line.Stroke), line.From.X, line.From.Y, line.To.X, line.To.Y);
                break;
            case Polyline polyline:
                Draw(polyline);
                break;
            case Frame frame:
                Rectangle(Pen(frame.Stroke), null, frame.Box, frame.Radius);
                break;
            case Patch patch:
                Rectangle(null, Brush(patch), patch.Box, patch.Radius);
                break;
            case Caption caption:
                Draw(caption);
                break;
            case Face face:
                Draw(face);
                break;
            default:
                throw new ArgumentException($"a {shape.GetType().Name} cannot be printed", nameof(shape));
        }
    }

    private void Draw(Face face) =>
        graphics.DrawPolygon(
            Pen(face.Edge),
            face.Fill == Fill.Wood ? new XSolidBrush(Parse(face.Shaded)) : Brush(new(face.Fill, default)),
            [.. face.Spots.Select(s => new XPoint(s.X, s.Y))],
            XFillMode.Winding
        );

    private void Draw(Polyline line)
    {
        var points = line.Spots.Select(s => new XPoint(s.X, s.Y)).ToArray();
        if (line.Closed)
            graphics.DrawPolygon(Pen(line.Stroke), points);
        else
            graphics.DrawLines(Pen(line.Stroke), points);
    }

    private void Draw(Caption caption)
    {
        if (caption.Words.Length == 0)
            return;
        var start = caption.Anchor switch
        {
            Anchor.Start => 0,
            Anchor.Middle => -caption.Length / 2,
            _ => -caption.Length,
        };
        if (!caption.Upward)
        {
            Write(caption, caption.At.X + start, caption.At.Y + caption.Drop);
            return;
        }

        var state = graphics.Save();
        graphics.TranslateTransform(caption.At.X, caption.At.Y);
        graphics.RotateTransform(-90);
        Write(caption, start, caption.Drop);
        graphics.Restore(state);
    }

    private void Write(Caption caption, double x, double y)
    {
        var brush = new XSolidBrush(Colour(caption.Tone));
        foreach (var (other, text) in Typeface.Runs(caption.Words, caption.Weight))
        {
            graphics.DrawString(text, Font(caption, other), brush, x, y);
            x += Typeface.WidthOf(text, other, caption.Weight, caption.Size);
        }
    }

    private void Rectangle(XPen? pen, XBrush? brush, Box box, double radius)
    {
        var place = new XRect(box.X, box.Y, box.Width, box.Height);
        if (radius > 0)
            graphics.DrawRoundedRectangle(pen, brush, place, new XSize(2 * radius, 2 * radius));
        else
            graphics.DrawRectangle(pen, brush, place);
    }

    private XFont Font(Caption caption, OtherFont? other)
    {
        var key = (caption.Weight, caption.Size, other);
        if (!fonts.TryGetValue(key, out var font))
            fonts[key] = font = PacketFonts.Of(caption.Weight, other, caption.Size);
        return font;
    }

    private XPen Pen(Stroke stroke)
    {
        if (!pens.TryGetValue(stroke, out var pen))
            pens[stroke] = pen = Make(stroke);
        return pen;
    }

    private static XPen Make(Stroke stroke)
    {
        var looks = Drawing.Shapes.Pen.Of(stroke);
        var pen = new XPen(Colour(looks.Tone), looks.Width);
        if (stroke is Stroke.Keep)
            pen.LineCap = XLineCap.Round;
        if (!looks.Dashes.IsEmpty)
            pen.DashPattern = [.. looks.Dashes.Select(d => d / looks.Width)];
        return pen;
    }

    // On paper no colour shows through another: the paper's own white lies under text, a cut piece is grey.
    private static XSolidBrush Brush(Patch patch) =>
        new(
            patch.Fill switch
            {
                Fill.Wood => Parse(patch.Tint),
                Fill.Kerf => XColor.FromArgb(255, 80, 88, 96),
                Fill.Done => XColor.FromArgb(255, 214, 222, 212),
                _ => XColors.White,
            }
        );

    private static XColor Colour(Tone tone) => Parse(Palette.Of(tone).Light);

    private static XColor Parse(string colour) =>
        XColor.FromArgb(
            255,
            Convert.ToInt32(colour[1..3], 16),
            Convert.ToInt32(colour[3..5], 16),
            Convert.ToInt32(colour[5..7], 16)
        );
}
