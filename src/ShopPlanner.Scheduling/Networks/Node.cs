namespace ShopPlanner.Scheduling.Networks;

/// <summary>A task by its number, as the searches see it.</summary>
internal sealed class Node(ScheduleTask task, int level)
{
    public ScheduleTask Task { get; } = task;

    public int Labor => Task.Labor;

    public int Hold => Task.Hold;

    /// <summary>The start that is not for the schedule to say; null where it is.</summary>
    public int? Given => Task.Fixed?.Start ?? Task.Begins;

    public bool IsSplit => Task.IsSplittable && Task.Labor > 0;

    /// <summary>Number of its priority, from 0, the most urgent first; that of the most urgent task that waits for
    /// it.</summary>
    public int Level { get; private set; } = level;

    public required Use[] LaborUses { get; init; }

    public required Use[] HoldUses { get; init; }

    public List<Link> Before { get; } = [];

    public List<Link> After { get; } = [];

    public void RaiseTo(int level) => Level = Math.Min(Level, level);
}
