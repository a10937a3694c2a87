using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Stock;

/// <summary>One board, sheet or offcut on hand: the sum of its ledger entries.</summary>
/// <param name="Id">Never changes.</param>
/// <param name="Tag">Written on the wood: <c>B7</c> in the bin, <c>R3</c> in the rack; never given twice.</param>
/// <param name="Place">Rack or bin.</param>
/// <param name="MaterialId">The material.</param>
/// <param name="MaterialName">What people call it.</param>
/// <param name="Form">Board or sheet.</param>
/// <param name="Length">Along the grain.</param>
/// <param name="Width">Across the grain.</param>
/// <param name="Note">Free text, e.g. <c>knot near one end</c>.</param>
/// <param name="PromisedPlanId">The plan it is promised to; null when free.</param>
/// <param name="PromisedTo">That plan's name.</param>
/// <param name="Version">Rises by one with every entry.</param>
public sealed record StockPiece(
    Guid Id,
    string Tag,
    StockPlace Place,
    string MaterialId,
    string MaterialName,
    StockForm Form,
    Length Length,
    Length Width,
    string Note,
    Guid? PromisedPlanId,
    string? PromisedTo,
    int Version
)
{
    /// <summary>Its bad places, and the edges that are still as bought.</summary>
    public required StockCondition Condition { get; init; }
}

/// <summary>One line of the ledger; lines are only ever added.</summary>
/// <param name="Id">Never changes.</param>
/// <param name="PieceId">The piece.</param>
/// <param name="Tag">The piece's tag.</param>
/// <param name="WhenUtc">When it was written.</param>
/// <param name="Kind">What happened.</param>
/// <param name="Length">Of the piece after it.</param>
/// <param name="Width">Of the piece after it.</param>
/// <param name="Reason">Why, in the user's or the planner's words.</param>
/// <param name="Device">The device that wrote it.</param>
public sealed record StockEntry(
    Guid Id,
    Guid PieceId,
    string Tag,
    DateTime WhenUtc,
    StockEntryKind Kind,
    Length Length,
    Length Width,
    string Reason,
    string Device
);

/// <summary>A piece to add, as typed.</summary>
/// <param name="Place">Rack (bought) or bin (logged).</param>
/// <param name="Material">Id or name.</param>
/// <param name="Length">As typed.</param>
/// <param name="Width">As typed; empty for a board of full width.</param>
/// <param name="Quantity">How many alike, as typed; each gets its own tag.</param>
/// <param name="Note">Free text.</param>
public sealed record StockAddition(StockPlace Place, string Material, string Length, string Width, string Quantity, string Note);

/// <summary>Keeps the rack and the bin as a ledger.</summary>
public interface IStockService
{
    /// <summary>Returns everything on hand, by material, longest first.</summary>
    Task<IReadOnlyList<StockPiece>> ListAsync(CancellationToken cancel = default);

    /// <summary>Adds pieces. The same command again answers with those of them that are still on hand.</summary>
    Task<Outcome<IReadOnlyList<StockPiece>>> AddAsync(
        StockAddition addition,
        LengthUnit unit,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Enters a new measurement of a piece; plans that it is promised to become out of date.</summary>
    Task<Outcome<StockPiece>> CorrectAsync(
        Guid id,
        int version,
        string length,
        string width,
        string note,
        LengthUnit unit,
        string device,
        CancellationToken cancel = default
    );

    /// <summary>Throws a piece away; plans that it is promised to become out of date.</summary>
    Task<Outcome<Done>> DiscardAsync(Guid id, int version, string reason, string device, CancellationToken cancel = default);

    /// <summary>Returns the latest entries, newest first; of one piece when given.</summary>
    Task<IReadOnlyList<StockEntry>> HistoryAsync(Guid? pieceId, int most, CancellationToken cancel = default);

    /// <summary>Undoes an entry by a new one; refused, with the reason, when the same piece has a later entry.</summary>
    Task<Outcome<Done>> UndoAsync(Guid entryId, string device, CancellationToken cancel = default);
}
