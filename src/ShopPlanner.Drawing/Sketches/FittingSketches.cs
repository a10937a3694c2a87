using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>What must fit between or into something.</summary>
internal static class FittingSketches
{
    private const int MostDrawn = 80;

    /// <summary>Members along a span, to scale, with their gap.</summary>
    public static void Spacing(SketchInputs inputs, Canvas canvas)
    {
        var (span, member) = (inputs.Length("32 in", "span"), inputs.Length("2 1/2 in", "member"));
        var area = Canvas.Area;
        var scale = area.Width / Inches(span);
        var places = inputs.Places.IsEmpty ? Guess(inputs, span, member) : [.. inputs.Places.Select(Inches)];
        var (top, bottom, wide) = (area.Y + 40, area.Bottom - 40, Inches(member) * scale);
        foreach (var rail in new[] { top - 16, bottom })
            canvas.Face(new(area.X, rail, area.Width, 16));
        foreach (var place in places.Take(MostDrawn))
            canvas.Face(new(area.X + (place * scale), top, Math.Max(wide, 1), bottom - top), upright: true);
        canvas.Across(area.X, area.Right, bottom + 16 + Canvas.Away, bottom + 16, inputs.Shown(span));
        if (places.Count == 0)
            return;
        var first = area.X + (places[0] * scale);
        canvas.Across(first, first + wide, top - 16 - Canvas.Away, top - 16, places.Count > 1 ? "" : inputs.Shown(member));
        var gap = inputs.MainLength is { } length ? inputs.Shown(length) : "";
        if (places.Count > 1)
            canvas.Across(first + wide, area.X + (places[1] * scale), top - 16 - Canvas.Away, top - 16, gap);
        canvas.Note($"Each {inputs.Shown(member)} wide.");
        if (places.Count > MostDrawn)
            canvas.Note($"The drawing shows the first {MostDrawn} of {places.Count}.");
    }

    /// <summary>A panel's edge in the groove of a frame, cut across.</summary>
    public static void Groove(SketchInputs inputs, Canvas canvas)
    {
        var frame = inputs.Length("3/4 in", "stock", "thickness");
        var wide = inputs.ResultLength("groove width") ?? inputs.Length("1/4 in", "groove", "panel");
        var deep = inputs.ResultLength("groove depth", "tongue length") ?? inputs.Length("3/8 in", "depth");
        var area = Canvas.Area;
        var scale = 150 / Math.Max(Inches(frame), Inches(wide) * 1.2);
        var (high, w, d) = (Inches(frame) * scale, Inches(wide) * scale, Math.Min(Inches(deep) * scale, 110));
        var rail = new Box(area.X + 10, area.Centre.Y - (high / 2), d + 60, high);
        canvas.End(rail);
        var groove = new Box(rail.Right - d, area.Centre.Y - (w / 2), d, w);
        canvas.Add(new Patch(Fill.Paper, groove), new Patch(Fill.Paper, groove));
        var panel = new Box(groove.X + Math.Min(8, d / 4), groove.Y + 1.5, area.Right - groove.X - 8, Math.Max(w - 3, 2));
        canvas.Face(panel);
        canvas.Line(Stroke.Outline, groove.X, groove.Y, groove.Right, groove.Y);
        canvas.Line(Stroke.Outline, groove.X, groove.Y, groove.X, groove.Bottom);
        canvas.Line(Stroke.Outline, groove.X, groove.Bottom, groove.Right, groove.Bottom);
        canvas.Up(rail.Bottom, rail.Y, rail.X - Canvas.Away, rail.X, inputs.Shown(frame));
        canvas.Across(groove.X, groove.Right, rail.Bottom + Canvas.Away, rail.Bottom, $"{inputs.Shown(deep)} deep");
        canvas.Up(groove.Bottom, groove.Y, area.Right + Canvas.Away, panel.Right, inputs.Shown(wide));
        canvas.Note("The panel floats in the groove, with room to move.");
    }

