namespace ShopPlanner.Services.Storage.Rows;

/// <summary>A row of a parts list as typed; it is read again each time, since materials may change.</summary>
internal sealed class StoredPart : IVersioned
{
    public required Guid Id { get; init; }

    public required Guid ProjectId { get; init; }

    /// <summary>Order in the list; gaps are left so that a row can be put between two others.</summary>
    public long Position { get; set; }

    public string Mark { get; set; } = "";

    public string Name { get; set; } = "";

    public string Material { get; set; } = "";

    public string Length { get; set; } = "";

    public string Width { get; set; } = "";

    public string Quantity { get; set; } = "";

    public bool CanTurn { get; set; }

    public string Note { get; set; } = "";

    public string LongBy { get; set; } = "";

    public string WideBy { get; set; } = "";

    public string Practice { get; set; } = "";

    public int Version { get; set; }
}
