using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of hinges.</summary>
internal sealed record HingesAsked(
    LengthUnit Unit,
    Working<Length> Height,
    Working<Length> Width,
    Working<Length> Thickness,
    Working<double> Weight,
    Working<Length> Edge,
    PilotWood Wood,
    bool IsInset
) : Question(Unit)
{
    public static HingesAsked Read(FormReader reader)
    {
        var (height, width) = (reader.Given("Height", "height"), reader.Given("Width", "width"));
        var thickness = reader.Given("Thickness", "thickness");
        var row = StrengthTable.Find(reader.Choice("species"))!;
        return new(
            reader.Unit,
            height,
            width,
            thickness,
            reader.MaybeGivenQuantity("Weight", "weight", 1)
                ?? Core.Wood.Weight.Of(
                    Area.Of(height.Value, width.Value) * thickness.Value,
                    Core.Wood.Weight.Density(row, Core.Wood.Weight.Indoors)
                ),
            Edged(reader.Length("edge")),
            WoodScrews.PilotFor(row),
            reader.Choice("fit") == "inset"
        );
    }

    // Set on the boring jig, in whole millimeters.
    private static Working<Length> Edged(Length edge) =>
        Working.Looked("Wood to the edge", edge, new OwnUnitFigure(edge, LengthUnit.Millimetre), Working.AsGiven);
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
            Metric("Cup", CupDiameter),
            Metric("Deepest cup hole", CupDepth),
            Hinges.CupCentre(Asked.Edge),
            Screws,
            Pilot,
            Asked.Weight,
        ];

    private static readonly SourceNote ScrewPractice = new(
        "Pattern from a hardware maker's sheet, 9.5 mm from the cup's center from memory; the screw is common practice",
        Certainty.FromMemory
    );

    private static Working<string> Screws =>
        Working.Looked(
            "Screws",
            "5/8 in",
            new WordFigure("#6 × 5/8\" (3.5 × 16 mm), 45 mm apart, 9.5 mm from the cup's center away from the door's edge"),
            ScrewPractice
        );

    private Working<Length> Pilot
    {
        get
        {
            var bit = WoodScrews.Numbered(6).Pilot(Asked.Wood);
            return Working.Looked("Pilot bit for the screws", bit, new BitFigure(bit), WoodScrews.PilotSourceFor(Asked.Wood));
        }
    }

    private static Working<Length> Metric(string name, Length length) =>
        Working.Looked(name, length, new OwnUnitFigure(length, LengthUnit.Millimetre), Hinges.MakerSheet);

    public static HingesMade Of(HingesAsked asked)
    {
        var count = Hinges.Count(asked.Height, asked.Weight);
        return new(asked, count, Hinges.Places(asked.Height, count));
    }
}
