using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>Rows of holes and hinges.</summary>
internal static class HoleSketches
{
    private const int MostDrawn = 120;

    /// <summary>A door from behind, its hinges along the edge.</summary>
    public static void Hinges(SketchInputs inputs, Canvas canvas)
    {
        var (wide, high) = (inputs.Length("18 in", "width"), inputs.Length("30 in", "height"));
        var (door, scale) = canvas.Fit(Inches(wide), Inches(high));
        canvas.Face(door, upright: true);
        var places = inputs.Places.Select(place => Inches(place) * scale).ToList();
        if (places.Count == 0)
            places = [3.5 * scale, door.Height - (3.5 * scale)];
        var edge = Inches(inputs.ResultLength("cup center") ?? Length.FromInches(0.875m)) * scale;
        foreach (var place in places)
            canvas.Hole(new(door.X + Math.Max(edge, 7), door.Bottom - place), Math.Clamp(0.69 * scale, 4, 14));
        canvas.Up(door.Bottom, door.Y, door.X - 44, door.X, inputs.Shown(high));
        canvas.Across(door.X, door.Right, door.Bottom + Canvas.Away, door.Bottom, inputs.Shown(wide));
        canvas.Up(door.Bottom, door.Bottom - places[0], door.X - Canvas.Away, door.X, "");
        foreach (var (place, length) in places.Zip(inputs.Places))
            canvas.Say(door.Right + 8, door.Bottom - place, inputs.Shown(length), Anchor.Start);
        canvas.Note("Heights on the right are from the bottom of the door.");
    }

    /// <summary>The side of a carcass with its two rows of holes.</summary>
    public static void Pins(SketchInputs inputs, Canvas canvas)
    {
        var (high, first, pitch) = (
            inputs.Length("30 in", "height"),
            inputs.Length("6 in", "first"),
            inputs.Length("32 mm", "pitch")
        );
        var setback = inputs.Length("37 mm", "setback");
        var deep = Math.Max(11.25, Inches(setback) * 4);
        var (side, scale) = canvas.Fit(
            deep,
            Inches(high),
            Canvas.Area with
            {
                X = Canvas.Area.X + 50,
                Width = Canvas.Area.Width - 100,
            }
        );
        canvas.Face(side, upright: true);
        var places = inputs.Places.IsEmpty
            ? Guess(Inches(high), Inches(first), Inches(pitch))
            : [.. inputs.Places.Select(Inches)];
        var (back, front) = (side.X + (Inches(setback) * scale), side.Right - (Inches(setback) * scale));
        foreach (var place in places.Take(MostDrawn))
        foreach (var x in new[] { back, front })
            canvas.Hole(new(x, side.Bottom - (place * scale)), 2);
        canvas.Up(side.Bottom, side.Y, side.X - 44, side.X, inputs.Shown(high));
        if (places.Count == 0)
            return;
        canvas.Up(side.Bottom, side.Bottom - (places[0] * scale), side.X - Canvas.Away, back, inputs.Shown(first));
        var (low, next) = (side.Bottom - (places[0] * scale), side.Bottom - (places.ElementAtOrDefault(1) * scale));
        if (places.Count > 1)
            canvas.Up(low, next, side.Right + Canvas.Away, front, inputs.Shown(pitch));
        canvas.Across(front, side.Right, side.Bottom + Canvas.Away, side.Bottom, inputs.Shown(setback));
    }

    /// <summary>The edge of a piece with the dowels' centres.</summary>
    public static void Dowels(SketchInputs inputs, Canvas canvas)
    {
        var (thick, wide) = (inputs.Length("3/4 in", "thickness"), inputs.Length("4 in", "width", "length"));
        var area = Canvas.Area;
        var (edge, scale) = canvas.Fit(Inches(wide), Inches(thick), area with { Height = 110 });
        canvas.End(edge);
        var across = edge.Height / Inches(thick);
        var dowel = inputs.ResultLength("diameter") ?? Length.FromTicks(thick.Ticks * 2 / 5);
        var radius = Inches(dowel) * Math.Min(scale, across) / 2;
        var places = inputs.Places.IsEmpty ? [Inches(wide) / 4, Inches(wide) * 3 / 4] : inputs.Places.Select(Inches).ToList();
        foreach (var place in places.Take(MostDrawn))
            canvas.Hole(new(edge.X + (place * scale), edge.Centre.Y), Math.Min(radius, edge.Height / 3));
        canvas.Line(Stroke.Centre, edge.X - 8, edge.Centre.Y, edge.Right + 8, edge.Centre.Y);
        canvas.Across(edge.X, edge.Right, edge.Bottom + 40, edge.Bottom, inputs.Shown(wide));
        var first = inputs.Places.IsEmpty ? "" : inputs.Shown(inputs.Places[0]);
        canvas.Across(edge.X, edge.X + (places[0] * scale), edge.Bottom + Canvas.Away, edge.Bottom, first);
        canvas.Up(edge.Bottom, edge.Y, edge.X - Canvas.Away, edge.X, inputs.Shown(thick));
        canvas.Note("The drilled edge; centers from one end.");
    }

    private static List<double> Guess(double high, double first, double pitch)
    {
        var count = Math.Max(1, (int)((high - (2 * first)) / pitch) + 1);
        return [.. Enumerable.Range(0, Math.Min(count, MostDrawn)).Select(i => first + (i * pitch)).Where(place => place < high)];
    }

    private static double Inches(Length length) => (double)length.ToInches();
}
