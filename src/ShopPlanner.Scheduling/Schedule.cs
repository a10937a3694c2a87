using System.Collections.Immutable;

namespace ShopPlanner.Scheduling;

/// <summary>How good a schedule is.</summary>
public enum ScheduleStatus
{
    /// <summary>No schedule finishes earlier.</summary>
    Proven,

    /// <summary>None finishes before the bound that is told.</summary>
    BestFound,

    /// <summary>There is no schedule; the reasons say why.</summary>
    Impossible,
}

/// <summary>When each task begins. Immutable.</summary>
/// <param name="Status">How good it is.</param>
/// <param name="Finish">The latest end of any hold; null where there is no schedule.</param>
/// <param name="Bound">No schedule finishes before it; null where there is no schedule. With priorities: none that lets the
/// more
/// urgent projects finish as early as this one.</param>
/// <param name="Seconds">Time spent.</param>
/// <param name="Starts">The first minute of each task's labor, by id.</param>
/// <param name="Reasons">Why there is no schedule, a plain sentence each; empty where there is one.</param>
public sealed record Schedule(
    ScheduleStatus Status,
    int? Finish,
    int? Bound,
    double Seconds,
    ImmutableSortedDictionary<string, int> Starts,
    ImmutableArray<string> Reasons
)
{
    /// <summary>Returns that there is no schedule.</summary>
    /// <param name="reasons">Why.</param>
    /// <param name="seconds">Time spent.</param>
    public static Schedule Impossible(IEnumerable<string> reasons, double seconds) =>
        new(ScheduleStatus.Impossible, null, null, seconds, NoStarts, [.. reasons]);

    /// <summary>No task at all.</summary>
    public static ImmutableSortedDictionary<string, int> NoStarts { get; } =
        ImmutableSortedDictionary.Create<string, int>(StringComparer.Ordinal);
}
