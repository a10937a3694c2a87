using System.Collections.Immutable;
using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// Boards cut to length: a kerf is added to every part and every stock, since n pieces in a row need Σa + (n−1)k ≤ S exactly when
/// Σ(a+k) ≤ S+k, and sizes are divided by the parts' common measure, stocks rounded down. Parts of one length are one item, so
/// that thousands of parts under names of their own weigh no more than their lengths.
/// </summary>
internal sealed class BoardJob
{
    private readonly Job job;
    private readonly ImmutableArray<CutStock> stocks;
    private readonly long scale;
    private readonly BoardHandOut parts;

    private BoardJob(Job job)
    {
        this.job = job;
        stocks = [.. job.Stock.Where(stock => stock.Width == job.Material.Width)];
        scale = Scale.Of(job.Parts.Select(part => part.Length.Ticks + job.Kerf));
        parts = new(job.Parts);
    }

    /// <summary>The best answer found.</summary>
    /// <param name="job">Boards that are not ripped.</param>
    /// <param name="control">When to stop and whom to tell.</param>
    /// <param name="start">Layouts to begin with; they need not fit the job.</param>
    public static JobResult Solve(Job job, SearchControl control, ImmutableArray<KeptLayout> start) =>
        new BoardJob(job).Solve(control, start);

    private JobResult Solve(SearchControl control, ImmutableArray<KeptLayout> start)
    {
        var problem = new BoardProblem(
            [.. stocks.Select(new BoardMeasure(job, scale).Of)],
            [.. parts.Sizes.Select(size => new BoardItem((size.Length.Ticks + job.Kerf) / scale, size.Pieces))]
        )
        {
            Seed = [.. Seeds(start)],
        };
        var solution = BoardSolver.Solve(problem, control);
        ImmutableArray<CutUpStock> cut = [.. solution.Patterns.SelectMany(Lay)];
        return new(cut, parts.Rest(), solution.Cost, solution.Bound, solution is { Complete: false, Proven: true });
    }

    // Layouts that differ in the names of their parts only are one pattern.
    private IEnumerable<BoardPattern> Seeds(ImmutableArray<KeptLayout> start)
    {
        var index = job.Stock.Select(stocks.IndexOf).ToArray();
        return start
            .Where(kept => index[kept.Stock] >= 0)
            .GroupBy(kept => (kept.Stock, string.Join(' ', parts.Sorted(kept.Pieces.Select(piece => piece.Part)))))
            .Select(alike => new BoardPattern(
                index[alike.Key.Stock],
                alike.Sum(kept => kept.Times),
                parts.Counts(alike.First().Pieces.Select(piece => piece.Part))
            ));
    }

    private IEnumerable<CutUpStock> Lay(BoardPattern pattern)
    {
        var stock = stocks[pattern.Stock];
        return parts.Take(pattern).Select(taken => new CutUpStock(stock, taken.Times, Lay(stock, taken.Parts)));
    }

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
}
