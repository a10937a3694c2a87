using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>Wood as it takes up and gives off water.</summary>
internal static class WoodSketches
{
    /// <summary>A scale of moisture contents with the one that came out.</summary>
    public static void Moisture(SketchInputs inputs, Canvas canvas)
    {
        const double top = 30;
        var (left, right, y) = (Canvas.Area.X - 30, Canvas.Area.Right + 10, Canvas.Area.Centre.Y + 20);
        double At(double percent) => left + ((right - left) * Math.Clamp(percent, 0, top) / top);
        canvas.Line(Stroke.Outline, left, y, right, y);
        for (var percent = 0; percent <= top; percent++)
        {
            canvas.Line(Stroke.Thin, At(percent), y, At(percent), y + (percent % 5 == 0 ? 14 : 7));
            if (percent % 10 == 0)
                canvas.Say(At(percent), y + 26, string.Create(CultureInfo.InvariantCulture, $"{percent}%"));
        }

        if (inputs.MainValue is { } found)
            canvas.Arrow(At(found), y - 46, y - 3, inputs.Main);
        var humidity = inputs.Quantity("humidity").TrimEnd('%', ' ');
        string[] parts = [inputs.Quantity("temperature"), humidity.Length > 0 ? humidity + "% humidity" : ""];
        var air = string.Join(", ", parts.Where(part => part.Length > 0));
        if (air.Length > 0)
            canvas.Say(left, Canvas.Area.Y, "Air: " + air, Anchor.Start);
        canvas.Note("Water in the wood, in percent of its dry weight.");
    }

    /// <summary>The end of a panel, and how far it grows and shrinks.</summary>
    public static void Movement(SketchInputs inputs, Canvas canvas)
    {
        const double shown = 16;
        var wide = inputs.Length("12 in", "width");
        var box = new Box(Canvas.Area.X + 20, Canvas.Area.Centre.Y - 24, Canvas.Area.Width - 40, 48);
        canvas.End(box);
        var wider = new Box(box.X - shown, box.Y, box.Width + (2 * shown), box.Height);
        canvas.Add(new Frame(Stroke.Hidden, wider));
        canvas.Across(box.X, box.Right, box.Bottom + 22, box.Bottom, inputs.Shown(wide));
        if (inputs.Main.Length > 0)
            canvas.Across(box.Right, wider.Right, box.Y - 20, box.Y, "");
        canvas.Say(
            box.Right,
            box.Y - 38,
            inputs.Main.Length > 0 ? $"{inputs.Main} in total" : "",
            Anchor.End,
            Lettering.Weight.Bold
        );
        canvas.Note("Across the grain; the change is drawn far larger than it is.");
    }

    /// <summary>Strips side by side in a panel, their rings turned about.</summary>
    public static void GlueUp(SketchInputs inputs, Canvas canvas)
    {
        var (wide, length) = (inputs.Length("24 in", "width", "panel-width"), inputs.Length("36 in", "length", "panel-length"));
        var strips = Math.Clamp(inputs.ResultCount("strips") ?? 5, 1, 40);
        var (box, _) = canvas.Fit(
            (double)length.ToInches(),
            (double)wide.ToInches(),
            Canvas.Area with
            {
                Width = Canvas.Area.Width - 20,
            }
        );
        canvas.Face(box);
        var each = box.Height / strips;
        for (var strip = 0; strip < strips; strip++)
        {
            if (strip > 0)
                canvas.Line(Stroke.Outline, box.X, box.Y + (strip * each), box.Right, box.Y + (strip * each));
            canvas.Add(new Polyline(Stroke.Thin, Ring(box.Right + 6, box.Y + (strip * each), each, strip % 2 == 0), false));
        }

        canvas.Across(box.X, box.Right, box.Bottom + Canvas.Away, box.Bottom, inputs.Shown(length));
        canvas.Up(box.Bottom, box.Y, box.X - Canvas.Away, box.X, inputs.Shown(wide));
        if (inputs.ResultLength("each strip") is { } one)
            canvas.Say(box.X, box.Y - 16, $"{strips} strips, each {inputs.Shown(one)}", Anchor.Start, Lettering.Weight.Bold);
        canvas.Note("Arcs on the right: end-grain rings, alternating.");
    }

    // An arc across the end of a strip, bulging one way or the other.
    private static ImmutableArray<Spot> Ring(double x, double y, double high, bool outward) =>
        [
            .. Enumerable
                .Range(0, 7)
                .Select(i => (Bulge: Math.Sin(Math.PI * i / 6), Down: 1 + ((high - 2) * i / 6)))
                .Select(at => new Spot(x + (outward ? 8 * at.Bulge : 8 - (8 * at.Bulge)), y + at.Down)),
        ];
}
