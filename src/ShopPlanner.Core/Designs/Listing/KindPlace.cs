using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;

namespace ShopPlanner.Core.Designs.Listing;

/// <summary>A place of a document that kinds are named in.</summary>
/// <param name="Member">As in the document: <c>frame</c>, <c>parts[].shapes[]</c>.</param>
/// <param name="Title">As a heading.</param>
/// <param name="Says">What stands there, one plain sentence.</param>
/// <param name="Kinds">What can be named there.</param>
public sealed record KindPlace(string Member, string Title, string Says, ImmutableArray<KindInfo> Kinds)
{
    /// <summary>All places, in the order of the document.</summary>
    public static ImmutableArray<KindPlace> All { get; } =
    [
        new("frame", "Frames", "What holds the piece up.", DesignKinds.Frames),
        new("bays.split", "Splits", "The part between smaller bays.", DesignKinds.Splits),
        new("bays.fills[]", "Fills", "What fills or closes a bay.", DesignKinds.Fills),
        new("top", "Tops", "What lies on top.", DesignKinds.Tops),
        new(
            "parts[].shapes[]",
            "Shapes",
            "What is cut out of a free part; in shapes[], with of, out of a part that the frame, a fill or the top makes.",
            DesignKinds.Shapes
        ),
        new("parts[].edges[]", "Edges", "What is done to an edge of a free part.", DesignKinds.Edges),
    ];
}
