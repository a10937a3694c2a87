using System.Collections.Immutable;
using NodaTime;

namespace ShopPlanner.Scheduling;

/// <summary>What is to be done, by whom, and when there is time for it. Minutes count from <see cref="Start"/>, as elapsed
/// time:
/// a change of the clock shifts what the clock shows, not the count.</summary>
/// <param name="Windows">When there is time to work: disjoint, ascending; two that touch count as one.</param>
/// <param name="Resources">How much there is of each: people, clamps, bench, drying space.</param>
/// <param name="Tasks">In any order; each id once.</param>
/// <param name="Precedences">What comes before what.</param>
public sealed record ScheduleRequest(
    ImmutableArray<Window> Windows,
    ImmutableSortedDictionary<string, int> Resources,
    ImmutableArray<ScheduleTask> Tasks,
    ImmutableArray<Precedence> Precedences
)
{
    /// <summary>How long is searched where nothing else is said.</summary>
    public const double UsualSeconds = 10;

    /// <summary>The date and time of minute 0 in the zone; null where it is not said.</summary>
    public LocalDateTime? Start { get; init; }

    /// <summary>The zone that the shop's clock follows, by its name in the IANA database; null where it is not said.</summary>
    public string? Zone { get; init; }

    /// <summary>How long to look for a better schedule.</summary>
    public double Seconds { get; init; } = UsualSeconds;

    /// <summary>Projects with a priority or a date; a project that is not listed comes after those that are.</summary>
    public ImmutableArray<ScheduleProject> Projects { get; init; } = [];
}
