using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Plans;

/// <summary>A material that parts of an order are made of and none of its stores sells.</summary>
/// <param name="Material">The material's name.</param>
/// <param name="Pieces">How many pieces need it.</param>
/// <param name="IsOnHand">Whether the rack or the bin, where the order uses them, has some of it.</param>
/// <param name="Seller">The name of a store that sells it and is not in the order; null when there is none.</param>
/// <param name="SellerId">That store.</param>
/// <param name="Projects">The projects that need it.</param>
public sealed record UnsoldMaterial(
    string Material,
    int Pieces,
    bool IsOnHand,
    string? Seller,
    Guid? SellerId,
    ImmutableArray<Guid> Projects
);

/// <summary>
/// A material whose parts may cost less from another section or sheet. Both costs are estimates: by length or area, in whole
/// boards and sheets, without the waste that only a plan knows.
/// </summary>
/// <param name="Material">The material's name.</param>
/// <param name="Cost">What it costs about.</param>
/// <param name="Other">The other material's name.</param>
/// <param name="OtherCost">What that costs about.</param>
/// <param name="Strips">How many strips one board of it is ripped into; zero where it is a sheet.</param>
/// <param name="Projects">The projects that need it.</param>
public sealed record CheaperMaterial(
    string Material,
    Money Cost,
    string Other,
    Money OtherCost,
    int Strips,
    ImmutableArray<Guid> Projects
);

/// <summary>What to know about an order's materials before it is planned.</summary>
/// <param name="Unsold">Materials that no store of the order sells, by name.</param>
/// <param name="Cheaper">Materials that may cost less otherwise, by name.</param>
public sealed record MaterialAdvice(ImmutableArray<UnsoldMaterial> Unsold, ImmutableArray<CheaperMaterial> Cheaper);

/// <summary>Looks at an order's materials before it is planned.</summary>
public interface IOrderAdvice
{
    /// <summary>Returns what to know about an order's materials, also where the order cannot be planned yet.</summary>
    Task<MaterialAdvice> OfAsync(PlanOrder order, CancellationToken cancel = default);
}
