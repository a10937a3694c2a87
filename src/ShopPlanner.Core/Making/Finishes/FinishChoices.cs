using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>A finish to choose.</summary>
/// <param name="Id">Products from the wood outward, joined by a plus sign: <c>stain+clear</c>.</param>
/// <param name="Name">As shown.</param>
public sealed record FinishChoice(string Id, string Name);

/// <summary>Finishes, edges and waits that can be chosen.</summary>
public static class FinishChoices
{
    /// <summary>No finish.</summary>
    public const string None = "none";

    /// <summary>Iron-on edging.</summary>
    public const string IronOn = "iron-on";

    /// <summary>Filler at the edges.</summary>
    public const string Filler = "filler";

    /// <summary>Edges left as they are.</summary>
    public const string BareEdges = "bare";

    /// <summary>The usual finishes; any other row of products that hold on each other can be named the same way.</summary>
    public static ImmutableArray<FinishChoice> All { get; } =
    [
        new("paint", "Latex paint over primer"),
        new("enamel", "Enamel over primer"),
        new("oil", "Oil"),
        new("wiping-varnish", "Wiping varnish"),
        new("polyurethane", "Oil-based polyurethane"),
        new("clear", "Waterborne polyurethane or other clear coat"),
        new("shellac", "Shellac"),
        new("shellac+wax", "Shellac, then wax"),
        new("wax", "Wax alone"),
        new("hard-wax-oil", "Hard-wax oil"),
        new("stain+clear", "Stain, then waterborne clear coat"),
        new("stain+polyurethane", "Stain, then oil-based polyurethane"),
        new("stain+wiping-varnish", "Stain, then wiping varnish"),
        new("stain+shellac+wax", "Stain, shellac, then wax"),
        new(None, "No finish"),
    ];

    /// <summary>Treatments of sheets' edges.</summary>
    public static ImmutableArray<FinishChoice> Edges { get; } =
    [new(IronOn, "Iron-on edging"), new(Filler, "Filler"), new(BareEdges, "Left as they are")];

    /// <summary>Products that make a finish, by the words of <see cref="FinishChoice.Id"/>.</summary>
    internal static ImmutableArray<FinishProduct> Products { get; } =
    [.. Coats.Products.Where(product => !product.OnlyPrepares || product.HidesWood)];
}
