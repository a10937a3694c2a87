using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Storage.Rows;

internal sealed class StoredStore : IVersioned
{
    public required Guid Id { get; init; }

    public required string Name { get; set; }

    public required string NameKey { get; set; }

    public LengthUnit Unit { get; set; }

    public string Note { get; set; } = "";

    public int FirstCuts { get; set; }

    public Length CutTolerance { get; set; }

    /// <summary>Of a trip there and back.</summary>
    public Money TripCost { get; set; }

    public int TripMinutes { get; set; }

    public int Version { get; set; }
}

internal sealed class StoredPrice : IVersioned
{
    public required Guid Id { get; init; }

    public required Guid StoreId { get; init; }

    public required string MaterialId { get; set; }

    public Length Length { get; set; }

    /// <summary>Nothing for a board: its width is its material's.</summary>
    public Length Width { get; set; }

    public Money Price { get; set; }

    public bool InStock { get; set; }

    public DateOnly Seen { get; set; }

    public int Version { get; set; }
}
