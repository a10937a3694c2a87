using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Planning;

/// <summary>One material of a request: the stock that can be cut and the parts that fit some of it.</summary>
/// <param name="Material">The material.</param>
/// <param name="Saw">What the saw takes away.</param>
/// <param name="Keep">The least leftover worth keeping.</param>
/// <param name="Stock">With at least one piece there.</param>
/// <param name="Parts">Each fits some stock.</param>
internal sealed record Job(
    CutMaterial Material,
    SawSettings Saw,
    KeepRule Keep,
    ImmutableArray<CutStock> Stock,
    ImmutableArray<CutPart> Parts
)
{
    /// <summary>What the store cuts; null for nothing.</summary>
    public StoreCuts? Store { get; init; }

    /// <summary>What can be carried home; null for anything.</summary>
    public CarryLimit? Carry { get; init; }

    /// <summary>What the search counts instead of prices, by stock id, where nothing that could be bought has a price: the wood.
    /// Null where prices count.</summary>
    public ImmutableDictionary<string, long>? Wood { get; init; }

    /// <summary>True when nothing that could be bought has a price.</summary>
    public bool IsUnpriced => Wood is not null;

    public bool IsBoard => Material.Form == StockForm.Board;

    /// <summary>True when saw or car are too small for every cut of some stock.</summary>
    public bool IsLimited => Stock.Any(Binds);

    /// <summary>True when some stock has bad places.</summary>
    public bool HasBadPlaces => Stock.Any(stock => !stock.BadPlaces.IsEmpty);

    /// <summary>Boards cut to length only, by a saw and for a car that set them no limits.</summary>
    public bool IsCrosscutOnly =>
        IsBoard
        && !IsLimited
        && Parts.All(part => part.Width == Material.Width)
        && Stock.All(stock => stock.Width <= Material.Width);

    /// <summary>What the search counts for one piece of a stock: its price, or its wood.</summary>
    public long Weight(CutStock stock) => Wood is null ? stock.Price.Count : Wood[stock.Id];

    /// <summary>What the stock cut for an answer costs in money.</summary>
    public long Paid(JobResult result)
    {
        if (!IsUnpriced)
            return result.Cost;
        if (result.Kept is not { } kept)
            return result.Stocks.Sum(cut => cut.Stock.Price.Count * cut.Times);
        var prices = Stock.ToDictionary(stock => stock.Id, stock => stock.Price.Count);
        return kept.Sum(layout => prices[layout.Stock] * layout.Copies);
    }

    /// <summary>Money that no answer goes below. Wood says nothing of it.</summary>
    public long PaidAtLeast(JobResult result) => IsUnpriced ? 0 : Math.Min(result.Bound, result.Cost);

    public long Kerf => Saw.Kerf.Ticks;

    public int Pieces => Parts.Sum(part => part.Quantity);

    /// <summary>Where the usable wood of a stock begins, along its length.</summary>
    public long StartX(CutStock stock) => Begin(Trim(stock, StockEdges.Near), stock.BadPlaces.Any(place => place.X.Ticks < Kerf));

    /// <summary>Where the usable wood of a stock begins, across.</summary>
    public long StartY(CutStock stock) =>
        Begin(Trim(stock, StockEdges.Front), stock.BadPlaces.Any(place => place.Y.Ticks < Kerf));

    /// <summary>Usable length of a stock, in ticks; may be less than zero.</summary>
    public long UsableX(CutStock stock) => stock.Length.Ticks - StartX(stock) - Trim(stock, StockEdges.Far);

    /// <summary>Usable width of a stock, in ticks; may be less than zero.</summary>
    public long UsableY(CutStock stock) => stock.Width.Ticks - StartY(stock) - Trim(stock, StockEdges.Back);

    // A cut that takes less than a kerf off a raw edge is known by the trim alone; beside a bad place it takes a whole kerf.
    private long Begin(long trim, bool isBad) => trim > 0 && isBad ? Math.Max(trim, Kerf) : trim;

    private long Trim(CutStock stock, StockEdges edge) =>
        !stock.EdgesToTrim(Material.Form).HasFlag(edge) ? 0
        : IsBoard ? Saw.BoardEndTrim.Ticks
        : Saw.SheetEdgeTrim.Ticks;

    /// <summary>True when some layouts of a stock cannot be cut, or what they leave cannot be carried home.</summary>
    public bool Binds(CutStock stock) => !GoesHome(stock) || stock.Width > Saw.LongestCrosscut || stock.Width > Saw.WidestRip * 2;

    /// <summary>True when the car takes the stock as bought; what is in the rack or the bin is at home already.</summary>
    public bool GoesHome(CutStock stock) => stock.Offcut || Carries(stock.Length.Ticks, stock.Width.Ticks);

    /// <summary>The most that a panel may measure one way when it measures so much the other way, to go into the car; zero for
    /// nothing. Of a board only the length counts.</summary>
    public long MostCarried(long across, bool alongX)
    {
        if (Carry is not { } car)
            return long.MaxValue;
        var (longest, widest) = (Math.Max(car.Longest.Ticks, car.Widest.Ticks), Math.Min(car.Longest.Ticks, car.Widest.Ticks));
        if (IsBoard)
            return alongX ? car.Longest.Ticks
                : across <= car.Longest.Ticks ? long.MaxValue
                : 0;
        return across <= widest ? longest
            : across <= longest ? widest
            : 0;
    }

    private bool Carries(long dx, long dy) => dx <= MostCarried(dy, true);

    public bool CanTurn(CutPart part) => !IsBoard && part.Grain == Grain.Any;

    /// <summary>True when one piece of the part can be cut from the stock.</summary>
    public bool Fits(CutPart part, CutStock stock) =>
        Fits(part.Length, part.Width, stock) || (CanTurn(part) && Fits(part.Width, part.Length, stock));

    private bool Fits(Length along, Length across, CutStock stock) =>
        along.Ticks <= UsableX(stock) && across.Ticks <= UsableY(stock);
}
