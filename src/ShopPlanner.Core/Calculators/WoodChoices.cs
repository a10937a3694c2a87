using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Wood;

namespace ShopPlanner.Core.Calculators;

/// <summary>Woods and sheets to choose from.</summary>
internal static class WoodChoices
{
    /// <summary>Woods with shrinkage.</summary>
    public static readonly ImmutableArray<FormChoice> Shrinking =
    [
        .. ShrinkageTable.All.Select(row => new FormChoice(row.SpeciesId, Name(row.SpeciesId))),
    ];

    /// <summary>Woods and panels with stiffness and specific gravity.</summary>
    public static readonly ImmutableArray<FormChoice> Strong =
    [
        .. StrengthTable.All.Select(row => new FormChoice(row.Id, row.Name)),
    ];

    private static string Name(string id) => MaterialCatalogue.TryFindSpecies(id, out var species) ? species.Name : id;
}
