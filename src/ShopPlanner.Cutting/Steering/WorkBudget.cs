namespace ShopPlanner.Cutting.Steering;

/// <summary>Elementary steps that a method may take: counted, not timed, so that the same job gets the same answer on a fast
/// machine and on a slow one.</summary>
internal sealed class WorkBudget(long steps, Func<bool> stop)
{
    private long left = steps;

    /// <summary>True when nothing is left or the search was stopped from outside.</summary>
    public bool IsSpent => left <= 0 || IsStopped;

    public bool IsStopped => stop();

    /// <summary>What was overdrawn is taken off.</summary>
    public void Add(long more) => left += more;

    public void Spend(long taken) => left -= taken;
}
