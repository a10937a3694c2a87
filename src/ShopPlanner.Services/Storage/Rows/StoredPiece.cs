using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Storage.Rows;

/// <summary>The name plate of a piece of stock. What it measures and whether it is there, its entries say.</summary>
internal sealed class StoredPiece : IVersioned
{
    public required Guid Id { get; init; }

    public required string Tag { get; init; }

    public StockPlace Place { get; init; }

    public required string MaterialId { get; init; }

    public int Version { get; set; }
}

/// <summary>A line of the ledger. Lines are only ever added: the context refuses anything else.</summary>
internal sealed class StoredEntry
{
    public required Guid Id { get; init; }

    /// <summary>Order of the ledger, by a counter: a clock that jumps does not reorder it.</summary>
    public long Number { get; init; }

    public required Guid PieceId { get; init; }

    public DateTime WhenUtc { get; init; }

    public StockEntryKind Kind { get; init; }

    /// <summary>Pieces that come (1) or go (−1); the sum over a piece is whether it is there.</summary>
    public int Count { get; init; }

    public Length Length { get; init; }

    public Length Width { get; init; }

    /// <summary>Edges that are still as bought.</summary>
    public StockEdges Untrimmed { get; init; }

    /// <summary>A document of bad places; empty for none.</summary>
    public string BadPlaces { get; init; } = "";

    public string Note { get; init; } = "";

    public string Reason { get; init; } = "";

    public string Device { get; init; } = "";

    /// <summary>The entry that this one takes back.</summary>
    public Guid? Undoes { get; init; }

    /// <summary>The finish at the bench that this entry belongs to.</summary>
    public Guid? FinishId { get; init; }
}

/// <summary>A promise of a piece to a plan. At most one per piece is active: the database itself refuses a second.</summary>
internal sealed class StoredPromise
{
    public required Guid Id { get; init; }

    public required Guid PieceId { get; init; }

    public required Guid PlanId { get; init; }

    public bool Active { get; set; }
}
