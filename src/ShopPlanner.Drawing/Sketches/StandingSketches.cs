using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>What bears and what stands.</summary>
internal static class StandingSketches
{
    /// <summary>A loaded shelf from the front, on its two supports, bent.</summary>
    public static void Sag(SketchInputs inputs, Canvas canvas)
    {
        const double bend = 22,
            support = 16;
        var (span, thick) = (inputs.Length("30 in", "span", "length"), inputs.Length("3/4 in", "thickness"));
        var area = Canvas.Area;
        var (left, right, y) = (area.X + support, area.Right - support, area.Y + 70);
        var high = Math.Clamp((right - left) * (double)(thick.ToInches() / span.ToInches()), 8, 40);
        foreach (var x in new[] { area.X, right })
            canvas.End(new(x, y + high, support, 80));
        double Dip(double part) => bend * Math.Sin(Math.PI * part);
        canvas.Add(Curve(area.X, area.Right, part => y + Dip(part)), Curve(area.X, area.Right, part => y + high + Dip(part)));
        canvas.Line(Stroke.Outline, area.X, y, area.X, y + high);
        canvas.Line(Stroke.Outline, area.Right, y, area.Right, y + high);
        canvas.Line(Stroke.Hidden, left, y + high, right, y + high);
        for (var load = 1; load < 8; load++)
            canvas.Arrow(left + ((right - left) * load / 8), y - 30 + Dip(load / 8.0), y - 4 + Dip(load / 8.0), "");
        canvas.Say((left + right) / 2, y - 42, inputs.Quantity("load", "weight", "line-load"), weight: Lettering.Weight.Medium);
        canvas.Across(left, right, y + high + 70, y + high + 30, inputs.Shown(span));
        canvas.Up(y + high, y, area.X - Canvas.Away, area.X, inputs.Shown(thick));
        canvas.Say((left + right) / 2, y + high + bend + 16, inputs.Main, weight: Lettering.Weight.Bold);
        canvas.Note("The sag is drawn far larger than it is.");
    }

    /// <summary>A piece from the side, with what stands open and what leans on it.</summary>
    public static void Stability(SketchInputs inputs, Canvas canvas)
    {
        var (depth, height) = (inputs.Length("12 in", "depth"), inputs.Length("36 in", "height"));
        var open = inputs.Count(1, 12, "doors") > 0;
        var reach = inputs.MaybeLength("reach") ?? depth;
        var room = new Box(Canvas.Area.X, Canvas.Area.Y + 10, Canvas.Area.Width - 90, Canvas.Area.Height - 6);
        var (all, scale) = canvas.Fit(Inches(depth) + (open ? Inches(reach) : 0), Inches(height), room);
        var body = all with { Width = Inches(depth) * scale };
        canvas.Face(body, upright: true);
        canvas.Line(Stroke.Outline, all.X - 20, body.Bottom, Canvas.Area.Right + 20, body.Bottom);
        canvas.Up(body.Bottom, body.Y, body.X - Canvas.Away, body.X, inputs.Shown(height));
        canvas.Across(body.X, body.Right, body.Bottom + Canvas.Away, body.Bottom, inputs.Shown(depth));
        canvas.Arrow(body.Centre.X, body.Y + 26, body.Centre.Y + 10, inputs.Quantity("weight"));
        if (open)
            Open(inputs, canvas, body, Inches(reach) * scale, reach);
        var toe = Inches(inputs.MaybeLength("toe") ?? Length.Zero) * scale;
        var (x, y) = (body.Right - toe, body.Bottom);
        canvas.Add(new Polyline(Stroke.Outline, [new(x, y), new(x - 6, y + 11), new(x + 6, y + 11)], true));
        canvas.Note("Triangle: the edge it tips over.");
    }

    private static void Open(SketchInputs inputs, Canvas canvas, Box body, double reach, Length length)
    {
        var high = Math.Min(26, body.Height / 4);
        var drawer = new Box(body.Right, body.Y + (body.Height * 0.3), reach, high);
        canvas.Plain(drawer);
        canvas.Across(drawer.X, drawer.Right, drawer.Bottom + Canvas.Away, drawer.Bottom, inputs.Shown(length));
        canvas.Arrow(drawer.Right - 2, drawer.Y - 34, drawer.Y - 3, inputs.Quantity("leaning"));
    }

    private static Polyline Curve(double from, double to, Func<double, double> y) =>
        new(
            Stroke.Outline,
            [.. Enumerable.Range(0, 33).Select(i => new Spot(from + ((to - from) * i / 32), y(i / 32.0)))],
            false
        );

    private static double Inches(Length length) => (double)length.ToInches();
}
