using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings.Forms;

/// <summary>Sizes and board measure.</summary>
internal static class MeasureForms
{
    public static readonly ImmutableArray<WorkingForm> All = [BoardFeet()];

    private static readonly SourceNote Definition = new("Board measure: a board foot is 144 cubic inches (Carpentry and Woodwork, 1910s)", Certainty.Read);

    private static WorkingForm BoardFeet() => new(
        "board-feet", "Board feet", "How much lumber is paid for.",
        [
            new("thickness", "Thickness as sold", KeyKind.Length) { Most = "12 in", Hint = "Nominal, or rough for hardwood" },
            new("width", "Width", KeyKind.Length) { Most = "48 in" },
            new("length", "Length", KeyKind.Length) { Most = "40 ft" },
            new("count", "Pieces", KeyKind.Count) { Default = "1", Least = "1", Most = "100000" },
            new("thin", "Stock under an inch", KeyKind.Choice)
            {
                Default = "as-inch", Choices = [new("as-inch", "counted as an inch"), new("real", "by its real thickness")],
            },
        ],
        reader =>
        {
            var (thickness, width, length) = (reader.Length("thickness"), reader.Length("width"), reader.Length("length"));
            var count = reader.Count("count");
            var thin = reader.Choice("thin") == "real" ? ThinStock.RealThickness : ThinStock.AsOneInch;
            return () => Answer(thickness, width, length, count, thin);
        });

    private static FormOutcome Answer(Length thickness, Length width, Length length, int count, ThinStock thin)
    {
        var counted = thin == ThinStock.AsOneInch ? Length.Max(thickness, Length.FromInches(1)) : thickness;
        var feet = BoardMeasure.Counted(thickness, width, length, count, thin).ToBoardFeet();
        return new Answer([Working.Of(
            "Board feet", (double)feet, QuantityKind.BoardFeet, 2, "{count} × {thickness} × {width} × {length} ÷ 144 in³", Definition,
            ("count", Working.Given("Pieces", count, QuantityKind.Bare, 0)), ("thickness", Working.Given("Thickness counted", counted)),
            ("width", Working.Given("Width", width)), ("length", Working.Given("Length", length)))]);
    }
}
