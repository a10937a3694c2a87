using System.Diagnostics;
using ShopPlanner.Cutting;

namespace ShopPlanner.Benchmarks;

/// <summary>Listens to a search: when the first whole plan was there, and how good the best was after one second.</summary>
public sealed class Milestones
{
    private static readonly TimeSpan Early = TimeSpan.FromSeconds(1);
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private readonly Lock one = new();
    private TimeSpan? firstPlan;
    private decimal? cost;
    private decimal bound;

    /// <summary>Since listening began.</summary>
    public TimeSpan Elapsed => clock.Elapsed;

    /// <summary>Until a plan with every piece was there; null where none was told of.</summary>
    public TimeSpan? FirstPlan => firstPlan;

    /// <summary>How far the cost was above its bound after one second, in % of the cost; null where no whole plan was there by
    /// then.</summary>
    public decimal? EarlyGapPercent => this.cost is { } cost ? GapPercent(cost, bound) : null;

    /// <summary>True when the search was over before the second was.</summary>
    public static bool IsEarly(TimeSpan time) => time <= Early;

    /// <summary>How far a cost is above its bound, in % of the cost.</summary>
    public static decimal GapPercent(decimal cost, decimal bound) => cost == 0 ? 0 : (cost - bound) / cost * 100;

    /// <summary>To be handed to the search; any thread may call it.</summary>
    public void Hear(SearchProgress progress)
    {
        var now = clock.Elapsed;
        lock (one)
        {
            if (progress.Cost is not null)
                firstPlan ??= now;
            if (IsEarly(now))
                Remember(progress);
        }
    }

    // Threads may tell out of order: what was known stays known.
    private void Remember(SearchProgress progress)
    {
        if (progress.Cost is { } cost)
            this.cost = Math.Min(this.cost ?? cost.Amount, cost.Amount);
        bound = Math.Max(bound, progress.Bound.Amount);
    }
}
