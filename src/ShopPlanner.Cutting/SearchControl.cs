using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>
/// How a search is steered from outside: when to stop, whom to tell, where the random numbers start. The same seed, iteration
/// limit and worker count give the same plan as long as no clock ends the search.
/// </summary>
public sealed record SearchControl
{
    /// <summary>Wall-clock time after which the best so far is returned; null for no clock (then an iteration limit is
    /// wanted).</summary>
    public TimeSpan? Time { get; init; }

    /// <summary>Stops the search with the best so far; a search never throws for it.</summary>
    public CancellationToken Cancel { get; init; }

    /// <summary>Raised whenever cost or bound improves, and at least about once a second; may be called from any
    /// thread.</summary>
    public Action<SearchProgress>? Progress { get; init; }

    /// <summary>A plan made before an edit: materials that are still wanted from the same stock, with the same saw, keep their
    /// layouts and are not searched again; the search for the others begins with what their layouts still serve for. Null to plan
    /// everything anew.</summary>
    public EarlierPlan? Earlier { get; init; }

    /// <summary>Where the random numbers start.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Improvement rounds after which the search ends; null for no limit.</summary>
    public long? Iterations { get; init; }

    /// <summary>Threads to use, at most the machine's cores.</summary>
    public int Workers { get; init; } = Math.Max(1, Environment.ProcessorCount);
}

/// <summary>A plan made before, with the request that it answers.</summary>
/// <param name="Request">The request.</param>
/// <param name="Plan">Its plan.</param>
public sealed record EarlierPlan(CutRequest Request, CutPlan Plan);

/// <summary>How far a search is.</summary>
/// <param name="Material">The material searched now; empty when the whole plan is meant.</param>
/// <param name="Cost">Of the best complete plan so far; null before there is one.</param>
/// <param name="Bound">No plan costs less.</param>
/// <param name="Elapsed">Since the search began.</param>
public sealed record SearchProgress(string Material, Money? Cost, Money Bound, TimeSpan Elapsed);
