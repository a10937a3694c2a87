namespace ShopPlanner.Benchmarks;

/// <summary>What one way of planning made of one instance.</summary>
/// <param name="Method">Which way.</param>
/// <param name="Value">Stocks, sheets or cost used, in the set's own unit; null where it had no whole answer.</param>
/// <param name="Best">Best value published; null where none is.</param>
/// <param name="Proven">True when it shows itself that no answer is cheaper.</param>
/// <param name="Cuttable">True when edge-to-edge cuts can free every piece; null where that is no question.</param>
public sealed record MethodOutcome(
    string Set,
    string Name,
    string Method,
    double? Value,
    double? Best,
    bool Proven,
    double Seconds,
    bool? Cuttable = null
);

/// <summary>Do the answers to one instance agree?</summary>
public static class Agreement
{
    /// <summary>A line for each answer that is cheaper than one proven cheapest under the same rules.</summary>
    public static IReadOnlyList<string> Contradictions(IReadOnlyList<MethodOutcome> sameRules) =>
        [
            .. from proven in sameRules
            where proven is { Proven: true, Value: not null }
            from other in sameRules
            where other.Value < proven.Value
            select $"{proven.Set}/{proven.Name}: {proven.Method} proves {proven.Value}, {other.Method} has {other.Value}",
        ];
}
