using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Together;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>What the ids of a request stand for, as it was when the request was made.</summary>
/// <param name="Name">The plan's name: its projects' names.</param>
/// <param name="Stocks">By stock id.</param>
/// <param name="Parts">By part id.</param>
/// <param name="Rows">Ids of the rows of the parts lists, by part id.</param>
/// <param name="Pieces">Ids of pieces of the rack and the bin, by stock id.</param>
/// <param name="Seen">Days on which the prices were seen, by stock id.</param>
/// <param name="Materials">Names, by material id.</param>
/// <param name="Units">Units of the projects, by project id: changes are told in the project's own.</param>
internal sealed record PlanBasis(
    string Name,
    ImmutableSortedDictionary<string, PlanStockName> Stocks,
    ImmutableSortedDictionary<string, PlanPartName> Parts,
    ImmutableSortedDictionary<string, Guid> Rows,
    ImmutableSortedDictionary<string, Guid> Pieces,
    ImmutableSortedDictionary<string, DateOnly> Seen,
    ImmutableSortedDictionary<string, string> Materials,
    ImmutableSortedDictionary<Guid, LengthUnit> Units
)
{
    /// <summary>Where each stock comes from, by stock id. Worked out from the ids, and not stored.</summary>
    public IReadOnlyDictionary<string, StockOrigin> StockOrigins { get; } =
        Stocks.Keys.ToDictionary(id => id, id => StockOrigin.Of(id, Pieces), StringComparer.Ordinal);

    /// <summary>Where each part comes from, by part id. Worked out from the ids, and not stored.</summary>
    public IReadOnlyDictionary<string, PartOrigin> PartOrigins { get; } =
        Rows.ToDictionary(pair => pair.Key, pair => PartOrigin.Of(pair.Key, pair.Value), StringComparer.Ordinal);

    /// <summary>Pieces that were cut before and left out, by part id.</summary>
    public ImmutableSortedDictionary<string, int> CutBefore { get; init; } = ImmutableSortedDictionary<string, int>.Empty;
}

/// <summary>A request with its names.</summary>
/// <param name="Order">What was asked for.</param>
/// <param name="Request">What is to be planned.</param>
/// <param name="Basis">The names.</param>
/// <param name="LeftOut">Rows that cannot be planned yet.</param>
internal sealed record PlanDraft(PlanOrder Order, CutRequest Request, PlanBasis Basis, ImmutableArray<Fault> LeftOut)
{
    /// <summary>Pieces of the rows wanted that are cut already.</summary>
    public int CutAlready { get; init; }

    /// <summary>Rows wanted of which every piece is cut already: the request has none of them. Not stored with the
    /// documents.</summary>
    public ImmutableArray<HeldRow> CutWhole { get; init; } = [];

    /// <summary>Parts that are wanted only if they come free; they are not in the request. Not stored with the
    /// documents.</summary>
    public ImmutableArray<SparePart> Spares { get; init; } = [];

    /// <summary>What trips to the stores cost, as far as they sell something of the request. Not stored with the
    /// documents.</summary>
    public ImmutableArray<StoreTrip> Trips { get; init; } = [];

    /// <summary>Which time each project is built, by its id. Not stored with the documents.</summary>
    public IReadOnlyDictionary<Guid, int> Builds { get; init; } = ImmutableDictionary<Guid, int>.Empty;

    /// <summary>Whether a part is wanted only if it comes free.</summary>
    /// <param name="part">Its id.</param>
    public bool IsSpare(string part) => Basis.Rows.TryGetValue(part, out var row) && Order.Spares.ContainsKey(row);

    /// <summary>Pieces of the rack and the bin that a plan cuts.</summary>
    public IEnumerable<(CutStock Stock, Guid PieceId)> PiecesOf(CutPlan plan)
    {
        var used = plan.Layouts.Select(layout => layout.Stock).ToHashSet();
        return Request
            .Stock.Where(stock => used.Contains(stock.Id) && Basis.Pieces.ContainsKey(stock.Id))
            .Select(stock => (stock, Basis.Pieces[stock.Id]));
    }
}
