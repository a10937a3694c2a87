using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Rows of holes for shelf pins.</summary>
internal static class PinCalculator
{
    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("height", "Clear height of the side", most: "12 ft"),
        Key.Length("first", "Height of the lowest hole", "6 in", most: "10 ft"),
        Key.Length("pitch", "Hole spacing", "32 mm", "1/2 in", "2 ft"),
        Key.Length("setback", "From the front and back edges", "37 mm", "1/4 in", "1 ft"),
        Key.Length("depth", "Thickness of the side", "23/32 in", "1/4 in", "3 in")
            .Hint("The hole stops 1/8 in short of the far face"),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<PinsAsked, PinsMade>(
        "pins",
        "Shelf pins",
        "Rows of holes for shelf pins, drilled with one template."
    )
    {
        Keys = Keys,
        Read = reader =>
            new(
                reader.Given("Height", "height"),
                reader.Given("First hole", "first"),
                reader.Given("Pitch", "pitch"),
                reader.Given("Setback", "setback"),
                reader.Given("Thickness", "depth")
            ),
        Make = asked => new(asked, ShelfPins.Heights(asked.Height, asked.First, asked.Pitch, asked.First)),
        Failures =
        [
            new("first", made => made.Holes.Value.IsEmpty, "leaves no room for a hole: it must be less than half the height")
            {
                Quote = made => made.Asked.First.Figure.Text(LengthUnit.Inch),
            },
        ],
        Results = made => [made.Holes, made.Count, made.Asked.Setback, made.Depth, PinsMade.Bit],
        Cautions = [Cautions.Drilling, Cautions.Dust],
        Verdicts =
        [
            new(
                Severity.Tip,
                "Drill two rows on each side. Mark one end of the template and keep it at the bottom on both sides."
            ),
        ],
    }.Form;

    private sealed record PinsAsked(
        Working<Length> Height,
        Working<Length> First,
        Working<Length> Pitch,
        Working<Length> Setback,
        Working<Length> Thickness
    );

    private sealed record PinsMade(PinsAsked Asked, Working<ImmutableArray<Length>> Holes)
    {
        public static Working<string> Bit =>
            Working.Looked(
                "Bit",
                "5 mm",
                new WordFigure("5 mm, or 1/4 in for quarter-inch pins: try a pin in scrap first"),
                ShelfPins.System32.And(ShelfPins.DepthRule)
            );

        public Working<double> Count =>
            Working.Of(
                "Holes in each row",
                Holes.Value.Length,
                QuantityKind.Bare,
                0,
                "number of {heights}",
                Working.Geometry,
                ("heights", Holes)
            );

        public Working<Length> Depth => ShelfPins.Depth(Asked.Thickness);
    }
}
