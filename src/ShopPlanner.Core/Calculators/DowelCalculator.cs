using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Dowels for a joint.</summary>
internal static class DowelCalculator
{
    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<DowelsAsked, DowelsMade>(
        "dowels",
        "Dowels",
        "Dowels for a joint: size, hole depth and positions."
    )
    {
        Keys =
        [
            Key.Length("thickness", "Thickness of the thinner piece", least: "3/8 in", most: "3 in"),
            Key.Length("width", "Length of the joint", most: "10 ft"),
        ],
        Read = reader => new(reader.Given("Thickness", "thickness"), reader.Given("Length of the joint", "width")),
        Make = asked => new(asked.Thickness, Dowels.Of(asked.Thickness, asked.Width)),
        Failures =
        [
            new("thickness", made => made.Dowels is null, "has no dowel rod between a third and half of it")
            {
                Quote = made => made.Thickness.Figure.Text(LengthUnit.Inch),
            },
        ],
        Results = made => Results(made.Dowels!),
        Verdicts = [new(Severity.Fine, "Use fluted dowels or cut a groove in them: trapped glue splits the wood.")],
    }.Form;

    private static IEnumerable<Working> Results(Dowels dowels) =>
        [
            dowels.Diameter,
            dowels.DowelLength,
            dowels.HoleDepth,
            Working.Of(
                "Dowels",
                dowels.Places.Value.Length,
                QuantityKind.Bare,
                0,
                "as many as {places}",
                Working.Geometry,
                ("places", dowels.Places)
            ),
            dowels.Places,
        ];

    private sealed record DowelsAsked(Working<Length> Thickness, Working<Length> Width);

    private sealed record DowelsMade(Working<Length> Thickness, Dowels? Dowels);
}
