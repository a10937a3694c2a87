using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;
using static ShopPlanner.Drawing.Sketches.CanvasWords;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>Doors on their hinges.</summary>
internal static class HingeSketches
{
    /// <summary>A door from the front with its butt hinges.</summary>
    public static void Butt(SketchInputs inputs, Canvas canvas)
    {
        var (high, wide) = (inputs.Length("30 in", "height"), inputs.Length("16 in", "width"));
        var room = Canvas.Area with { X = 120, Width = 200 };
        var (door, scale) = canvas.Fit(Inches(wide), Inches(high), room);
        canvas.Face(door, upright: true);
        var size = Math.Clamp(Inches(inputs.ResultLength("hinge length") ?? Length.FromInches(2)) * scale, 5, door.Height / 4);
        var places = inputs.Places.IsEmpty ? [] : inputs.Places.ToList();
        var tops =
            places.Count > 0
                ? places.Select(place => door.Y + (Inches(place) * door.Height / Inches(high))).ToList()
                : [door.Y + (door.Height / 8), door.Bottom - (door.Height / 8) - size];
        foreach (var top in tops)
        {
            canvas.Plain(new(door.X - 5, top, 5, size));
            canvas.Plain(new(door.X, top, 7, size), Stroke.Thin);
        }

        foreach (var (top, place) in tops.Zip(places))
            canvas.Say(door.Right + 10, top + (size / 2), inputs.Shown(place), Anchor.Start);
        canvas.High(door.Bottom, door.Y, door.X - 26, door.X, inputs.Shown(high));
        canvas.Across(door.X, door.Right, door.Bottom + Canvas.Away, door.Bottom, inputs.Shown(wide));
        canvas.Note("Figures on the right: upper end of each hinge, from the top of the door.");
    }

    /// <summary>A door on its cup hinge over the side of a case, from above.</summary>
    public static void Overlay(SketchInputs inputs, Canvas canvas)
    {
        const double scale = 3.4; // page units for a millimeter
        var (side, door) = (inputs.Length("3/4 in", "side"), inputs.Length("3/4 in", "door"));
        var isInset = inputs.Word("full", "arm") == "inset";
        var (thick, deep) = (Drawn(side, scale), Drawn(door, scale));
        var covered = Math.Clamp((inputs.MainValue ?? 15) * scale, -40, 110);
        var post = new Box(110, isInset ? 60 : 60 + deep, thick, isInset ? 180 : 180 - deep);
        canvas.End(post);
        var left = isInset ? post.Right + Math.Clamp(covered, 0, 30) : post.Right - covered;
        var leaf = new Box(left, 60, 400 - left, deep);
        canvas.Face(leaf);
        var edge = Math.Clamp(Number(inputs, "edge", 5) * scale, 4, 40);
        var cup = new Box(leaf.X + edge, leaf.Bottom - (deep * 0.65), 35 * scale, deep * 0.65);
        canvas.Add(new Patch(Fill.Paper, cup), new Frame(Stroke.Thin, cup));
        var plate = new Box(post.Right, leaf.Bottom + 22, Math.Clamp(Number(inputs, "plate", 0) * scale, 4, 40), 46);
        canvas.Plain(plate);
        canvas.Line(Stroke.Outline, plate.Right, plate.Centre.Y, cup.X + 20, plate.Centre.Y);
        canvas.Line(Stroke.Outline, cup.X + 20, plate.Centre.Y, cup.X + 20, cup.Bottom);
        canvas.Across(Math.Min(leaf.X, post.Right), Math.Max(leaf.X, post.Right), 42, 60, inputs.Main);
        canvas.Across(post.X, post.Right, post.Bottom + Canvas.Away, post.Bottom, inputs.Shown(side));
        canvas.High(leaf.Bottom, leaf.Y, leaf.Right + Canvas.Away, leaf.Right, inputs.Shown(door));
        canvas.Note("From above: the case side, the door, its cup and the plate.");
    }

    private static double Drawn(Length length, double scale) => Math.Clamp((double)length.ToMillimetres() * scale, 24, 90);

    private static double Number(SketchInputs inputs, string key, double otherwise) =>
        double.TryParse(
            inputs.Word("", key),
            System.Globalization.NumberStyles.Float,
            System.Globalization.CultureInfo.InvariantCulture,
            out var number
        ) && double.IsFinite(number)
            ? number
            : otherwise;
}
