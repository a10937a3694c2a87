using System.Collections.Immutable;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// First-fit decreasing height, as done by hand: pieces from highest to lowest, each onto the first shelf that has room for it,
/// else onto a new shelf of its height on the first sheet that has room for that. Shelves run along the sheet or across it, and
/// pieces that may be turned lie on their long side or stand on their short one: of these four the fewest sheets stand.
/// </summary>
public static class Shelves
{
    /// <summary>Sizes hold the kerf already, so rows of pieces are cut as they lie.</summary>
    public static Packing Pack(SheetProblem problem) =>
        new[] { (false, false), (false, true), (true, false), (true, true) }
            .Select(how => Pack(problem, across: how.Item1, standing: how.Item2))
            .MinBy(packing => packing.Sheets.Count)!;

    private static Packing Pack(SheetProblem problem, bool across, bool standing)
    {
        var sheet = across ? (problem.Stocks[0].Dy, problem.Stocks[0].Dx) : (problem.Stocks[0].Dx, problem.Stocks[0].Dy);
        var rows = new Rows(sheet.Item1, sheet.Item2);
        var pieces = problem.Items.Select((item, i) => Lay(item, i, sheet, across, standing));
        foreach (var piece in pieces.OrderByDescending(piece => piece.Dy).ThenByDescending(piece => piece.Dx))
        {
            for (var n = 0; n < problem.Items[piece.Item].Demand; n++)
                rows.Add(piece);
        }

        return new([.. rows.Sheets.Select(on => across ? on.Select(Mirror).ToImmutableArray() : [.. on])]);
    }

    private static Placed Lay(SheetItem item, int index, (long Dx, long Dy) sheet, bool across, bool standing)
    {
        var asWritten = across ? new Placed(index, 0, 0, item.Dy, item.Dx) : new(index, 0, 0, item.Dx, item.Dy);
        var turned = asWritten with { Dx = asWritten.Dy, Dy = asWritten.Dx };
        if (!item.CanTurn || !Fits(turned, sheet))
            return asWritten;
        return !Fits(asWritten, sheet) || standing != asWritten.Dy > asWritten.Dx ? turned : asWritten;
    }

    private static bool Fits(Placed piece, (long Dx, long Dy) sheet) => piece.Dx <= sheet.Dx && piece.Dy <= sheet.Dy;

    private static Placed Mirror(Placed piece) => new(piece.Item, piece.Y, piece.X, piece.Dy, piece.Dx);

    /// <summary>Sheets with their shelves, filled piece by piece.</summary>
    private sealed class Rows(long width, long height)
    {
        private readonly List<(int Sheet, long Y, long Height, long Used)> shelves = [];
        private readonly List<long> used = [];

        public List<List<Placed>> Sheets { get; } = [];

        public void Add(Placed piece)
        {
            var at = shelves.FindIndex(shelf => piece.Dy <= shelf.Height && shelf.Used + piece.Dx <= width);
            if (at < 0)
                at = NewShelf(piece.Dy);
            var shelf = shelves[at];
            Sheets[shelf.Sheet].Add(piece with { X = shelf.Used, Y = shelf.Y });
            shelves[at] = shelf with { Used = shelf.Used + piece.Dx };
        }

        private int NewShelf(long tall)
        {
            var sheet = this.used.FindIndex(used => used + tall <= height);
            if (sheet < 0)
            {
                sheet = this.used.Count;
                this.used.Add(0);
                Sheets.Add([]);
            }

            shelves.Add((sheet, this.used[sheet], tall, 0));
            this.used[sheet] += tall;
            return shelves.Count - 1;
        }
    }
}
