using System.Collections.Immutable;

namespace ShopPlanner.Scheduling;

/// <summary>Something to do: labor, and a hold right after it (glue in clamps, paint that dries).</summary>
/// <param name="Id">Its name, once in a request.</param>
/// <param name="Labor">Minutes at work.</param>
/// <param name="Hold">Minutes that follow at once, at any time of day.</param>
/// <param name="LaborUses">How much of each resource is taken while the labor lasts.</param>
/// <param name="HoldUses">How much of each is taken while the hold lasts.</param>
public sealed record ScheduleTask(
    string Id,
    int Labor,
    int Hold,
    ImmutableSortedDictionary<string, int> LaborUses,
    ImmutableSortedDictionary<string, int> HoldUses
)
{
    /// <summary>The project that it belongs to; empty for none.</summary>
    public string Project { get; init; } = "";

    /// <summary>Whether the labor may pause when a window closes and go on when the next one opens. What it uses stays taken
    /// meanwhile.</summary>
    public bool IsSplittable { get; init; }

    /// <summary>The earliest minute to begin.</summary>
    public int NotBefore { get; init; }

    /// <summary>When it was done, or when it must be done; null where that is for the schedule to say.</summary>
    public FixedLabor? Fixed { get; init; }

    /// <summary>The minute that it must begin at, where a person put it there; null where that is for the schedule to say. Unlike
    /// what is fixed it keeps to its precedences and to the windows: where it cannot begin then, there is no schedule.</summary>
    public int? Begins { get; init; }

    /// <summary>When an earlier schedule had it begin; null where there was none. A new schedule moves it as little as it
    /// can.</summary>
    public int? Earlier { get; init; }
}

/// <summary>Labor that is not to be moved: begun, done, or put there by the builder. It may lie outside the windows, and
/// before the
/// start of the schedule.</summary>
/// <param name="Start">Its first minute.</param>
/// <param name="End">The minute that it ends before; its hold begins there.</param>
public sealed record FixedLabor(int Start, int End);

/// <summary>An order between two tasks.</summary>
/// <param name="Before">Id of the first.</param>
/// <param name="After">Id of the second; it starts no earlier than the first one's hold ends.</param>
/// <param name="Wait">Minutes that pass between them at least, using nothing.</param>
public sealed record Precedence(string Before, string After, int Wait);

/// <summary>What is known of a project.</summary>
/// <param name="Id">As its tasks name it.</param>
/// <param name="Priority">The smaller, the sooner it is to be finished; those of the same number are finished together as early
/// as possible.</param>
public sealed record ScheduleProject(string Id, int Priority)
{
    /// <summary>The minute that it should be finished before; null for any time.</summary>
    public int? Due { get; init; }
}
