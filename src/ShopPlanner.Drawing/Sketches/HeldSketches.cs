using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;
using static ShopPlanner.Drawing.Sketches.CanvasWords;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>What is held by screws, and what carries people.</summary>
internal static class HeldSketches
{
    private const int MostDrawn = 40;

    /// <summary>A top over its frame from below, with the fasteners.</summary>
    public static void Top(SketchInputs inputs, Canvas canvas)
    {
        var (wide, length) = (inputs.Length("30 in", "width"), inputs.Length("60 in", "length"));
        var (top, scale) = canvas.Fit(Inches(length), Inches(wide), Canvas.Area with { X = 90, Width = 340 });
        canvas.Face(top);
        var over = Math.Clamp(Inches(inputs.MaybeLength("overhang") ?? Length.FromInches(1)) * scale, 6, top.Height / 3);
        var frame = top.Inset(over);
        var rail = Math.Min(7, frame.Height / 5);
        canvas.Add(new Frame(Stroke.Hidden, frame), new Frame(Stroke.Hidden, frame.Inset(rail)));
        var isCentered = inputs.Word("center", "fixed") == "center";
        var y = isCentered ? top.Centre.Y : frame.Bottom - (rail / 2);
        canvas.Line(Stroke.Centre, top.X - 8, y, top.Right + 8, y);
        foreach (var place in inputs.Places.Take(MostDrawn))
        foreach (var row in new[] { frame.Y + (rail / 2), frame.Bottom - (rail / 2) })
            canvas.Hole(new(frame.X + (Inches(place) * scale), row), 2.4);
        if (inputs.Places.IsEmpty)
            canvas.Hole(new(frame.X + 12, frame.Y + (rail / 2)), 2.4);
        canvas.Arrow(top.Right - 30, top.Centre.Y - 8, top.Y + 4, "");
        canvas.Across(top.X, top.Right, top.Bottom + Canvas.Away, top.Bottom, inputs.Shown(length));
        canvas.High(top.Bottom, top.Y, top.X - Canvas.Away, top.X, inputs.Shown(wide));
        canvas.Tell(top.Centre.X, top.Y - 16, inputs.Main.Length > 0 ? $"moves {inputs.Main} at the edge" : "");
        canvas.Note("From below. Dashed: the frame. Long and short dashes: the line held fast.");
    }

    /// <summary>A cabinet on a wall from the side: its weight, and the pull at the top.</summary>
    public static void Wall(SketchInputs inputs, Canvas canvas)
    {
        var (deep, high) = (inputs.Length("12 in", "depth"), inputs.Length("30 in", "height"));
        var room = new Box(Canvas.Area.X + 60, Canvas.Area.Y, 210, 190);
        var (body, _) = canvas.Fit(Inches(deep), Inches(high), room);
        body = body with { X = 150 };
        canvas.End(new(120, 30, 22, 220));
        canvas.Add(new Hatch(Stroke.Waste, new(142, 30, 8, 220), 3));
        canvas.Face(body, upright: true);
        Fixing(body.Y + 10);
        if (inputs.Count(1, 3, "bottom") > 0)
            Fixing(body.Bottom - 10);
        canvas.Arrow(body.Centre.X, body.Y + 30, Math.Max(body.Y + 50, body.Bottom - 12), "");
        canvas.Across(body.X, body.Right, body.Bottom + Canvas.Away, body.Bottom, inputs.Shown(deep));
        canvas.High(body.Bottom, body.Y, body.Right + Canvas.Away, body.Right, inputs.Shown(high));
        canvas.Tell(body.Centre.X, body.Y - 14, inputs.ResultText("Load on the wall"));
        canvas.Note("Hatched: drywall, with a stud behind it. All fasteners are bent down, the top ones are pulled too.");

        void Fixing(double y)
        {
            canvas.Line(Stroke.Outline, 118, y, body.X + 12, y);
            canvas.Line(Stroke.Outline, body.X + 12, y - 4, body.X + 12, y + 4);
        }
    }

    /// <summary>A screw through one piece into another.</summary>
    public static void Screw(SketchInputs inputs, Canvas canvas)
    {
        var (near, thread) = (inputs.Length("3/4 in", "thickness"), inputs.Length("1 in", "thread"));
        var scale = Math.Min(60 / Inches(near), 110 / Inches(thread));
        var (upper, lower) = (Math.Max(Inches(near) * scale, 16), Math.Max(Inches(thread) * scale, 16));
        var top = new Box(130, 50, 220, upper);
        var isEnd = inputs.Word("side", "grain") == "end";
        canvas.Face(top);
        canvas.Face(new(130, top.Bottom, 220, lower + 24), upright: isEnd);
        var (x, tip) = (240.0, top.Bottom + lower);
        canvas.Add(new Patch(Fill.Paper, new(x - 5, top.Y, 10, lower + upper)));
        canvas.Plain(new(x - 3, top.Y, 6, upper), Stroke.Thin);
        canvas.Line(Stroke.Outline, x - 8, top.Y, x + 8, top.Y);
        for (var y = top.Bottom + 4; y < tip; y += 6)
            canvas.Line(Stroke.Thin, x - 5, y + 3, x + 5, y);
        canvas.Line(Stroke.Outline, x, top.Bottom, x, tip);
        canvas.Arrow(x, top.Y - 4, top.Y - 24, "");
        canvas.High(top.Bottom, top.Y, top.X - Canvas.Away, top.X, inputs.Shown(near));
        canvas.High(tip, top.Bottom, top.Right + Canvas.Away, top.Right, inputs.Shown(thread));
        canvas.Tell(x + 60, top.Y - 18, inputs.Main);
        canvas.Note(isEnd ? "Into end grain: it doesn't hold." : "Into side grain.");
    }

    /// <summary>A slat on two supports with someone on it.</summary>
    public static void Slat(SketchInputs inputs, Canvas canvas)
    {
        var (span, thick) = (inputs.Length("38 in", "span"), inputs.Length("3/4 in", "thickness"));
        var area = Canvas.Area;
        var high = Math.Clamp(area.Width * (double)(thick.ToInches() / span.ToInches()), 8, 40);
        var (left, right, y) = (area.X + 16, area.Right - 16, area.Y + 76);
        foreach (var x in new[] { area.X, right })
            canvas.End(new(x, y + high, 16, 70));
        canvas.Face(new(area.X, y, area.Width, high));
        var people = Math.Clamp(inputs.Count(1, 8, "people"), 1, 8);
        for (var i = 1; i <= people; i++)
            canvas.Arrow(left + ((right - left) * i / (people + 1)), y - 40, y - 4, "");
        canvas.Tell(area.Centre.X, y - 56, inputs.Quantity("load"));
        canvas.Line(Stroke.Hidden, left, y + high, area.Centre.X, y + high + 14);
        canvas.Line(Stroke.Hidden, area.Centre.X, y + high + 14, right, y + high);
        canvas.Across(left, right, y + high + 78, y + high + 30, inputs.Shown(span));
        canvas.High(y + high, y, area.X - Canvas.Away, area.X, inputs.Shown(thick));
        canvas.Tell(area.Centre.X, y + high + 40, inputs.Main.Length > 0 ? $"carries {inputs.Main}" : "");
        canvas.Note("Dashed: how it gives, drawn far larger than it does.");
    }
}
