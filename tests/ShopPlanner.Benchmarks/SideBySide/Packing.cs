using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Benchmarks;

/// <summary>A piece on a sheet.</summary>
/// <param name="Item">Index of the item.</param>
public readonly record struct Placed(int Item, long X, long Y, long Dx, long Dy);

/// <summary>Pieces on equal sheets, however they came there.</summary>
/// <param name="Sheets">The pieces of each sheet used.</param>
public sealed record Packing(IReadOnlyList<IReadOnlyList<Placed>> Sheets)
{
    /// <summary>The pieces of a solution, each layout once.</summary>
    public static Packing Of(SheetSolution solution) => new([.. solution.Layouts.Select(layout => Below(layout.Root).ToList())]);

    /// <summary>The rules that every packing of the problem's one stock obeys, edge-to-edge cuts aside.</summary>
    public IEnumerable<string> Faults(SheetProblem problem) =>
        [.. Sheets.SelectMany(sheet => SheetFaults(problem, sheet)), .. CountFaults(problem)];

    /// <summary>True when edge-to-edge cuts can free every piece of every sheet.</summary>
    public bool Cuttable => Sheets.All(sheet => IsCuttable([.. sheet]));

    private static IEnumerable<Placed> Below(LayoutNode node) =>
        node.Item is { } item ? [new(item, node.X, node.Y, node.Dx, node.Dy)] : node.Children.SelectMany(Below);

    private static IEnumerable<string> SheetFaults(SheetProblem problem, IReadOnlyList<Placed> sheet)
    {
        var stock = problem.Stocks[0];
        foreach (var piece in sheet)
        {
            if (piece.X < 0 || piece.Y < 0 || piece.X + piece.Dx > stock.Dx || piece.Y + piece.Dy > stock.Dy)
                yield return $"{piece} sticks out of {stock.Dx} x {stock.Dy}";
            if (!IsItem(problem.Items[piece.Item], piece))
                yield return $"{piece} is not {problem.Items[piece.Item]}";
        }

        for (var i = 0; i < sheet.Count; i++)
        {
            for (var j = 0; j < i; j++)
                if (Overlap(sheet[i], sheet[j]))
                    yield return $"{sheet[i]} overlaps {sheet[j]}";
        }
    }

    private IEnumerable<string> CountFaults(SheetProblem problem)
    {
        var counts = Sheets.SelectMany(sheet => sheet).CountBy(piece => piece.Item).ToDictionary();
        return from item in Enumerable.Range(0, problem.Items.Length)
            let placed = counts.GetValueOrDefault(item)
            where placed != problem.Items[item].Demand
            select $"item {item}: {placed} placed of {problem.Items[item].Demand}";
    }

    private static bool IsItem(SheetItem item, Placed piece) =>
        (piece.Dx, piece.Dy) == (item.Dx, item.Dy) || (item.CanTurn && (piece.Dy, piece.Dx) == (item.Dx, item.Dy));

    private static bool Overlap(Placed a, Placed b) =>
        a.X < b.X + b.Dx && b.X < a.X + a.Dx && a.Y < b.Y + b.Dy && b.Y < a.Y + a.Dy;

    // A cut that is possible never spoils another, so any cut found may be made first.
    private static bool IsCuttable(List<Placed> pieces)
    {
        if (pieces.Count < 2)
            return true;
        var (first, second) = Parted(pieces, piece => (piece.X, piece.Dx));
        if (second.Count == 0)
            (first, second) = Parted(pieces, piece => (piece.Y, piece.Dy));
        return second.Count > 0 && IsCuttable(first) && IsCuttable(second);
    }

    // The pieces before the first straight gap that runs through, and those behind it; none behind where there is no gap.
    private static (List<Placed> First, List<Placed> Second) Parted(
        List<Placed> pieces,
        Func<Placed, (long At, long Size)> extent
    )
    {
        var ordered = pieces.OrderBy(piece => extent(piece).At).ToList();
        var end = 0L;
        for (var i = 0; i < ordered.Count; i++)
        {
            var (at, size) = extent(ordered[i]);
            if (i > 0 && at >= end)
                return (ordered[..i], ordered[i..]);
            end = Math.Max(end, at + size);
        }

        return (ordered, []);
    }
}
