using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Planning;

/// <summary>A length of a board that pieces of full width can be cut from: the whole usable board, or what lies between bad
/// places.</summary>
/// <param name="Stock">The board.</param>
/// <param name="Start">Where it begins, in ticks from the end of the board as bought.</param>
/// <param name="Length">In ticks.</param>
/// <param name="Share">Its share of the board's weight, which comes to all of it over all lots.</param>
internal sealed record BoardLot(CutStock Stock, long Start, long Length, long Share)
{
    public bool Holds(long x) => x >= Start && x < Start + Length;
}

/// <summary>
/// The boards of a job as lots. A piece of full width lies in one lot whatever the width of a bad place, so boards with bad
/// places are planned exactly. Between two lots a whole kerf has to go on each side: a narrower bad place counts as two
/// kerfs wide, and the lots are then no longer exact.
/// </summary>
internal sealed class BoardLots
{
    // So many boards with several lots and a price are tried opened and left alone, each way.
    private const int MostDear = 3;

    private readonly Job job;
    private readonly long shortest;

    public BoardLots(Job job)
    {
        this.job = job;
        shortest = job.Parts.Min(part => part.Length.Ticks);
        All =
        [
            .. job
                .Stock.Where(stock => stock.Width == job.Material.Width)
                .SelectMany(stock => stock.BadPlaces.IsEmpty ? [Whole(stock)] : Clear(stock)),
        ];
        Dear =
        [
            .. All.GroupBy(lot => lot.Stock)
                .Where(board => board.Count() > 1 && job.Weight(board.Key) > 0)
                .Select(board => board.Key),
        ];
    }

    public ImmutableArray<BoardLot> All { get; }

    /// <summary>Boards that cost something and have several lots: whoever opens one lot has paid for all.</summary>
    public ImmutableArray<CutStock> Dear { get; }

    /// <summary>False where some wood that could be used is left out.</summary>
    public bool IsExact { get; private set; } = true;

    /// <summary>Every choice of dear boards to open; none where there are too many to try.</summary>
    public IEnumerable<ImmutableHashSet<CutStock>> Choices() =>
        Dear.IsEmpty || Dear.Length > MostDear
            ? []
            : Enumerable
                .Range(0, 1 << Dear.Length)
                .Select(mask => Dear.Where((_, i) => (mask >> i & 1) != 0).ToImmutableHashSet());

    private BoardLot Whole(CutStock stock) => new(stock, job.StartX(stock), job.UsableX(stock), job.Weight(stock));

    private IEnumerable<BoardLot> Clear(CutStock stock)
    {
        var lots = Lengths(stock);
        var (weight, count) = (job.Weight(stock), lots.Count);
        return lots.Select(
            (lot, i) => new BoardLot(stock, lot.From, lot.To - lot.From, (weight / count) + (i < weight % count ? 1 : 0))
        );
    }

    private List<(long From, long To)> Lengths(CutStock stock)
    {
        var lots = new List<(long From, long To)>();
        var (from, end) = (job.StartX(stock), job.StartX(stock) + job.UsableX(stock));
        foreach (var place in stock.BadPlaces.OrderBy(place => place.X))
        {
            var begin = place.X.Ticks < job.Kerf ? 0 : place.X.Ticks;
            var isBetween = Add(lots, from, Math.Min(begin, end));
            var beyond = Math.Max(
                place.EndX.Ticks,
                begin
                    + (
                        isBetween ? 2 * job.Kerf
                        : begin == 0 ? job.Kerf
                        : 0
                    )
            );
            IsExact &= beyond == place.EndX.Ticks || beyond >= end || !isBetween;
            from = Math.Max(from, beyond);
        }

        Add(lots, from, end);
        return lots;
    }

    // A length too short for every part would only be in the solver's way.
    private bool Add(List<(long From, long To)> lots, long from, long to)
    {
        if (to - from < shortest)
            return false;
        lots.Add((from, to));
        return true;
    }
}
