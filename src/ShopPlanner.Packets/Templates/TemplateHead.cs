using ShopPlanner.Core.Making.Templates;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Templates;

/// <summary>The words above a sheet of a template and below it: which part, where it is laid on, which sheet of how many, and the
/// ruler.</summary>
internal static class TemplateHead
{
    private const double Size = 8,
        Line = 10.5;
    private const int MostLines = 5;

    /// <summary>All of them.</summary>
    public static IEnumerable<Shape> Draw(PartTemplate template, string project, Tiling tiling, int column, int row)
    {
        var map = Map(tiling, column, row).ToList();
        var room = tiling.Width - (2 * Tiling.Margin) - MapWidth(tiling) - 10;
        var title = $"{MarkRange.Of([.. template.Uses.Select(one => one.Mark).Distinct()])}  {template.Part}: {template.Title}";
        yield return Caption(title, Tiling.Margin + 7, 13, Weight.Bold, room);
        var lines = TextFit.Wrap(TextFit.Clean(Text(template)), Weight.Regular, Size, room, MostLines);
        foreach (var (line, i) in lines.Select((line, i) => (line, i)))
            yield return Caption(line, Tiling.Margin + 21 + (i * Line), Size, Weight.Regular, room);
        foreach (var shape in map)
            yield return shape;
        foreach (var shape in Foot(project, tiling, column, row))
            yield return shape;
    }

    private static string Text(PartTemplate template) =>
        string.Join(
            " ",
            template
                .Uses.GroupBy(one => (one.Face, one.Turn, one.Along, one.Across))
                .Select(same =>
                    $"{MarkRange.All([.. same.Select(one => one.Mark)])}: {same.Key.Face}, {Words(same.Key.Turn)}; "
                    + $"{same.Key.Along}, {same.Key.Across}."
                )
                .Concat(template.Notes)
        );

    /// <summary>How a sheet lies, in words.</summary>
    private static string Words(SheetTurn turn) =>
        turn switch
        {
            SheetTurn.HalfTurn => "turned by half a turn",
            SheetTurn.OverSideways => "print side down, turned over left to right",
            SheetTurn.OverUpward => "print side down, turned over top to bottom",
            _ => "as printed",
        };

    private static IEnumerable<Shape> Foot(string project, Tiling tiling, int column, int row)
    {
        var y = tiling.Height - Tiling.Margin - 16;
        foreach (var shape in CheckRuler.Draw(Tiling.Margin + 4, y))
            yield return shape;
        var x = Tiling.Margin + 4 + 288 + 24;
        var room = tiling.Width - Tiling.Margin - x;
        var sheet = FormattableString.Invariant(
            $"Sheet {(row * tiling.Columns) + column + 1} of {tiling.Count}: row {row + 1}, column {column + 1}"
        );
        string[] lines = ["Print at 100%. Measure the ruler before you use it.", sheet, TextFit.Clean(project)];
        foreach (var (line, i) in lines.Select((line, i) => (line, i)))
        {
            var weight = i == 0 ? Weight.Bold : Weight.Regular;
            yield return new Caption(new(x, y - 11 + (i * 11)), TextFit.Shorten(line, weight, Size, room), Size, Weight: weight);
        }
    }

    private static double Cell(Tiling tiling) => Math.Min(12, Math.Min(150.0 / tiling.Columns, 50.0 / tiling.Rows));

    private static double MapWidth(Tiling tiling) => tiling.Count == 1 ? 0 : Cell(tiling) * tiling.Columns;

    // All sheets as they lie, this one filled.
    private static IEnumerable<Shape> Map(Tiling tiling, int column, int row)
    {
        if (tiling.Count == 1)
            yield break;
        var cell = Cell(tiling);
        var left = tiling.Width - Tiling.Margin - (cell * tiling.Columns);
        for (var y = 0; y < tiling.Rows; y++)
        for (var x = 0; x < tiling.Columns; x++)
        {
            var box = new Box(left + (x * cell), Tiling.Margin + (y * cell), cell, cell);
            if ((x, y) == (column, row))
                yield return new Patch(Fill.Kerf, box);
            yield return new Frame(Stroke.Thin, box);
        }
    }

    private static Caption Caption(string text, double y, double size, Weight weight, double room) =>
        new(new(Tiling.Margin, y), TextFit.Shorten(TextFit.Clean(text, weight), weight, size, room), size, Weight: weight);
}
