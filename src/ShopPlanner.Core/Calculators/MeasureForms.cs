using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Sizes and board measure.</summary>
internal static class MeasureForms
{
    public static readonly ImmutableArray<WorkingForm> All = [ActualSize(), BoardFeet()];

    private static readonly SourceNote Definition = new(
        "Board measure: a board foot is 144 cubic inches (Carpentry and Woodwork, 1910s)",
        Certainty.Read
    );

    private static WorkingForm ActualSize() =>
        new(
            "actual-size",
            "Actual size",
            "What a board sold by its nominal size really measures, dry and planed.",
            [
                new("nominal", "Sold as", KeyKind.Text)
                {
                    Default = "1x3",
                    Hint = "write 1x3, 2x4, 5/4x6, or a hardwood thickness, 4/4",
                },
                new("kind", "Kind", KeyKind.Choice)
                {
                    Default = "softwood",
                    Choices = [new("softwood", "softwood"), new("hardwood", "hardwood")],
                },
            ],
            reader =>
            {
                var (nominal, kind) = (
                    reader.Text("nominal")!,
                    reader.Choice("kind") == "hardwood" ? WoodKind.Hardwood : WoodKind.Softwood
                );
                return () =>
                    kind == WoodKind.Hardwood
                    && HardwoodSizes.Thicknesses.FirstOrDefault(one => one.Name == nominal.Trim()) is { } quarters
                        ? Quarters(quarters)
                    : MaterialCatalogue.TryFindSection(nominal, kind, out var section) ? Section(section)
                    : Fault.Of(
                        "nominal",
                        nominal,
                        "is not a size that is sold: write 1x3, 2x4, 5/4x6, or a hardwood thickness such as 4/4"
                    );
            }
        );

    private static FormOutcome Section(BoardSection section) =>
        new Answer([
            Working.Looked("Thickness", section.Thickness, new LengthFigure(section.Thickness), section.Source),
            Working.Looked("Width", section.Width, new LengthFigure(section.Width), section.Source),
        ])
        {
            Verdicts = [new(Severity.Watch, "Measure the boards in hand: they swell, shrink, and differ from mill to mill.")],
        };

    private static FormOutcome Quarters(HardwoodThickness size) =>
        new Answer([
            Thick("Surfaced on two sides", size.TwoSides),
            Thick("Surfaced on one side", size.OneSide),
            Thick("Rough", size.Rough),
        ])
        {
            Verdicts = [new(Severity.Watch, "4/4 surfaced is sold at 13/16, at 15/16 and at 3/4: measure it.")],
        };

    private static Working<Length> Thick(string name, Length thickness) =>
        Working.Looked(name, thickness, new LengthFigure(thickness), HardwoodSizes.GradingSource);

    private static WorkingForm BoardFeet() =>
        new(
            "board-feet",
            "Board feet",
            "How much lumber is paid for.",
            [
                new("thickness", "Thickness as sold", KeyKind.Length) { Most = "12 in", Hint = "Nominal, or rough for hardwood" },
                new("width", "Width", KeyKind.Length) { Most = "48 in" },
                new("length", "Length", KeyKind.Length) { Most = "40 ft" },
                new("count", "Pieces", KeyKind.Count)
                {
                    Default = "1",
                    Least = "1",
                    Most = "100000",
                },
                new("thin", "Stock under an inch", KeyKind.Choice)
                {
                    Default = "as-inch",
                    Choices = [new("as-inch", "counted as an inch"), new("real", "by its real thickness")],
                },
            ],
            reader =>
            {
                var (thickness, width, length) = (reader.Length("thickness"), reader.Length("width"), reader.Length("length"));
                var count = reader.Count("count");
                var thin = reader.Choice("thin") == "real" ? ThinStock.RealThickness : ThinStock.AsOneInch;
                return () => Answer(thickness, width, length, count, thin);
            }
        );

    private static FormOutcome Answer(Length thickness, Length width, Length length, int count, ThinStock thin)
    {
        var counted = thin == ThinStock.AsOneInch ? Length.Max(thickness, Length.FromInches(1)) : thickness;
        var feet = BoardMeasure.Counted(thickness, width, length, count, thin).ToBoardFeet();
        return new Answer([
            Working.Of(
                "Board feet",
                (double)feet,
                QuantityKind.BoardFeet,
                2,
                "{count} × {thickness} × {width} × {length} ÷ 144 in³",
                Definition,
                ("count", Working.Given("Pieces", count, QuantityKind.Bare, 0)),
                ("thickness", Working.Given("Thickness counted", counted)),
                ("width", Working.Given("Width", width)),
                ("length", Working.Given("Length", length))
            ),
        ]);
    }
}
