using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>Boards and sheets as such.</summary>
internal static partial class StockSketches
{
    /// <summary>The end of a board within its nominal size; a sheet's edge where there is no width.</summary>
    public static void ActualSize(SketchInputs inputs, Canvas canvas)
    {
        var words = inputs.Word("1x3", "size", "nominal", "name");
        var (thick, wide) = (inputs.ResultLength("thick") ?? Length.FromInches(0.75m), inputs.ResultLength("width"));
        var nominal = Nominal().Match(words);
        if (wide is null && !nominal.Success)
        {
            SheetEdge(inputs, canvas, thick, words);
            return;
        }

        var actual = (Wide: Inches(wide ?? Length.FromInches(2.5m)), Thick: Inches(thick));
        var (w, t) = nominal.Success ? (Number(nominal.Groups["width"].Value), Number(nominal.Groups["thick"].Value)) : actual;
        var (outer, scale) = canvas.Fit(Math.Max(w, actual.Wide), Math.Max(t, actual.Thick));
        var box = Middle(outer, actual.Wide * scale, actual.Thick * scale);
        canvas.End(box);
        if (nominal.Success)
            canvas.Add(new Frame(Stroke.Hidden, Middle(outer, w * scale, t * scale)));
        canvas.Across(box.X, box.Right, outer.Bottom + Canvas.Away, box.Bottom, inputs.Shown(wide ?? Length.FromInches(2.5m)));
        canvas.Up(box.Bottom, box.Y, outer.X - Canvas.Away, box.X, inputs.Shown(thick));
        canvas.Note(nominal.Success ? $"Dashed: the nominal size, {words}." : "The end of the board.");
    }

    /// <summary>A board from its face, with its end beside it.</summary>
    public static void BoardFeet(SketchInputs inputs, Canvas canvas) =>
        Board(inputs, canvas, ("8 ft", "length"), ("6 in", "width"), ("1 in", "thickness"), Times(inputs));

    /// <summary>A piece from its face, with its weight on it.</summary>
    public static void Weight(SketchInputs inputs, Canvas canvas) =>
        Board(inputs, canvas, ("48 in", "length"), ("12 in", "width"), ("3/4 in", "thickness"), inputs.Main);

    /// <summary>A panel's edge with the coats on it, the first at the wood.</summary>
    public static void Coats(SketchInputs inputs, Canvas canvas)
    {
        const double film = 15;
        var coats = Math.Min(inputs.InputCount("Coats") ?? inputs.Count(3, 8, "coats"), 8);
        var area = Canvas.Area;
        var wood = new Box(area.X, area.Bottom - 70, area.Width, 60);
        canvas.End(wood);
        for (var coat = 0; coat < coats; coat++)
        {
            var layer = new Box(wood.X, wood.Y - ((coat + 1) * film) - (coat * 2), wood.Width, film);
            canvas.Add(new Patch(Fill.Done, layer), new Frame(Stroke.Thin, layer));
            canvas.Say(layer.Right + 8, layer.Centre.Y, $"{coat + 1}", Anchor.Start);
        }

        canvas.Say(wood.X, area.Y - 16, inputs.Main, Anchor.Start, Lettering.Weight.Bold);
        canvas.Note("Coats from the wood up; films are drawn far thicker than they are.");
    }

    private static void Board(
        SketchInputs inputs,
        Canvas canvas,
        (string Usual, string Key) length,
        (string Usual, string Key) width,
        (string Usual, string Key) thickness,
        string words
    )
    {
        var (l, w) = (inputs.Length(length.Usual, length.Key), inputs.Length(width.Usual, width.Key));
        var t = inputs.Length(thickness.Usual, thickness.Key);
        var area = Canvas.Area;
        var (face, scale) = canvas.Fit(Inches(l), Inches(w), new Box(area.X + 46, area.Y, area.Width - 46, area.Height - 20));
        canvas.Face(face);
        var thick = Math.Clamp(Inches(t) * scale, 6, 36);
        var end = new Box(face.X - 14 - thick, face.Y, thick, face.Height);
        canvas.End(end);
        canvas.Across(face.X, face.Right, face.Bottom + Canvas.Away, face.Bottom, inputs.Shown(l));
        canvas.Up(face.Bottom, face.Y, end.X - Canvas.Away, end.X, inputs.Shown(w));
        canvas.Across(end.X, end.Right, face.Y - Canvas.Away, face.Y, inputs.Shown(t));
        if (words.Length == 0)
            return;
        canvas.Say(face.Right, face.Y - Canvas.Away - 2, words, Anchor.End, Lettering.Weight.Bold);
    }

    private static void SheetEdge(SketchInputs inputs, Canvas canvas, Length thick, string words)
    {
        var area = Canvas.Area;
        var box = new Box(area.X, area.Centre.Y - 18, area.Width, 36);
        canvas.Plain(box);
        for (var y = box.Y + (box.Height / 5); y < box.Bottom - 1; y += box.Height / 5)
            canvas.Line(Stroke.Thin, box.X, y, box.Right, y);
        canvas.Up(box.Bottom, box.Y, box.X - Canvas.Away, box.X, inputs.Shown(thick));
        canvas.Note($"The edge of a sheet sold as {Layouts.Figures.Short(words)}.");
    }

    private static string Times(SketchInputs inputs) =>
        inputs.Count(1, 100_000, "count") is var count and > 1 ? $"{count} alike: {inputs.Main}".TrimEnd(' ', ':') : inputs.Main;

    private static Box Middle(Box of, double wide, double high) =>
        new(of.Centre.X - (wide / 2), of.Centre.Y - (high / 2), wide, high);

    private static double Inches(Length length) => (double)length.ToInches();

    // 5/4 is read as a number of its own.
    private static double Number(string text) =>
        text.Split('/') is [var a, var b]
            ? Number(a) / Number(b)
            : double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<thick>[1-9]\d?(/[1-9])?)\s*[x×]\s*(?<width>[1-9]\d?)$")]
    private static partial Regex Nominal();
}
