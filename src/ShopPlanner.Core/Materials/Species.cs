namespace ShopPlanner.Core.Materials;

/// <summary>Which trade's sizes and rules a wood is sold by; says nothing of how hard it is.</summary>
public enum WoodKind
{
    /// <summary>From conifers: pine, fir, spruce, cedar.</summary>
    Softwood,

    /// <summary>From broad-leaved trees: oak, maple, poplar, walnut.</summary>
    Hardwood,
}

/// <summary>A wood.</summary>
/// <param name="Id">Stable key, kind first: <c>pine-eastern-white</c>.</param>
/// <param name="Name">As a person says it.</param>
/// <param name="Kind">Softwood or hardwood.</param>
/// <param name="Tint">Fill for drawings, <c>#RRGGBB</c>: paler than the wood, so that ink reads on it. Our own choice.</param>
public sealed record Species(string Id, string Name, WoodKind Kind, string Tint);
