namespace ShopPlanner.Services.Storage.Rows;

/// <summary>When there is time to work, and the schedule that was kept: one row.</summary>
internal sealed class StoredWeekends : IVersioned
{
    public const int OnlyId = 1;

    public int Id { get; init; } = OnlyId;

    /// <summary>JSON: hours, days off, clamps, priorities, what was moved, when tasks are to begin.</summary>
    public required string Document { get; set; }

    public int Version { get; set; }
}
