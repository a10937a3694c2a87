namespace ShopPlanner.Services.Storage.Rows;

/// <summary>The builder's hand in a project's order of work. One for each project.</summary>
internal sealed class StoredWork : IVersioned
{
    public required Guid ProjectId { get; init; }

    /// <summary>JSON: choices, what was done with which step, steps of the builder's own, their order.</summary>
    public required string Document { get; set; }

    public int Version { get; set; }
}

/// <summary>One change of it, so that it can be taken back.</summary>
internal sealed class StoredWorkChange : IUndoStep
{
    public required Guid Id { get; init; }

    public required Guid ProjectId { get; init; }

    public long Number { get; init; }

    public required string Title { get; init; }

    public required string Before { get; init; }

    public required string After { get; init; }

    public bool Undone { get; set; }
}
