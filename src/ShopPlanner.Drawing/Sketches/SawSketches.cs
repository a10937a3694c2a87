using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;
using static ShopPlanner.Drawing.Sketches.CanvasWords;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>What is measured to set up a saw.</summary>
internal static class SawSketches
{
    private const string Tint = "#F2E2C4";

    /// <summary>A board sawn into strips.</summary>
    public static void Kerf(SketchInputs inputs, Canvas canvas)
    {
        var board = inputs.Length("12 in", "board");
        var count = Math.Clamp(inputs.Count(5, 12, "count"), 1, 12);
        var strip = inputs.MaybeLength("strip") ?? Length.FromTicks(board.Ticks / (count + 4));
        var area = Canvas.Area;
        const double kerf = 5;
        var each = Math.Clamp(Inches(strip) / Inches(board) * area.Width, 3, (area.Width - 30 - (count * kerf)) / count);
        var x = area.X;
        for (var i = 0; i < count; i++)
        {
            canvas.Face(new(x, 80, each, 110), upright: true);
            canvas.Add(new Patch(Fill.Kerf, new(x + each, 80, kerf, 110)));
            x += each + kerf;
        }

        canvas.Face(new(x, 80, Math.Max(10, area.Right - x), 110), upright: true);
        canvas.Across(area.X, area.Right, 56, 80, inputs.Shown(board));
        canvas.Across(area.X, area.X + each, 190 + Canvas.Away, 190, inputs.Shown(strip));
        if (inputs.MaybeLength("rest") is { } rest)
            canvas.Across(x, area.Right, 190 + 40, 190, inputs.Shown(rest));
        canvas.Note("The kerfs are drawn wider than they are. Above: the board before.");
    }

    /// <summary>The square that is cut five times, with the last strip.</summary>
    public static void FiveCuts(SketchInputs inputs, Canvas canvas)
    {
        var (far, near) = (inputs.Length("1 in", "far"), inputs.Length("1 in", "near"));
        var square = new Box(120, 50, 150, 150);
        canvas.Face(square, upright: true);
        canvas.Line(Stroke.Outline, 90, square.Bottom + 4, 420, square.Bottom + 4);
        canvas.Say(104, square.Bottom + 16, "fence");
        var bend = Math.Sign(near.Ticks - far.Ticks) * 7;
        var (left, right, top, bottom) = (300.0, 340.0, square.Y, square.Bottom);
        canvas.Add(
            new Face(
                [new(left, top), new(right - bend, top), new(right + bend, bottom), new(left, bottom)],
                Tint,
                0,
                Stroke.Outline
            )
        );
        canvas.Line(Stroke.NextCut, 285, square.Y - 8, 285, square.Bottom);
        foreach (
            var (x, y, words) in new[]
            {
                (square.X + 12, square.Centre.Y, "1"),
                (square.Centre.X, square.Y + 12, "2"),
                (square.Right - 12, square.Centre.Y, "3"),
                (square.Centre.X, square.Bottom - 12, "4"),
            }
        )
            canvas.Say(x, y, words, weight: Lettering.Weight.Bold);
        canvas.Across(left, right - bend, top - Canvas.Away, top, inputs.Reading(far));
        canvas.Across(left, right + bend, bottom + 22, bottom, inputs.Reading(near));
        canvas.Tell(square.Centre.X, square.Centre.Y, inputs.Main);
        canvas.Note("Left: four cuts, each edge turned to the fence. Right: the strip of the fifth cut.");
    }

    /// <summary>Blade and fence from above.</summary>
    public static void Parallel(SketchInputs inputs, Canvas canvas)
    {
        var (front, back) = (inputs.Length("6 in", "front"), inputs.Length("6 in", "back"));
        var isFence = inputs.Word("fence", "what") == "fence";
        var lean = Math.Sign(back.Ticks - front.Ticks) * 10;
        canvas.Add(new Frame(Stroke.Outline, new(90, 36, 320, 220)));
        canvas.Add(new Frame(Stroke.Thin, new(124, 36, 12, 220)));
        var blade = isFence ? 0 : lean;
        canvas.Add(new Line(Stroke.NextCut, new(206 + blade, 80), new(206, 210)));
        var fence = isFence ? lean : 0;
        canvas.Add(new Face([new(300 + fence, 36), new(330 + fence, 36), new(330, 256), new(300, 256)], Tint, 0, Stroke.Outline));
        var (low, high) = (isFence ? 206 : 136, isFence ? 300 : 206);
        canvas.Across(low, high + (isFence ? lean * 0.8 : lean), 72, 80, inputs.Reading(back));
        canvas.Across(low, high + (isFence ? lean * 0.2 : 0), 222, 210, inputs.Reading(front));
        canvas.Say(206, 236, "front");
        canvas.Say(206, 50, "back");
        canvas.Tell(366, 146, inputs.Main);
        canvas.Note("From above: miter slot, blade and fence, drawn leaning far more than they do.");
    }
}
