using System.Collections.Immutable;
using System.Numerics;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// What each project of a plan costs. The rule (ours): the price of a board or sheet is shared by the face area of the parts
/// cut from it, test pieces and allowances included; who uses more of it bears more of its waste. On a board of one width this
/// is a share by length. What is on hand costs its keeping value, usually nothing.
/// </summary>
public static class CostShares
{
    /// <summary>Returns each owner's cost, in the order given; the costs add up to the price of all boards and sheets exactly.
    /// They are whole cents where the sum is, else whole ten-thousandths; what rounding down leaves goes to the largest
    /// remainders, the earlier owner first where they are equal.</summary>
    /// <typeparam name="T">What names an owner.</typeparam>
    /// <param name="request">The request that the plan answers.</param>
    /// <param name="plan">The plan; its stock is the request's. A layout without a piece would be nobody's, and is left
    /// out.</param>
    /// <param name="owners">All owners.</param>
    /// <param name="ownerOf">The owner of the part with an id.</param>
    public static ImmutableArray<CostShare<T>> Of<T>(
        CutRequest request,
        CutPlan plan,
        IReadOnlyList<T> owners,
        Func<string, T> ownerOf
    )
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(owners);
        ArgumentNullException.ThrowIfNull(ownerOf);
        var price = request.Stock.ToDictionary(stock => stock.Id, stock => stock.Price);
        var exact = new ExactShares<T>(owners);
        var total = Money.Zero;
        foreach (var layout in plan.Layouts.Where(layout => !layout.Pieces.IsEmpty))
        {
            var cost = price[layout.Stock] * layout.Copies;
            total += cost;
            exact.Add(cost.Count, AreasOf(layout, ownerOf));
        }

        return [.. owners.Zip(Rounded(exact, total), (owner, cost) => new CostShare<T>(owner, cost))];
    }

    private static Dictionary<T, BigInteger> AreasOf<T>(Layout layout, Func<string, T> ownerOf)
        where T : notnull =>
        layout
            .Pieces.GroupBy(piece => ownerOf(piece.Part))
            .ToDictionary(
                own => own.Key,
                own => own.Aggregate(BigInteger.Zero, (sum, piece) => sum + ((BigInteger)piece.Dx.Ticks * piece.Dy.Ticks))
            );

    private static Money[] Rounded<T>(ExactShares<T> exact, Money total)
        where T : notnull
    {
        const long cent = Money.PerUnit / 100;
        var step = total.Count % cent == 0 ? cent : 1;
        var parts = exact.InStepsOf(step).ToArray();
        var missing = (total.Count / step) - parts.Sum(part => part.Whole);
        var steps = parts.Select(part => part.Whole).ToArray();
        foreach (var i in Enumerable.Range(0, parts.Length).OrderByDescending(i => parts[i].Left).Take((int)missing))
            steps[i]++;
        return [.. steps.Select(count => Money.FromCount(count * step))];
    }

    // Sums of fractions over one denominator, so that nothing is rounded before the end.
    private sealed class ExactShares<T>(IReadOnlyList<T> owners)
        where T : notnull
    {
        private readonly Dictionary<T, BigInteger> numerators = owners.ToDictionary(owner => owner, _ => BigInteger.Zero);
        private BigInteger denominator = BigInteger.One;

        public void Add(long count, Dictionary<T, BigInteger> areas)
        {
            var whole = areas.Values.Aggregate(BigInteger.Zero, (sum, area) => sum + area);
            var shared = areas.Values.Aggregate(whole, BigInteger.GreatestCommonDivisor);
            whole /= shared;
            var more = whole / BigInteger.GreatestCommonDivisor(denominator, whole);
            denominator *= more;
            foreach (var owner in owners)
                numerators[owner] =
                    (numerators[owner] * more) + (count * (areas.GetValueOrDefault(owner) / shared) * (denominator / whole));
        }

        public IEnumerable<(long Whole, BigInteger Left)> InStepsOf(long step)
        {
            foreach (var owner in owners)
            {
                var whole = BigInteger.DivRem(numerators[owner], denominator * step, out var rest);
                yield return ((long)whole, rest);
            }
        }
    }
}

/// <summary>What one owner of a plan's parts pays.</summary>
/// <typeparam name="T">What names an owner.</typeparam>
/// <param name="Owner">Who.</param>
/// <param name="Cost">How much.</param>
public readonly record struct CostShare<T>(T Owner, Money Cost);
