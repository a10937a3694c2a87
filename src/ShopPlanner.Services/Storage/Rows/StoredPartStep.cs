namespace ShopPlanner.Services.Storage.Rows;

/// <summary>One change of a parts list: the rows it touched as they were before and after, so that it can be taken
/// back.</summary>
internal sealed class StoredPartStep : IUndoStep
{
    public required Guid Id { get; init; }

    public required Guid ProjectId { get; init; }

    public long Number { get; init; }

    public required string Title { get; init; }

    /// <summary>JSON of the touched rows; a row that was added is missing here.</summary>
    public required string Before { get; init; }

    /// <summary>JSON of the touched rows; a row that was removed is missing here.</summary>
    public required string After { get; init; }

    public bool Undone { get; set; }
}
