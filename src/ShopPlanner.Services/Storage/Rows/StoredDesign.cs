namespace ShopPlanner.Services.Storage.Rows;

/// <summary>A design that the builder saved.</summary>
internal sealed class StoredDesign : IVersioned
{
    public required Guid Id { get; init; }

    public required string Name { get; set; }

    /// <summary>The open JSON format of designs.</summary>
    public required string Document { get; set; }

    public DateTime SavedUtc { get; set; }

    public int Version { get; set; }
}

/// <summary>What a project is to become: a design with the values set for it. One for each project.</summary>
internal sealed class StoredIdea : IVersioned
{
    public required Guid ProjectId { get; init; }

    /// <summary>The open JSON format of designs.</summary>
    public required string Document { get; set; }

    /// <summary>JSON of texts by dimension.</summary>
    public required string Changed { get; set; }

    /// <summary>JSON of the rows of the parts list that were made from it, each with the part's letter.</summary>
    public required string Made { get; set; }

    public int Version { get; set; }
}

/// <summary>One change of an idea, so that it can be taken back.</summary>
internal sealed class StoredIdeaStep : IUndoStep
{
    public required Guid Id { get; init; }

    public required Guid ProjectId { get; init; }

    public long Number { get; init; }

    public required string Title { get; init; }

    public DateTime WhenUtc { get; set; }

    public required string DocumentBefore { get; init; }

    public required string ChangedBefore { get; init; }

    public required string DocumentAfter { get; set; }

    public required string ChangedAfter { get; set; }

    public bool Undone { get; set; }
}
