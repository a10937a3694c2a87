using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Flow;

/// <summary>A column.</summary>
/// <param name="Title">In the table's head.</param>
/// <param name="Share">Of the width that the columns share.</param>
/// <param name="Anchor">To which side its cells lean: figures to the end.</param>
internal sealed record Column(string Title, double Share, Anchor Anchor = Anchor.Start)
{
    /// <summary>True for a gap: what stands on one side of it does not belong to what stands level on the other.</summary>
    public bool Parts { get; init; }
}

/// <summary>A table: its head is repeated on every page, its rows are never split.</summary>
/// <param name="Columns">From left to right.</param>
/// <param name="Rows">Each with a cell for every column.</param>
internal sealed record Table(ImmutableArray<Column> Columns, ImmutableArray<ImmutableArray<Cell>> Rows)
{
    private const double Gutter = 6,
        Above = 1.2,
        Below = 1.4,
        HeadSize = 8;

    private static readonly double HeadHeight = (HeadSize * 1.25) + 4;

    /// <summary>Whether the columns' titles stand above them.</summary>
    public bool HasHead { get; init; } = true;

    /// <summary>The table as blocks of a column: its head is kept with the first two rows and stands above them again where they
    /// go over to the next column.</summary>
    /// <param name="width">Of the column.</param>
    public IReadOnlyList<Block> Blocks(double width)
    {
        if (Rows.IsEmpty)
            return [];
        var head = HasHead ? new Block(HeadHeight, at => Head(new(at.X, at.Y, width, HeadHeight))) { Keep = true } : null;
        return
        [
            .. head is null ? Array.Empty<Block>() : [head],
            .. Rows.Select(
                (row, i) =>
                    new Block(HeightOf(row, width), at => Draw(row, new(at.X, at.Y, width, HeightOf(row, width))))
                    {
                        Head = head,
                        Keep = i == 0 && HasHead || (Rows.Length > 3 && i == Rows.Length - 2),
                    }
            ),
        ];
    }

    private IEnumerable<Shape> Head(Box box) =>
        [
            .. Places(box)
                .SelectMany(
                    (place, i) =>
                        new TextCell(Columns[i].Title, HeadSize, Weight.Medium, Tone.Faded).Draw(place, Columns[i].Anchor)
                ),
            .. Rule(Stroke.Thin, box with { Height = HeadHeight - 2 }, Enumerable.Repeat(true, Columns.Length)),
        ];

    private IEnumerable<Shape> Draw(ImmutableArray<Cell> row, Box box) =>
        [
            .. Places(box)
                .SelectMany(
                    (place, i) => row[i].Draw(place with { Y = place.Y + Above + Lowered(row, i, box.Width) }, Columns[i].Anchor)
                ),
            .. Rule(Stroke.Grain, box, row.Select(cell => !cell.IsEmpty)),
        ];

    // Below the cells, broken at gaps; none below a side that has come to its end.
    private IEnumerable<Line> Rule(Stroke stroke, Box box, IEnumerable<bool> filled)
    {
        var places = Places(box);
        var sides = places.Zip(filled, Columns).Select((one, i) => (one.First, one.Second, one.Third, Side: SideOf(i)));
        foreach (var side in sides.Where(one => !one.Third.Parts).GroupBy(one => one.Side).Where(one => one.Any(c => c.Second)))
            yield return new(stroke, new(side.First().First.X, box.Bottom), new(side.Last().First.Right, box.Bottom));
    }

    private int SideOf(int column) => Columns.Take(column).Count(one => one.Parts);

    private double HeightOf(ImmutableArray<Cell> row, double width) =>
        Places(new(0, 0, width, 0)).Select((box, i) => row[i].Height(box.Width) + Lowered(row, i, width)).Max() + Above + Below;

    // How far a cell is lowered so that its first line stands level with the row's tallest.
    private double Lowered(ImmutableArray<Cell> row, int cell, double width)
    {
        var places = Places(new(0, 0, width, 0));
        return (places.Select((box, i) => row[i].FirstLine(box.Width)).Max() - row[cell].FirstLine(places[cell].Width)) / 2;
    }

    private List<Box> Places(Box row)
    {
        var perShare = (row.Width - (Gutter * (Columns.Length - 1))) / Columns.Sum(c => c.Share);
        var places = new List<Box>();
        var x = row.X;
        foreach (var column in Columns)
        {
            places.Add(row with { X = x, Width = column.Share * perShare });
            x += (column.Share * perShare) + Gutter;
        }

        return places;
    }
}
