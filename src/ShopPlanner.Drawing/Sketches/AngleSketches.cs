using ShopPlanner.Drawing.Shapes;
using static ShopPlanner.Drawing.Sketches.CanvasWords;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>Angles and curves.</summary>
internal static class AngleSketches
{
    private const string Tint = "#F2E2C4";
    private const int MostSides = 24;

    /// <summary>Four sides with both diagonals, leaning where they are off.</summary>
    public static void Square(SketchInputs inputs, Canvas canvas)
    {
        var (wide, long_) = (inputs.Length("24 in", "width"), inputs.Length("36 in", "length"));
        var (box, _) = canvas.Fit(Inches(long_), Inches(wide), Canvas.Area with { X = 100, Width = 300 });
        var (first, second) = (inputs.MaybeLength("first"), inputs.MaybeLength("second"));
        var lean = first is { } a && second is { } b ? Math.Sign(a.Ticks - b.Ticks) * Math.Min(14, box.Width / 6) : 0;
        Spot[] corners =
        [
            new(box.X + lean, box.Y),
            new(box.Right + lean, box.Y),
            new(box.Right, box.Bottom),
            new(box.X, box.Bottom),
        ];
        canvas.Add(new Face([.. corners], Tint, 0, Stroke.Outline));
        canvas.Add(new Line(Stroke.Hidden, corners[0], corners[2]), new Line(Stroke.Hidden, corners[1], corners[3]));
        canvas.Across(box.X, box.Right, box.Bottom + Canvas.Away, box.Bottom, inputs.Shown(long_));
        canvas.High(box.Bottom, box.Y, box.X - Canvas.Away, box.X, inputs.Shown(wide));
        if (first is { } one)
            canvas.Tell(box.X + (box.Width * 0.72), box.Y + (box.Height * 0.22), inputs.Shown(one));
        if (second is { } other)
            canvas.Tell(box.X + (box.Width * 0.28), box.Y + (box.Height * 0.22), inputs.Shown(other));
        if (first is null)
            canvas.Tell(box.Centre.X, box.Centre.Y, inputs.Main);
        canvas.Note(lean == 0 ? "Dashed: the diagonals." : "Drawn leaning far more than it does.");
    }

    /// <summary>A tapered piece with its jig line.</summary>
    public static void Taper(SketchInputs inputs, Canvas canvas)
    {
        var (offset, length) = (inputs.Length("3/4 in", "offset"), inputs.Length("24 in", "length"));
        var faces = inputs.Word("one", "faces") == "two" ? 2 : 1;
        var (left, right, top, high) = (Canvas.Area.X + 10, Canvas.Area.Right - 60, 90.0, 80.0);
        var off = Math.Clamp(Inches(offset) / Inches(length) * (right - left), 8, faces == 2 ? 34 : 60);
        var bottom = top + high;
        var low = faces == 2 ? bottom - off : bottom;
        canvas.Add(
            new Face(
                [
                    new(left - 40, top),
                    new(left, top),
                    new(right, top + off),
                    new(right, low),
                    new(left, bottom),
                    new(left - 40, bottom),
                ],
                Tint,
                0,
                Stroke.Outline
            )
        );
        for (var y = top + 14; y < bottom - 10; y += 14)
            canvas.Line(Stroke.Grain, left - 38, y, y < top + off || y > low ? left + 60 : right - 4, y);
        canvas.Line(Stroke.Hidden, left, top, right, top);
        if (faces == 2)
            canvas.Line(Stroke.Hidden, left, bottom, right, bottom);
        canvas.High(top + off, top, right + Canvas.Away, right, inputs.Shown(offset));
        canvas.Across(left, right, bottom + 26, bottom, inputs.Shown(length));
        canvas.Tell((left + right) / 2, top - 22, inputs.Main);
        canvas.Note("Dashed: the wood that comes off. The taper is drawn steeper than most are.");
    }

    /// <summary>A ring of equal sides from above.</summary>
    public static void Miter(SketchInputs inputs, Canvas canvas)
    {
        var sides = Math.Max(3, inputs.Count(4, MostSides, "sides"));
        var (x, y, outer) = (240.0, 146.0, 96.0);
        var inner = sides == 3 ? 58.0 : 72.0;
        var turn = sides % 2 == 0 ? Math.PI / sides : 0;
        Spot At(double radius, int i)
        {
            var angle = (2 * Math.PI * i / sides) - (Math.PI / 2) + turn;
            return new(x + (radius * Math.Cos(angle)), y + (radius * Math.Sin(angle)));
        }

        for (var i = 0; i < sides; i++)
            canvas.Add(
                new Face([At(outer, i), At(outer, i + 1), At(inner, i + 1), At(inner, i)], Tint, i % 2 * 0.06, Stroke.Outline)
            );
        canvas.Tell(x, y, inputs.Main);
        var top = Math.Min(At(outer, 0).Y, At(outer, sides - 1).Y);
        canvas.Line(Stroke.Centre, x, y + 16, x, y + outer + 8);
        if (inputs.MaybeLength("across") is { } across)
            canvas.Across(x - outer, x + outer, y + outer + 26, y + outer, inputs.Shown(across));
        canvas.Say(x, top - 14, $"{inputs.Word("4", "sides")} sides");
        canvas.Note("From above. Each joint is cut half of its angle on either piece.");
    }

    /// <summary>An arc over its chord, with its radius.</summary>
    public static void Arc(SketchInputs inputs, Canvas canvas)
    {
        var (chord, rise) = (inputs.Length("24 in", "chord"), inputs.Length("3 in", "rise"));
        var (c, h) = (Inches(chord), Inches(rise));
        var radius = ((c * c / 4) + (h * h)) / (2 * h);
        var wide = Math.Max(c, h * 2 > c ? 2 * radius : c);
        var scale = Math.Min(300 / wide, 150 / Math.Max(h, 0.04 * c));
        // In the middle of the area, its words above and its chord's size below.
        var (x, y) = (240.0, Canvas.Area.Centre.Y + (h * scale / 2));
        var half = h * 2 > c ? Math.PI - Math.Asin(Math.Min(1, c / 2 / radius)) : Math.Asin(Math.Min(1, c / 2 / radius));
        Spot At(double part)
        {
            var angle = half * part;
            return new(x + (radius * Math.Sin(angle) * scale), y - (((radius * Math.Cos(angle)) - radius + h) * scale));
        }

        canvas.Add(new Polyline(Stroke.Outline, [.. Enumerable.Range(-32, 65).Select(i => At(i / 32.0))], false));
        canvas.Line(Stroke.Hidden, x - (c / 2 * scale), y, x + (c / 2 * scale), y);
        var points = Math.Clamp(inputs.Count(4, 50, "points"), 1, 50);
        for (var i = 1 - points; i < points; i++)
        {
            var at = c / 2 * i / points;
            var up = Math.Sqrt(Math.Max(0, (radius * radius) - (at * at))) - radius + h;
            canvas.Line(Stroke.Thin, x + (at * scale), y, x + (at * scale), y - (up * scale));
        }

        canvas.Across(x - (c / 2 * scale), x + (c / 2 * scale), y + Canvas.Away, y, inputs.Shown(chord));
        canvas.High(y, y - (h * scale), x + (wide / 2 * scale) + Canvas.Away, x, inputs.Shown(rise));
        canvas.Tell(x, y - (h * scale) - 16, inputs.Main.Length > 0 ? $"radius {inputs.Main}" : "");
        canvas.Note("Upright lines: the points, from the middle out.");
    }
}
