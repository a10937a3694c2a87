using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of hinges.</summary>
internal sealed record HingesAsked(
    Working<Length> Height,
    Working<Length> Width,
    Working<Length> Thickness,
    Working<double> Weight,
    Working<Length> Edge,
    bool IsInset
)
{
    public static HingesAsked Read(FormReader reader)
    {
        var (height, width) = (reader.Given("Height", "height"), reader.Given("Width", "width"));
        var thickness = reader.Given("Thickness", "thickness");
        var row = StrengthTable.Find(reader.Choice("species"))!;
        return new(
            height,
            width,
            thickness,
            reader.MaybeGivenQuantity("Weight", "weight", 1)
                ?? Wood.Weight.Of(
                    Area.Of(height.Value, width.Value) * thickness.Value,
                    Wood.Weight.Density(row, Working.Given("Moisture", 8, QuantityKind.Percent, 0))
                ),
            reader.Given("Wood to the edge", "edge"),
            reader.Choice("fit") == "inset"
        );
    }
}

/// <summary>Hinges worked out.</summary>
/// <param name="Asked">What they were worked out from.</param>
/// <param name="Count">How many.</param>
/// <param name="Places">Where, from the bottom.</param>
internal sealed record HingesMade(HingesAsked Asked, Working<int> Count, Working<ImmutableArray<Length>> Places)
{
    /// <summary>Depth of the cup's hole, at most.</summary>
    public static readonly Length CupDepth = Length.FromMillimetres(13);

    private static readonly Length CupDiameter = Length.FromMillimetres(35);

    /// <summary>Hinges, cups and screws.</summary>
    public IEnumerable<Working> Sizes =>
        [
            Count,
            Places,
            Working.Looked("Cup", CupDiameter, new LengthFigure(CupDiameter), Hinges.MakerSheet),
            Working.Looked("Deepest cup hole", CupDepth, new LengthFigure(CupDepth), Hinges.MakerSheet),
            Hinges.CupCentre(Asked.Edge),
            Screws,
            Asked.Weight,
        ];

    private static Working<string> Screws =>
        Working.Looked("Screws", "5/8 in", new WordFigure("#6 × 5/8\", 45 mm apart, 9.5 mm behind the cup"), Hinges.MakerSheet);

    public static HingesMade Of(HingesAsked asked)
    {
        var count = Hinges.Count(asked.Height, asked.Weight);
        return new(asked, count, Hinges.Places(asked.Height, count));
    }
}
