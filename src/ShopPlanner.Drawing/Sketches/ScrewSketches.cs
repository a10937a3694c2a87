using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>Two pieces cut across where a screw joins them.</summary>
internal static class ScrewSketches
{
    /// <summary>Face to face, into an edge, or from a pocket.</summary>
    public static void Screws(SketchInputs inputs, Canvas canvas)
    {
        var (near, into) = (inputs.Length("3/4 in", "thickness"), inputs.Length("1 1/2 in", "into"));
        var screw = inputs.MainLength;
        if (inputs.Word("face", "joint") == "pocket")
            Pocket(inputs, canvas, near, into, screw);
        else
            Straight(inputs, canvas, near, into, screw);
    }

    private static void Straight(SketchInputs inputs, Canvas canvas, Length near, Length into, Length? screw)
    {
        var area = Canvas.Area;
        var scale = (area.Height - 20) / (Inches(near) + Inches(into));
        var edge = inputs.Word("face", "joint") == "edge";
        var top = new Box(area.X, area.Y + 10, area.Width, Inches(near) * scale);
        var far = new Box(edge ? area.Centre.X - 60 : area.X, top.Bottom, edge ? 120 : area.Width, Inches(into) * scale);
        canvas.Face(top);
        canvas.Face(far, upright: edge);
        var deep = Math.Min(Inches(screw ?? Length.FromTicks(near.Ticks * 2)) * scale, area.Height);
        Screw(canvas, new(area.Centre.X, top.Y), new(area.Centre.X, top.Y + deep));
        canvas.Up(top.Bottom, top.Y, area.X - Canvas.Away, top.X, inputs.Shown(near));
        canvas.Up(far.Bottom, far.Y, area.X - Canvas.Away, far.X, inputs.Shown(into));
        if (screw is { } length)
            canvas.Up(top.Y + deep, top.Y, area.Right + Canvas.Away, area.Centre.X + 10, inputs.Shown(length));
        canvas.Note(edge ? "Into the end or edge of the far piece." : "The near piece on the far one.");
    }

    private static void Pocket(SketchInputs inputs, Canvas canvas, Length near, Length into, Length? screw)
    {
        var area = Canvas.Area;
        var scale = Math.Min(100 / Inches(near), 130 / Inches(into));
        var thick = Inches(near) * scale;
        var far = new Box(area.Right - 20 - (Inches(into) * scale), area.Y, Inches(into) * scale, area.Height - 10);
        var board = new Box(area.X, area.Centre.Y - (thick / 2), far.X - area.X, thick);
        canvas.Face(board);
        canvas.Face(far, upright: true);
        const double slope = 0.268; // 15°, a usual pocket (common practice)
        var reach = Inches(screw ?? Length.FromTicks(near.Ticks * 5 / 3)) * scale;
        var tip = new Spot(Math.Min(far.X + (reach * 0.45), far.Right - 4), board.Centre.Y + (reach * 0.45 * slope));
        var head = new Spot(Math.Max(far.X - (reach * 0.55), area.X + 14), board.Centre.Y - (reach * 0.55 * slope));
        canvas.Line(Stroke.Hidden, head.X, head.Y, head.X - ((head.Y - board.Y) / slope), board.Y);
        Screw(canvas, head, tip);
        canvas.Up(board.Bottom, board.Y, board.X - Canvas.Away, board.X, inputs.Shown(near));
        canvas.Across(far.X, far.Right, far.Bottom + Canvas.Away, far.Bottom, inputs.Shown(into));
        if (screw is { } length)
            canvas.Say(head.X, board.Y - 18, $"screw {inputs.Shown(length)}", weight: Lettering.Weight.Bold);
        canvas.Note("The screw leaves the pocket at the middle of the near piece.");
    }

    // A shank with its head across and threads towards the point.
    private static void Screw(Canvas canvas, Spot head, Spot tip)
    {
        var (dx, dy) = (tip.X - head.X, tip.Y - head.Y);
        var length = Math.Max(Math.Sqrt((dx * dx) + (dy * dy)), 1);
        var (ux, uy) = (dx / length, dy / length);
        Spot At(double along, double aside) => new(head.X + (ux * along) - (uy * aside), head.Y + (uy * along) + (ux * aside));
        var point = length - 8;
        canvas.Add(
            new Polyline(
                Stroke.Outline,
                [At(0, -9), At(0, 9), At(7, 3.5), At(point, 3.5), At(length, 0), At(point, -3.5), At(7, -3.5)],
                true
            )
        );
        for (var along = length * 0.35; along < length - 6; along += 6)
            canvas.Add(new Line(Stroke.Thin, At(along, -5), At(along + 3, 5)));
    }

    private static double Inches(Length length) => (double)length.ToInches();
}
