using System.Collections.Immutable;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Planning;

/// <summary>Lays rows of pieces on boards; the rows of one board with bad places, which lie between them, become one
/// layout.</summary>
/// <param name="job">Boards that are not ripped.</param>
internal sealed class BoardWriter(Job job)
{
    private readonly List<CutUpStock> sound = [];
    private readonly Dictionary<CutStock, List<LayoutNode>> bad = [];

    public void Add(BoardLot lot, int times, IReadOnlyList<int> row)
    {
        if (lot.Stock.BadPlaces.IsEmpty)
            sound.Add(new(lot.Stock, times, Lay(lot.Stock, row)));
        else if (bad.TryGetValue(lot.Stock, out var before))
            before.AddRange(Items(lot, row));
        else
            bad.Add(lot.Stock, [.. Items(lot, row)]);
    }

    public ImmutableArray<CutUpStock> Write() =>
        [.. sound, .. bad.Select(board => new CutUpStock(board.Key, 1, Around(board.Key, board.Value)))];

    // From the squared end; what is left is at the other.
    private LayoutNode Lay(CutStock stock, IEnumerable<int> row)
    {
        var (start, width) = (job.StartX(stock), stock.Width.Ticks);
        var end = start + job.UsableX(stock);
        var x = start;
        var children = ImmutableArray.CreateBuilder<LayoutNode>();
        foreach (var part in row)
        {
            var length = job.Parts[part].Length.Ticks;
            children.Add(LayoutNode.Piece(part, false, x, 0, length, width));
            x += length + job.Kerf;
        }

        if (x < end)
            children.Add(LayoutNode.Remnant(x, 0, end - x, width));
        return new(start, 0, end - start, width, null, false, true, children.ToImmutable());
    }

    // From the beginning of the lot, every side with a kerf.
    private IEnumerable<LayoutNode> Items(BoardLot lot, IEnumerable<int> row)
    {
        var x = lot.Start - job.StartX(lot.Stock);
        foreach (var part in row)
        {
            var dx = job.Parts[part].Length.Ticks + job.Kerf;
            yield return LayoutNode.Piece(part, false, x, 0, dx, lot.Stock.Width.Ticks + job.Kerf);
            x += dx;
        }
    }

    private LayoutNode Around(CutStock stock, List<LayoutNode> items)
    {
        var writer = ClearWood.Writer(job, stock, new SheetMeasure(job, 1, 1).Of(stock), long.MaxValue);
        return new WoodWriter(job, 1, 1).Write(writer.WriteRow(items.OrderBy(item => item.X)), stock);
    }
}
