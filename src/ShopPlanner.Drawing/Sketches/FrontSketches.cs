using ShopPlanner.Drawing.Shapes;
using static ShopPlanner.Drawing.Sketches.CanvasWords;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>Drawers from the front.</summary>
internal static class FrontSketches
{
    private const int MostDrawn = 20;

    /// <summary>Drawer fronts one above the other.</summary>
    public static void Fronts(SketchInputs inputs, Canvas canvas)
    {
        var (high, wide) = (inputs.Length("30 in", "height"), inputs.Length("18 in", "width"));
        var room = new Box(Canvas.Area.X + 30, Canvas.Area.Y - 8, 200, Canvas.Area.Height);
        var (body, _) = canvas.Fit(Inches(wide), Inches(high), room);
        var count = Math.Max(1, inputs.Count(3, MostDrawn, "count"));
        var heights = inputs.Places.IsEmpty ? [] : inputs.Places.Take(MostDrawn).ToList();
        var shares = heights.Count > 0 ? heights.Select(Inches).ToList() : [.. Enumerable.Repeat(1.0, count)];
        canvas.Add(new Frame(inputs.Word("overlay", "fit") == "inset" ? Stroke.Outline : Stroke.Hidden, body));
        var gap = Math.Min(4, body.Height / shares.Count / 4);
        var free = body.Height - (gap * (shares.Count + 1));
        var y = body.Y + gap;
        for (var i = 0; i < shares.Count; i++)
        {
            var front = new Box(body.X + gap, y, Math.Max(1, body.Width - (2 * gap)), free * shares[i] / shares.Sum());
            canvas.Face(front);
            if (i < heights.Count && front.Height > Canvas.Text)
                canvas.Say(body.Right + 12, front.Centre.Y, inputs.Shown(heights[i]), Anchor.Start);
            y = front.Bottom + gap;
        }

        canvas.High(body.Bottom, body.Y, body.X - Canvas.Away, body.X, inputs.Shown(high));
        canvas.Across(body.X, body.Right, body.Bottom + Canvas.Away, body.Bottom, inputs.Shown(wide));
        canvas.Note("The gaps are drawn wider than they are. Heights on the right are the fronts'.");
    }

    /// <summary>A drawer box on its slides in the opening.</summary>
    public static void Slides(SketchInputs inputs, Canvas canvas)
    {
        var (wide, high) = (inputs.Length("15 in", "width"), inputs.Length("6 in", "height"));
        var kind = inputs.Word("undermount", "slide");
        var (opening, scale) = canvas.Fit(Inches(wide), Inches(high), Canvas.Area with { X = 110, Width = 300 });
        var box = Drawn(inputs, opening, scale);
        canvas.Add(new Frame(Stroke.Outline, opening));
        canvas.Face(box);
        var side = Math.Clamp(Inches(inputs.Length("1/2 in", "side")) * scale, 2, box.Width / 4);
        foreach (var x in new[] { box.X, box.Right - side })
            canvas.End(new(x, box.Y, side, box.Height));
        var (rail, top) = kind switch
        {
            "side" => (box.Height / 4, box.Centre.Y - (box.Height / 8)),
            "roller" => (box.Height / 6, box.Bottom - (box.Height / 6)),
            _ => (Math.Min(10, box.Height / 5), box.Bottom - 2),
        };
        var inner = kind == "undermount" ? side + 8 : 0;
        foreach (var (from, to) in new[] { (opening.X, box.X + inner), (box.Right - inner, opening.Right) })
            canvas.Add(new Hatch(Stroke.EndGrain, new(from, top, Math.Max(2, to - from), rail), 3));
        canvas.Across(opening.X, opening.Right, opening.Bottom + Canvas.Away, opening.Bottom, inputs.Shown(wide));
        canvas.High(opening.Bottom, opening.Y, opening.X - Canvas.Away, opening.X, inputs.Shown(high));
        if (inputs.ResultLength("box width, outside") is { } width)
            canvas.Across(box.X, box.Right, opening.Y - Canvas.Away, box.Y, inputs.Shown(width));
        canvas.Note("Hatched: the slides.");
    }

    private static Box Drawn(SketchInputs inputs, Box opening, double scale)
    {
        var wide = inputs.ResultLength("box width, outside") is { } w ? Inches(w) * scale : opening.Width * 0.93;
        var high = inputs.ResultLength("box height") is { } h ? Inches(h) * scale : opening.Height * 0.8;
        wide = Math.Clamp(wide, 8, opening.Width);
        high = Math.Clamp(high, 6, opening.Height);
        return new(opening.Centre.X - (wide / 2), opening.Centre.Y - (high / 2), wide, high);
    }
}
