using System.Collections.Immutable;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Designs;

/// <summary>What the shop knows that bears on a piece: read once, then used at every change.</summary>
/// <param name="Largest">Largest stock of each material that its stores sell, or a longer one that it has on hand.</param>
/// <param name="PricePerMetre">The least that stores ask for a metre of a board, by material.</param>
/// <param name="PricePerSquareMetre">The least that stores ask for a square metre of a sheet, by material.</param>
public sealed record ShopReach(
    ImmutableDictionary<string, LargestStock> Largest,
    ImmutableDictionary<string, decimal> PricePerMetre,
    ImmutableDictionary<string, decimal> PricePerSquareMetre
)
{
    /// <summary>What an amount costs at the least price, without waste; null where no store sells the material.</summary>
    public Money? Cost(MaterialAmount amount)
    {
        ArgumentNullException.ThrowIfNull(amount);
        if (amount.Material.Id is not { } id)
            return null;
        if (PricePerSquareMetre.TryGetValue(id, out var area))
            return Money.From(area * amount.Face.ToSquareMetres());
        return PricePerMetre.TryGetValue(id, out var metre) ? Money.From(metre * amount.Running.ToMillimetres() / 1000) : null;
    }
}

/// <summary>How many the leftovers allow.</summary>
/// <param name="Count">The count; null where not even the least can be cut from the bin.</param>
/// <param name="Parts">Names of the parts that were tried.</param>
public sealed record BinAllows(int? Count, ImmutableArray<string> Parts);

/// <summary>Pieces seen from the shop: what can be had, what it costs, what the bin allows.</summary>
public interface IPieceService
{
    /// <summary>What stores, rack and bin have, and what they ask.</summary>
    Task<ShopReach> ReachAsync(CancellationToken cancel = default);

    /// <summary>The material for a role as the shop has it; null where it has none with that id.</summary>
    Task<RoleMaterial?> MaterialAsync(string role, string materialId, CancellationToken cancel = default);

    /// <summary>The greatest value of a count, within its limits, at which all parts that the count makes can be cut from what
    /// lies free in the bin. Faulty where the count makes no parts, or the idea cannot be worked out.</summary>
    /// <param name="idea">The idea.</param>
    /// <param name="count">The dimension.</param>
    /// <param name="cancel">Stops trying.</param>
    Task<Outcome<BinAllows>> AsManyAsBinAllowsAsync(Idea idea, DimensionRange count, CancellationToken cancel = default);
}
