using System.Collections.Immutable;
using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Sequence;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// Boards cut to length: a kerf is added to every part and every stock, since n pieces in a row need Σa + (n−1)k ≤ S exactly when
/// Σ(a+k) ≤ S+k, and sizes are divided by the parts' common measure, stocks rounded down.
/// </summary>
internal static class BoardJob
{
    public static JobResult Solve(Job job, SearchControl control)
    {
        var stocks = job.Stock.Where(stock => stock.Width == job.Material.Width).ToImmutableArray();
        var scale = Scale.Of(job.Parts.Select(part => part.Length.Ticks + job.Kerf));
        var problem = new BoardProblem(
            [.. stocks.Select(stock => Model(job, stock, scale))],
            [.. job.Parts.Select(part => new BoardItem((part.Length.Ticks + job.Kerf) / scale, part.Quantity))])
        {
            Seed = [.. EarlierLayouts.For(job, control.Earlier).Select(kept => Seed(job, stocks, kept)).OfType<BoardPattern>()],
        };
        var solution = BoardSolver.Solve(problem, control);
        return new(
            [.. solution.Patterns.Select(pattern => new CutUpStock(stocks[pattern.Stock], pattern.Times, Lay(job, stocks[pattern.Stock], pattern)))],
            solution.Unmet, solution.Cost, solution.Bound, solution is { Complete: false, Proven: true });
    }

    private static BoardPattern? Seed(Job job, ImmutableArray<CutStock> stocks, KeptLayout kept)
    {
        var stock = stocks.IndexOf(job.Stock[kept.Stock]);
        return stock < 0 ? null : new(stock, kept.Times, [.. job.Parts.Select((_, i) => kept.Pieces.Count(piece => piece.Part == i))]);
    }

    private static BoardStock Model(Job job, CutStock stock, long scale)
    {
        long? keep = job.Keep.BoardLength is { } least ? Scale.Up(least.Ticks + job.Kerf, scale) : null;
        return new(Math.Max(1, (job.UsableX(stock) + job.Kerf) / scale), stock.Price.Count, stock.Quantity, stock.Offcut, keep);
    }

    // Longest first from the squared end: equal lengths lie together, so one stop setting serves them, and what is left is short.
    private static Slab Lay(Job job, CutStock stock, BoardPattern pattern)
    {
        var (start, width) = (job.StartX(stock), stock.Width.Ticks);
        var end = start + job.UsableX(stock);
        var x = start;
        var children = ImmutableArray.CreateBuilder<Slab>();
        foreach (var part in Pieces(job, pattern))
        {
            children.Add(Slab.Piece(part.Id, false, x, 0, part.Length.Ticks, width));
            x += part.Length.Ticks + job.Kerf;
        }

        if (x < end) children.Add(Slab.Remnant(x, 0, end - x, width));
        return new(start, 0, end - start, width, null, false, true, children.ToImmutable());
    }

    private static IEnumerable<CutPart> Pieces(Job job, BoardPattern pattern) =>
        job.Parts.SelectMany((part, i) => Enumerable.Repeat(part, pattern.Counts[i])).OrderByDescending(part => part.Length);
}
