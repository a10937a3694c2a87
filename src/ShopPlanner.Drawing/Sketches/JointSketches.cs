using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;
using static ShopPlanner.Drawing.Sketches.CanvasWords;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>Pieces let into each other.</summary>
internal static class JointSketches
{
    /// <summary>A rail with its tenon in the upright piece, from the side.</summary>
    public static void Mortise(SketchInputs inputs, Canvas canvas)
    {
        var (into, rail) = (inputs.Length("2 in", "into"), inputs.Length("3 in", "width"));
        var kind = inputs.Word("blind", "kind");
        var scale = Math.Min(110 / Inches(into), 120 / Inches(rail));
        var post = new Box(120, 40, Math.Max(Inches(into) * scale, 24), 200);
        var high = Math.Max(Inches(rail) * scale, 24);
        var beam = new Box(post.Right, kind == "haunched" ? post.Y + 6 : 140 - (high / 2), 400 - post.Right, high);
        canvas.Face(post, upright: true);
        canvas.Face(beam);
        var deep = Part(inputs.ResultLength("tenon length"), into, post.Width, kind == "through" ? 1 : 0.65);
        var wide = Part(inputs.ResultLength("tenon width"), rail, high, 0.7);
        var tenon = new Box(beam.X - deep, kind == "haunched" ? beam.Bottom - wide : beam.Centre.Y - (wide / 2), deep, wide);
        canvas.Add(new Frame(Stroke.Hidden, tenon));
        if (kind == "haunched")
        {
            var haunch = Part(inputs.ResultLength("haunch length"), into, post.Width, 0.2);
            canvas.Add(new Frame(Stroke.Hidden, new(beam.X - haunch, beam.Y, haunch, tenon.Y - beam.Y)));
        }

        canvas.Across(post.X, post.Right, post.Bottom + Canvas.Away, post.Bottom, inputs.Shown(into));
        canvas.High(beam.Bottom, beam.Y, beam.Right + Canvas.Away, beam.Right, inputs.Shown(rail));
        if (inputs.ResultLength("tenon length") is { } length)
            canvas.Tell(beam.X + 70, tenon.Centre.Y, $"tenon {inputs.Shown(length)} long");
        if (inputs.ResultLength("tenon width") is { } width)
            canvas.High(tenon.Bottom, tenon.Y, post.X - Canvas.Away, tenon.X, inputs.Shown(width));
        canvas.Note(
            inputs.ResultLength("tenon thickness") is { } thick
                ? $"Dashed: the tenon, {inputs.Shown(thick)} thick."
                : "Dashed: the tenon in its mortise."
        );
    }

    /// <summary>The joint from the end: a piece in its dado, rabbet or lap.</summary>
    public static void Dado(SketchInputs inputs, Canvas canvas)
    {
        var (thick, into) = (inputs.Length("23/32 in", "thickness"), inputs.Length("3/4 in", "into"));
        var joint = inputs.Word("dado", "joint");
        var depth = inputs.ResultLength("depth of the cut") ?? inputs.MaybeLength("depth") ?? Length.FromTicks(into.Ticks / 3);
        var scale = Math.Min(80 / Inches(into), 150 / Inches(thick));
        var (high, wide) = (Math.Max(Inches(into) * scale, 20), Math.Max(Inches(thick) * scale, 14));
        var deep = Part(depth, into, high, 0.33);
        var board = new Box(110, 230 - high, 260, high);
        canvas.End(board);
        var x = joint is "rabbet" or "end-lap" ? board.Right - wide : board.Centre.X - (wide / 2);
        var cut = new Box(x, board.Y, wide, deep);
        canvas.Add(new Patch(Fill.Paper, cut));
        var above = joint is "lap" or "end-lap"
            ? new Box(x, board.Y + deep - high, wide, high)
            : new Box(x, 40, wide, cut.Bottom - 40);
        if (joint is "lap" or "end-lap")
            canvas.End(above);
        else
            canvas.Face(above, upright: true);
        canvas.Line(Stroke.Outline, cut.X, cut.Bottom, cut.Right, cut.Bottom);
        canvas.Across(cut.X, cut.Right, above.Y - Canvas.Away, above.Y, Words(inputs, "width of the cut", thick));
        canvas.High(board.Bottom, board.Y, board.X - Canvas.Away, board.X, inputs.Shown(into));
        canvas.High(cut.Bottom, cut.Y, board.Right + Canvas.Away, cut.Right, $"{inputs.Shown(depth)} deep");
        canvas.Note("From the end of the piece.");
    }

    private static string Words(SketchInputs inputs, string result, Length otherwise) =>
        inputs.Shown(inputs.ResultLength(result) ?? otherwise);

    // A part of a whole as it is drawn: never so small that it vanishes, never larger than the whole and a little.
    private static double Part(Length? part, Length whole, double drawn, double otherwise) =>
        part is { } one ? Math.Clamp(drawn * one.Ticks / whole.Ticks, 3, drawn * 1.1) : drawn * otherwise;
}
