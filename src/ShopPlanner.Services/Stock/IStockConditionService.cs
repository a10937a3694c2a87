using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Stock;

/// <summary>How a person says where a bad place is.</summary>
public enum BadPlaceKind
{
    /// <summary>An end over the full width, like a split.</summary>
    End,

    /// <summary>A corner, like a crushed one.</summary>
    Corner,

    /// <summary>A long edge over the full length, like one with bark.</summary>
    Edge,

    /// <summary>Anywhere, like a knot or a dent.</summary>
    Spot,
}

/// <summary>A bad place to add, as typed. The piece lies with its tag at the left end and its top edge away from the
/// person.</summary>
/// <param name="Kind">How it is described.</param>
/// <param name="Where">Which end, edge or corner; not asked of a spot.</param>
/// <param name="Along">How long it is along the piece; not asked of an edge.</param>
/// <param name="Across">How wide it is across the piece; not asked of an end.</param>
/// <param name="FromEnd">Of a spot: from the left end to where it begins.</param>
/// <param name="FromEdge">Of a spot: from the top edge to where it begins.</param>
public sealed record BadPlaceTyped(
    BadPlaceKind Kind,
    StockEdges Where,
    string Along,
    string Across,
    string FromEnd = "",
    string FromEdge = ""
);

/// <summary>Notes what pieces on hand are like, as lines of the ledger: each can be undone as every other line.</summary>
public interface IStockConditionService
{
    /// <summary>Adds a bad place. It is measured on the piece as it is now; plans that the piece is promised to become out of
    /// date.</summary>
    Task<Outcome<StockPiece>> AddBadPlaceAsync(
        Guid id,
        BadPlaceTyped place,
        LengthUnit unit,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Removes a bad place; refused where the piece has it no more.</summary>
    Task<Outcome<StockPiece>> RemoveBadPlaceAsync(Guid id, BadPlace place, string device, CancellationToken cancel = default);

    /// <summary>Sets whether an edge is still as bought; never a toggle, and nothing where it is so already.</summary>
    /// <param name="id">The piece.</param>
    /// <param name="edge">One end or, of a sheet, one edge.</param>
    /// <param name="asBought">Whether the trim is to come off it.</param>
    /// <param name="device">The device that says so.</param>
    /// <param name="cancel">Stops it before it is saved.</param>
    Task<Outcome<StockPiece>> SetEdgeAsync(
        Guid id,
        StockEdges edge,
        bool asBought,
        string device,
        CancellationToken cancel = default
    );
}
