using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>Below the drawing: what the pieces measure that show only their mark.</summary>
internal sealed class LayoutKey
{
    private const double Gutter = 12;

    private readonly List<string> entries;
    private readonly double size;
    private readonly double width;
    private readonly int columns;

    /// <summary>Collects the entries, pieces of one name and size together.</summary>
    public LayoutKey(LayoutPicture picture, IEnumerable<PiecePicture> pieces, double size, double width)
    {
        this.size = size;
        this.width = width;
        entries =
        [
            .. pieces
                .GroupBy(p => (p.Name, Size: Figures.Of(p.Area, p.Turned, picture.Unit), p.Turned))
                .Select(g =>
                    $"{MarkRange.Of([.. g.Select(p => p.Mark)])}  {g.Key.Size}  "
                    + TurnedWords.After(Figures.Short(g.Key.Name), g.Key.Turned)
                ),
        ];
        var longest = entries.Count == 0 ? 0 : entries.Max(e => Typeface.Width(e, Weight.Regular, size));
        columns = Math.Max(1, (int)((width + Gutter) / (longest + Gutter)));
    }

    private double RowHeight => size * 1.35;

    /// <summary>Height that it needs.</summary>
    public double Height => entries.Count == 0 ? 0 : (((entries.Count + columns - 1) / columns) * RowHeight) + 4;

    /// <summary>The entries, row by row.</summary>
    public IEnumerable<Shape> Draw(double left, double top)
    {
        var pitch = (width + Gutter) / columns;
        return entries.Select(
            (entry, i) =>
                new Caption(
                    new(left + (i % columns * pitch), top + 4 + ((i / columns + 0.5) * RowHeight)),
                    TextFit.Shorten(entry, Weight.Regular, size, pitch - Gutter),
                    size
                )
        );
    }
}
