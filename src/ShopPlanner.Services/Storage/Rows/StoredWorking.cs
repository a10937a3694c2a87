using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Storage.Rows;

/// <summary>A working kept with a project: what was given, and the answer in one line as it was then.</summary>
internal sealed class StoredWorking
{
    public required Guid Id { get; init; }

    public required Guid ProjectId { get; init; }

    public required string Form { get; init; }

    /// <summary>JSON of the texts by key.</summary>
    public required string Given { get; init; }

    public LengthUnit Unit { get; init; }

    public required string Result { get; init; }

    public DateTime KeptUtc { get; init; }
}
