using System.Collections.Immutable;
using System.Numerics;

namespace ShopPlanner.Core.Measures;

/// <summary>Shares one amount out by weights, in whole steps, so that the portions add up to it exactly. What rounding down
/// leaves goes to the largest remainders, the earlier portion first where they are equal.</summary>
public static class Portions
{
    /// <summary>Returns the portions of an amount of money, in whole cents where it is whole cents, else in
    /// ten-thousandths.</summary>
    /// <param name="amount">What is shared; zero or more.</param>
    /// <param name="weights">One for each portion, zero or more; equal portions where all are zero.</param>
    public static ImmutableArray<Money> Of(Money amount, IReadOnlyList<BigInteger> weights)
    {
        const long cent = Money.PerUnit / 100;
        var step = amount.Count % cent == 0 ? cent : 1;
        return [.. Steps(amount.Count / step, weights).Select(steps => Money.FromCount((long)steps * step))];
    }

    /// <summary>Returns the portions of an area, to the square tick.</summary>
    /// <param name="area">What is shared; zero or more.</param>
    /// <param name="weights">One for each portion, zero or more; equal portions where all are zero.</param>
    public static ImmutableArray<Area> Of(Area area, IReadOnlyList<BigInteger> weights) =>
        [.. Steps((BigInteger)area.SquareTicks, weights).Select(steps => Area.FromSquareTicks((Int128)steps))];

    private static BigInteger[] Steps(BigInteger amount, IReadOnlyList<BigInteger> weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        var all = weights.Aggregate(BigInteger.Zero, (sum, weight) => sum + weight);
        var used = all.IsZero ? [.. weights.Select(_ => BigInteger.One)] : weights;
        var whole = all.IsZero ? weights.Count : all;
        var steps = new BigInteger[used.Count];
        var left = new BigInteger[used.Count];
        for (var i = 0; i < used.Count; i++)
            steps[i] = BigInteger.DivRem(amount * used[i], whole, out left[i]);
        var missing = (int)(amount - steps.Aggregate(BigInteger.Zero, (sum, one) => sum + one));
        foreach (var i in Enumerable.Range(0, used.Count).OrderByDescending(i => left[i]).Take(missing))
            steps[i]++;
        return steps;
    }
}
