using System.Collections.Immutable;
using ShopPlanner.Core.Materials;

namespace ShopPlanner.Core.Finishing;

/// <summary>What a finish goes on.</summary>
public enum FinishFace
{
    /// <summary>Solid wood.</summary>
    Solid,

    /// <summary>Plywood: real wood on its faces, plies at its edges.</summary>
    Veneer,

    /// <summary>MDF or particleboard, without grain.</summary>
    Composite,

    /// <summary>A sheet with a plastic face.</summary>
    Plastic,
}

/// <summary>How a material takes a finish.</summary>
/// <param name="Name">As a person says it.</param>
/// <param name="Face">What its faces are.</param>
/// <param name="HasOpenPores">Whether its pores are filled for a smooth film.</param>
/// <param name="Blotches">Whether stain goes on it unevenly.</param>
/// <param name="IsSoftwood">Whether it is of a conifer, whose knots bleed through paint.</param>
/// <param name="IsOily">Whether its own oil keeps a film from holding.</param>
public sealed record FinishWood(string Name, FinishFace Face, bool HasOpenPores, bool Blotches, bool IsSoftwood, bool IsOily)
{
    // Carpentry and Woodwork (1911), p. 484; elm, hickory, pecan and teak common practice.
    private static readonly string[] Open =
    [
        "oak",
        "ash",
        "chestnut",
        "mahogany",
        "walnut",
        "butternut",
        "elm",
        "hickory",
        "pecan",
        "teak",
    ];

    // Common practice; uneven stain on sugar maple is confirmed by a maple flooring association.
    private static readonly string[] Blotchy = ["pine", "fir", "birch", "maple", "cherry", "alder", "aspen", "poplar"];

    private static readonly string[] Conifers =
    [
        "softwood",
        "pine",
        "fir",
        "spruce",
        "hemlock",
        "larch",
        "cedar",
        "redcedar",
        "cypress",
        "redwood",
    ];

    private static readonly string[] Fibers = ["mdf", "hdf", "fiberboard", "hardboard", "particleboard", "chipboard"];
    private static readonly string[] Plastics = ["melamine", "laminate", "hpl"];

    /// <summary>Whether stain sinks into it evenly enough to be used at all.</summary>
    public bool TakesStain => Face is FinishFace.Solid or FinishFace.Veneer;

    /// <summary>Returns how a material takes a finish, by the words of its ids and its name; what is not known of it is taken as
    /// plain wood with fine pores.</summary>
    /// <param name="id">Of the material in the shop's list; null where it has none.</param>
    /// <param name="name">As a person says it.</param>
    /// <param name="properties">Of its wood or panel in the tables of properties; null where unknown.</param>
    /// <param name="isSheet">Whether it is a sheet.</param>
    public static FinishWood Of(string? id, string name, string? properties, bool isSheet)
    {
        ArgumentNullException.ThrowIfNull(name);
        var words = Words(id).Concat(Words(properties)).Concat(Words(name)).ToHashSet(StringComparer.Ordinal);
        var face = FaceOf(words, isSheet, id);
        var isWood = face is FinishFace.Solid or FinishFace.Veneer;
        return new(
            name,
            face,
            isWood && words.Overlaps(Open),
            isWood && (words.Overlaps(Blotchy) || words.Contains("softwood")),
            isWood && words.Overlaps(Conifers),
            isWood && words.Contains("teak")
        );
    }

    private static FinishFace FaceOf(HashSet<string> words, bool isSheet, string? id)
    {
        if (words.Overlaps(Plastics))
            return FinishFace.Plastic;
        if (words.Overlaps(Fibers) || (id is not null && MaterialCatalogue.TryFindSheet(id, out var sheet) && !sheet.HasGrain))
            return FinishFace.Composite;
        return isSheet ? FinishFace.Veneer : FinishFace.Solid;
    }

    private static ImmutableArray<string> Words(string? text) =>
        [.. string.Concat((text ?? "").ToLowerInvariant().Select(c => char.IsLetter(c) ? c : ' ')).Split(' ')];
}
