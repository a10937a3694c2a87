using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>What is finished, with what was chosen for it.</summary>
/// <param name="Name">Of the piece.</param>
/// <param name="Unit">Of lengths in texts.</param>
/// <param name="Surfaces">All of them, in the order of the marks.</param>
/// <param name="Choices">As chosen.</param>
internal sealed record FinishWork(string Name, LengthUnit Unit, ImmutableArray<FinishSurface> Surfaces, WorkChoices Choices)
{
    // Words of a piece's name that tell what it will meet.
    private static readonly (FinishUse Use, string[] Words)[] Told =
    [
        (FinishUse.Outdoors, ["outdoor", "outdoors", "garden", "patio", "porch", "deck", "planter"]),
        (FinishUse.Children, ["toy", "toys", "child", "children", "kid", "kids", "baby", "crib", "nursery"]),
        (FinishUse.Food, ["tray", "cutting", "bread", "serving", "bowl", "spoon", "food"]),
    ];

    /// <summary>The finish; bare where none is chosen or the chosen one can't be done.</summary>
    public FinishRecipe Recipe { get; init; } = FinishRecipe.Bare;

    /// <summary>Whether screws or brads leave holes to fill.</summary>
    public bool HasHoles { get; init; }

    /// <summary>Whether hinges or slides are on it.</summary>
    public bool HasHardware { get; init; }

    /// <summary>Whether the design itself asks for edge band: the work on parts then irons it on.</summary>
    public bool IsBanded { get; init; }

    /// <summary>What it will meet.</summary>
    public ImmutableArray<FinishUse> Uses =>
        Choices.Uses
        ??
        [
            .. Told.Where(one => Name.ToLowerInvariant().Split(' ', '-', ',').Any(word => one.Words.Contains(word)))
                .Select(one => one.Use),
        ];

    public bool IsOutdoors => Uses.Contains(FinishUse.Outdoors);

    /// <summary>What a product is called in its kind for this use.</summary>
    public string Called(FinishProduct product) =>
        IsOutdoors && product.IsForOutdoors
            ? "Exterior " + char.ToLowerInvariant(product.Name[0]) + product.Name[1..]
            : product.Name;

    /// <summary>What is done with the edges of sheets that are seen.</summary>
    public string Edges =>
        Choices.Edges is { } chosen && FinishChoices.Edges.Any(one => one.Id == chosen) ? chosen
        : Recipe.IsBare ? FinishChoices.BareEdges
        : Recipe.HidesWood ? FinishChoices.Filler
        : FinishChoices.IronOn;

    /// <summary>Whether edging is bought and ironed on for the finish.</summary>
    public bool IronsEdges => Edges == FinishChoices.IronOn && !IsBanded;
}
