using System.Collections.Immutable;
using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// Boards cut to length: a kerf is added to every part and every stock, since n pieces in a row need Σa + (n−1)k ≤ S exactly when
/// Σ(a+k) ≤ S+k, and sizes are divided by the parts' common measure, stocks rounded down. Parts of one length are one item, so
/// that thousands of parts under names of their own weigh no more than their lengths. A board with bad places is several stocks,
/// one for each clear length; they share its price, and where that does not settle what is cheapest, each choice of such boards
/// is planned by itself.
/// </summary>
internal sealed class BoardJob
{
    private readonly Job job;
    private readonly BoardLots lots;
    private readonly BoardMeasure measure;
    private readonly BoardHandOut parts;

    private BoardJob(Job job)
    {
        this.job = job;
        lots = new(job);
        measure = new(job, Scale.Of(job.Parts.Select(part => part.Length.Ticks + job.Kerf)));
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
        ImmutableHashSet<CutStock>[] choices = control.Time <= TimeSpan.Zero ? [] : [.. lots.Choices()];
        var each = control with { Time = control.Time / (choices.Length + 1) };
        var shared = Shared(each, start);
        if (choices.Length == 0 || shared.Proven || !shared.Complete)
            return shared;
        var (best, bound) = (shared, long.MaxValue);
        foreach (var choice in choices)
        {
            var (found, atLeast) = Opened(choice, each, start);
            bound = Math.Min(bound, atLeast);
            best = found is { Complete: true } && found.Cost < best.Cost ? found : best;
        }

        return best with
        {
            Bound = lots.IsExact ? Math.Max(shared.Bound, Math.Min(bound, best.Cost)) : 0,
        };
    }

    // Shares of a price that is paid once come to no more than the price: what they come to at least, the boards do too.
    private JobResult Shared(SearchControl control, ImmutableArray<KeptLayout> start) =>
        Result(lots.All, BoardSolver.Solve(Problem(lots.All, lot => lot.Share, start), control));

    // The lots of the boards chosen are free, since their price is paid; those of the others are not there.
    private (JobResult? Found, long Bound) Opened(
        ImmutableHashSet<CutStock> chosen,
        SearchControl control,
        ImmutableArray<KeptLayout> start
    )
    {
        ImmutableArray<BoardLot> offered =
        [
            .. lots.All.Where(lot => chosen.Contains(lot.Stock) || !lots.Dear.Contains(lot.Stock)),
        ];
        if (offered.IsEmpty || parts.Sizes.Max(size => size.Length.Ticks) > offered.Max(lot => lot.Length))
            return (null, long.MaxValue);
        var solution = BoardSolver.Solve(Problem(offered, lot => chosen.Contains(lot.Stock) ? 0 : lot.Share, start), control);
        var paid = chosen.Sum(job.Weight);
        if (!solution.Complete)
            return (null, solution.Proven ? long.MaxValue : paid);
        return (Result(offered, solution), paid + solution.Bound);
    }

    private BoardProblem Problem(
        ImmutableArray<BoardLot> offered,
        Func<BoardLot, long> weight,
        ImmutableArray<KeptLayout> start
    ) =>
        new([.. offered.Select(lot => measure.Of(lot, weight(lot)))], [.. parts.Sizes.Select(measure.Of)])
        {
            Seed = [.. start.SelectMany(kept => Lots(kept, offered)).GroupBy(Like).Select(Seed)],
        };

    // Where each piece of an earlier layout lay: by board, or by the length of it between bad places.
    private IEnumerable<(int Lot, int Times, IEnumerable<int> Pieces)> Lots(KeptLayout kept, ImmutableArray<BoardLot> offered)
    {
        if (kept.Stock < 0)
            return [];
        var stock = job.Stock[kept.Stock];
        return kept
            .Pieces.GroupBy(piece =>
                Enumerable
                    .Range(0, offered.Length)
                    .Where(i => offered[i].Stock == stock && (stock.BadPlaces.IsEmpty || offered[i].Holds(piece.X)))
                    .Append(-1)
                    .First()
            )
            .Where(lot => lot.Key >= 0)
            .Select(lot => (lot.Key, kept.Times, lot.Select(piece => piece.Part)));
    }

    // Layouts that differ in the names of their parts only are one pattern.
    private (int, string) Like((int Lot, int Times, IEnumerable<int> Pieces) row) =>
        (row.Lot, string.Join(' ', parts.Sorted(row.Pieces)));

    private BoardPattern Seed(IEnumerable<(int Lot, int Times, IEnumerable<int> Pieces)> alike) =>
        new(alike.First().Lot, alike.Sum(row => row.Times), parts.Counts(alike.First().Pieces));

    private JobResult Result(ImmutableArray<BoardLot> offered, BoardSolution solution)
    {
        var handOut = new BoardHandOut(job.Parts);
        var writer = new BoardWriter(job);
        foreach (var pattern in solution.Patterns)
        foreach (var (times, row) in handOut.Take(pattern))
            writer.Add(offered[pattern.Stock], times, row);
        var cut = writer.Write();
        return new(
            cut,
            handOut.Rest(),
            cut.Sum(one => job.Weight(one.Stock) * one.Times),
            lots.IsExact ? solution.Bound : 0,
            lots.IsExact && solution is { Complete: false, Proven: true }
        );
    }
}
