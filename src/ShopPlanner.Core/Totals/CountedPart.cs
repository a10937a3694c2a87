using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Totals;

/// <summary>A part as it is counted for a sum over all of them.</summary>
/// <param name="Name">As a person calls it.</param>
/// <param name="Quantity">How many, one or more.</param>
/// <param name="Length">Along the grain, finished.</param>
/// <param name="Width">Across the grain, finished.</param>
/// <param name="Thickness">Finished.</param>
/// <param name="Material">What it is cut from.</param>
/// <param name="Faces">What of it gets a finish.</param>
public sealed record CountedPart(
    string Name,
    int Quantity,
    Length Length,
    Length Width,
    Length Thickness,
    CountedMaterial Material,
    FinishFaces Faces
)
{
    /// <summary>Of all of them.</summary>
    public Volume Volume => Area.Of(Length, Width) * Thickness * Quantity;

    /// <summary>Name and number: <c>Shelf × 3</c>.</summary>
    public string Called => Told(Name, Quantity);

    internal static string Told(string name, int quantity) =>
        quantity == 1 ? name : name + " × " + quantity.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A material as it is counted.</summary>
/// <param name="Name">As a person says it.</param>
/// <param name="Properties">Under which its figures stand in the tables of woods and panels; null where they are not
/// known.</param>
/// <param name="IsSolid">Whether it is solid wood, which moves.</param>
/// <param name="Board">Width of a board; null for a sheet, or where it isn't known.</param>
public sealed record CountedMaterial(string Name, string? Properties, bool IsSolid, Length? Board);

/// <summary>A panel of solid wood: one wide part, or strips glued edge to edge.</summary>
/// <param name="Name">As a person calls it.</param>
/// <param name="Quantity">How many, one or more.</param>
/// <param name="Width">Across the grain, of all strips.</param>
/// <param name="Length">Along the grain.</param>
/// <param name="Thickness">Finished.</param>
/// <param name="Material">What it is cut from.</param>
/// <param name="Strips">Widths of its strips, from one edge; one where it is a single part.</param>
public sealed record SolidPanel(
    string Name,
    int Quantity,
    Length Width,
    Length Length,
    Length Thickness,
    CountedMaterial Material,
    ImmutableArray<Length> Strips
)
{
    /// <summary>Name and number.</summary>
    public string Called => CountedPart.Told(Name, Quantity);

    /// <summary>Ids of the parts that it is made of.</summary>
    public ImmutableArray<string> PartIds { get; init; } = [];

    /// <summary>Whether its boards are too narrow for it.</summary>
    public bool IsGlued => Strips.Length > 1 || Width > Material.Board;
}

/// <summary>A piece that stands on the floor, for its stability.</summary>
/// <param name="Width">Outside.</param>
/// <param name="Depth">Of what touches the floor, toe space included.</param>
/// <param name="Toe">Toe space behind the front.</param>
/// <param name="Height">Outside.</param>
/// <param name="Opens">How many doors and drawers open.</param>
/// <param name="Reach">How far the longest of them reaches out; nothing where none opens.</param>
/// <param name="Open">Their parts.</param>
public sealed record StandingSize(
    Length Width,
    Length Depth,
    Length Toe,
    Length Height,
    int Opens,
    Length Reach,
    ImmutableArray<CountedPart> Open
);

/// <summary>What a project or a design has to be added up.</summary>
/// <param name="Parts">All parts that stay in it, those that open too.</param>
/// <param name="Panels">Its panels of solid wood.</param>
/// <param name="Standing">How it stands; null where that isn't known.</param>
public sealed record TakenParts(ImmutableArray<CountedPart> Parts, ImmutableArray<SolidPanel> Panels, StandingSize? Standing)
{
    /// <summary>What could not be taken, each a sentence.</summary>
    public ImmutableArray<string> Left { get; init; } = [];
}
