namespace ShopPlanner.Scheduling;

/// <summary>How a search is steered from outside. The same request, seed and machine give the same schedule as long as no
/// clock ends
/// the search.</summary>
public sealed record ScheduleControl
{
    /// <summary>Stops the search with the best so far; a search never throws for it.</summary>
    public CancellationToken Cancel { get; init; }

    /// <summary>Where the random numbers start.</summary>
    public int Seed { get; init; } = 1;
}
