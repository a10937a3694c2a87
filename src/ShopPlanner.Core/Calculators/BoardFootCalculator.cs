using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Board measure, by which lumber is paid for.</summary>
internal static class BoardFootCalculator
{
    private static readonly SourceNote Definition = new(
        "Board measure: a board foot is 144 cubic inches (Carpentry and Woodwork, 1910s)",
        Certainty.Read
    );

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<FeetAsked, FeetAsked>(
        "board-feet",
        "Board feet",
        "How much lumber you pay for."
    )
    {
        Keys =
        [
            Key.Length("thickness", "Thickness as sold", most: "12 in").Hint("Nominal, or rough thickness for hardwood"),
            Key.Length("width", "Width", most: "48 in"),
            Key.Length("length", "Length", most: "40 ft"),
            Key.Count("count", "Pieces", "1", "1", "100000"),
            Key.Choice(
                "thin",
                "Stock under 1 in",
                "as-inch",
                new("as-inch", "counts as 1 in"),
                new("real", "counts as its real thickness")
            ),
        ],
        Read = reader =>
            new(
                reader.Length("thickness"),
                reader.Length("width"),
                reader.Length("length"),
                reader.Count("count"),
                reader.Choice("thin") == "real" ? ThinStock.RealThickness : ThinStock.AsOneInch
            ),
        Make = asked => asked,
        Results = asked => [Feet(asked)],
    }.Form;

    private static Working<double> Feet(FeetAsked asked)
    {
        var inch = Length.FromInches(1);
        var counted = asked.Thin == ThinStock.AsOneInch ? Length.Max(asked.Thickness, inch) : asked.Thickness;
        var feet = BoardMeasure.Counted(asked.Thickness, asked.Width, asked.Length, asked.Count, asked.Thin).ToBoardFeet();
        return Working.Of(
            "Board feet",
            (double)feet,
            QuantityKind.BoardFeet,
            2,
            "{count} × {thickness} × {width} × {length} ÷ 144 in³",
            Definition,
            ("count", Working.Given("Pieces", asked.Count, QuantityKind.Bare, 0)),
            ("thickness", Working.Given("Thickness counted", counted)),
            ("width", Working.Given("Width", asked.Width)),
            ("length", Working.Given("Length", asked.Length))
        );
    }

    private sealed record FeetAsked(Length Thickness, Length Width, Length Length, int Count, ThinStock Thin);
}
