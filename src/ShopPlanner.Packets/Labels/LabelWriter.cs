using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;
using ShopPlanner.Packets.Pdf;

namespace ShopPlanner.Packets.Labels;

/// <summary>Prints labels on sheets.</summary>
public static class LabelWriter
{
    private const double PointsPerTick = 72.0 / Length.TicksPerInch;

    /// <summary>Writes a PDF. The same labels give the same bytes.</summary>
    /// <param name="labels">In order; none give one empty sheet.</param>
    /// <param name="print">How.</param>
    /// <param name="title">The file's title.</param>
    /// <param name="date">The file's day.</param>
    /// <param name="stream">Receives the file; left open.</param>
    public static void Write(IReadOnlyList<Label> labels, LabelPrint print, string title, DateOnly date, Stream stream) =>
        PdfFile.Write(new(title, "Labels", date, print.Sheet.Key), Pages(labels, print), stream);

    /// <summary>The pages as drawings in points, before they become a file.</summary>
    public static ImmutableArray<Page> Pages(IReadOnlyList<Label> labels, LabelPrint print)
    {
        ArgumentNullException.ThrowIfNull(labels);
        ArgumentNullException.ThrowIfNull(print);
        var (width, height) = Paper.Of(print.Sheet.Paper);
        var skipped = print.First - 1;
        var sheets = Math.Max(1, (skipped + labels.Count + print.Sheet.Count - 1) / print.Sheet.Count);
        return
        [
            .. Enumerable
                .Range(0, sheets)
                .Select(sheet => new Page(width, height, [.. OnSheet(labels, print, sheet, skipped)], [])),
        ];
    }

    // A label is read as one.
    private static IEnumerable<PageGroup> OnSheet(IReadOnlyList<Label> labels, LabelPrint print, int sheet, int skipped)
    {
        for (var place = 0; place < print.Sheet.Count; place++)
        {
            var label = (sheet * print.Sheet.Count) + place - skipped;
            if (label < 0 || label >= labels.Count)
                continue;
            var box = Place(print, place);
            var face = LabelFace.Draw(labels[label], box);
            yield return new(PageRole.Text, [.. print.Sheet.IsPlain ? face.Prepend(new Frame(Stroke.Dimension, box)) : face]);
        }
    }

    /// <summary>Where a label of a sheet lies, in points.</summary>
    /// <param name="print">How it is printed.</param>
    /// <param name="place">Its number from 0, row by row.</param>
    internal static Box Place(LabelPrint print, int place)
    {
        var sheet = print.Sheet;
        var (column, row) = (place % sheet.Columns, place / sheet.Columns);
        return new(
            Points(sheet.Left + (sheet.Across * column) + print.Right),
            Points(sheet.Top + (sheet.Down * row) + print.Down),
            Points(sheet.Wide),
            Points(sheet.High)
        );
    }

    private static double Points(Length length) => length.Ticks * PointsPerTick;
}