    /// <summary>A door or two in their opening.</summary>
    public static void Door(SketchInputs inputs, Canvas canvas)
    {
        var (wide, high) = (inputs.Length("18 in", "width", "opening-width"), inputs.Length("28 in", "height", "opening-height"));
        var doors = Math.Clamp(inputs.Count(1, 2, "leaves", "doors"), 1, 2);
        var (opening, scale) = canvas.Fit(Inches(wide), Inches(high));
        var overlay = inputs.Word("inset", "fit") == "overlay";
        if (!overlay)
            canvas.Add(new Frame(Stroke.Outline, opening));
        var stile = Math.Clamp(Inches(inputs.Length("2 1/2 in", "stile")) * scale, 5, opening.Width / doors / 3);
        for (var door = 0; door < doors; door++)
        {
            var share = opening.Width / doors;
            var leaf = new Box(opening.X + (door * share), opening.Y, share, opening.Height).Inset(overlay ? -4 : 4);
            canvas.Face(leaf with { Width = stile }, upright: true);
            canvas.Face(leaf with { X = leaf.Right - stile, Width = stile }, upright: true);
            foreach (var y in new[] { leaf.Y, leaf.Bottom - stile })
                canvas.Face(new(leaf.X + stile, y, leaf.Width - (2 * stile), stile));
            canvas.Plain(leaf.Inset(stile) with { Height = Math.Max(leaf.Height - (2 * stile), 2) }, Stroke.Thin);
        }

        if (overlay)
            canvas.Add(new Frame(Stroke.Hidden, opening));
        canvas.Across(opening.X, opening.Right, opening.Bottom + Canvas.Away, opening.Bottom, inputs.Shown(wide));
        canvas.Up(opening.Bottom, opening.Y, opening.X - Canvas.Away, opening.X, inputs.Shown(high));
        if (inputs.ResultLength("door width") is { } width)
            canvas.Say(
                opening.Centre.X,
                opening.Y - 18,
                $"{(doors > 1 ? "each " : "")}{inputs.Shown(width)} wide",
                weight: Lettering.Weight.Bold
            );
        canvas.Note(overlay ? "Dashed: the opening behind the door." : "The gap around it is drawn wider than it is.");
    }

    /// <summary>A drawer box in its opening, from the front.</summary>
    public static void Drawer(SketchInputs inputs, Canvas canvas)
    {
        var (wide, high) = (inputs.Length("16 in", "width", "opening-width"), inputs.Length("6 in", "height", "opening-height"));
        var (opening, scale) = canvas.Fit(Inches(wide), Inches(high));
        var (boxWide, boxHigh) = (inputs.ResultLength("box width"), inputs.ResultLength("box height"));
        var w = Math.Clamp(Inches(boxWide ?? Length.FromTicks(wide.Ticks * 15 / 16)) * scale, 10, opening.Width);
        var h = Math.Clamp(Inches(boxHigh ?? Length.FromTicks(high.Ticks * 4 / 5)) * scale, 6, opening.Height);
        var drawn = new Box(opening.Centre.X - (w / 2), opening.Bottom - ((opening.Height - h) / 2) - h, w, h);
        canvas.Add(new Frame(Stroke.Outline, opening));
        canvas.Face(drawn);
        foreach (var x in new[] { opening.X, drawn.Right })
            canvas.Add(new Hatch(Stroke.EndGrain, new(x, drawn.Centre.Y - 6, drawn.X - opening.X, 12), 3));
        canvas.Across(opening.X, opening.Right, opening.Bottom + Canvas.Away, opening.Bottom, inputs.Shown(wide));
        canvas.Up(opening.Bottom, opening.Y, opening.X - Canvas.Away, opening.X, inputs.Shown(high));
        if (boxWide is { } shown)
            canvas.Across(drawn.X, drawn.Right, opening.Y - Canvas.Away, drawn.Y, inputs.Shown(shown));
        canvas.Note("Hatched: the slides on both sides.");
    }

    // Before there is an answer: five or as many as asked for, at equal gaps.
    private static List<double> Guess(SketchInputs inputs, Length span, Length member)
    {
        var most = Math.Max(1, (int)(Inches(span) / Inches(member)));
        var count = Math.Clamp(inputs.Count(5, 500, "count"), 1, Math.Min(most, MostDrawn));
        var gap = Math.Max(0, Inches(span) - (count * Inches(member))) / (count + 1);
        return [.. Enumerable.Range(0, count).Select(i => gap + (i * (Inches(member) + gap)))];
    }

    private static double Inches(Length length) => (double)length.ToInches();
}
