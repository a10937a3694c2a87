using System.Collections.Immutable;
using System.Numerics;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Planning;

/// <summary>What becomes of the wood for each project of a plan, by the rule of <see cref="CostShares"/>: a board's or sheet's
/// offcuts and scrap are shared by the face area of the parts cut from it. The shares add up to the plan's
/// <see cref="WoodUse"/>, to the square tick.</summary>
public static class WoodShares
{
    /// <summary>Returns each owner's wood, in the order given.</summary>
    /// <typeparam name="T">What names an owner.</typeparam>
    /// <param name="request">The request that the plan answers.</param>
    /// <param name="plan">The plan; its stock is the request's. A layout without a piece would be nobody's, and is left
    /// out.</param>
    /// <param name="owners">All owners.</param>
    /// <param name="ownerOf">The owner of the part with an id.</param>
    public static ImmutableArray<WoodUse> Of<T>(
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
        var stock = request.Stock.ToDictionary(one => one.Id);
        var sums = new WoodUse[owners.Count];
        foreach (var layout in plan.Layouts.Where(layout => !layout.Pieces.IsEmpty))
        {
            var shares = Split(WoodUse.Of(layout, stock[layout.Stock]) * layout.Copies, AreasOf(layout, owners, ownerOf));
            for (var i = 0; i < sums.Length; i++)
                sums[i] += shares[i];
        }

        return [.. sums];
    }

    private static List<Area> AreasOf<T>(Layout layout, IReadOnlyList<T> owners, Func<string, T> ownerOf)
        where T : notnull
    {
        var own = layout.Pieces.ToLookup(piece => ownerOf(piece.Part), piece => Area.Of(piece.Dx, piece.Dy));
        return [.. owners.Select(owner => own[owner].Aggregate(Area.Zero, (sum, area) => sum + area) * layout.Copies)];
    }

    private static ImmutableArray<WoodUse> Split(WoodUse whole, List<Area> parts)
    {
        List<BigInteger> weights = [.. parts.Select(area => (BigInteger)area.SquareTicks)];
        var (kept, scrap) = (Portions.Of(whole.Kept, weights), Portions.Of(whole.Scrap, weights));
        var dust = Portions.Of(whole.Sawdust, weights);
        return [.. parts.Select((own, i) => new WoodUse(own + kept[i] + scrap[i] + dust[i], own, kept[i], scrap[i]))];
    }
}
