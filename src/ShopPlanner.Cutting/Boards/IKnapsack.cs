namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// The most valuable pattern for every kind of stock, exactly: values are whole numbers, so no rounding enters. The value that
/// a kind's own cost must be beaten by is its threshold.
/// </summary>
internal interface IKnapsack
{
    /// <summary>Solves for all kinds.</summary>
    /// <param name="values">Of one piece of each item, zero or more; at most 2^50 in any pattern.</param>
    /// <param name="wanted">Most pieces of each item.</param>
    /// <param name="thresholds">Of each kind: only patterns worth more are returned.</param>
    KnapsackResult Solve(long[] values, int[] wanted, long[] thresholds);

    /// <summary>True where guesses are so much quicker that they pay before a solution.</summary>
    bool IsSlow { get; }

    /// <summary>Some patterns worth more than their kind's threshold, soon; that there are none proves nothing.</summary>
    /// <inheritdoc cref="Solve" path="/param"/>
    List<Pattern> Guess(long[] values, int[] wanted, long[] thresholds);
}

/// <summary>Answer of a knapsack.</summary>
/// <param name="Most">Of each kind: no pattern is worth more.</param>
/// <param name="Patterns">Some worth more than the threshold of their kind, the best of each kind among them.</param>
internal sealed record KnapsackResult(long[] Most, List<Pattern> Patterns);
