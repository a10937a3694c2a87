using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What a door hangs on.</summary>
internal static class HingeForms
{
    public static readonly ImmutableArray<WorkingForm> All = [HingesForm()];

    private static readonly Length CupDepth = Length.FromMillimetres(13);

    private static WorkingForm HingesForm() =>
        new(
            "hinges",
            "Hinges",
            "How many hinges a door wants, where they sit, and how their cups are bored.",
            [
                new("height", "Height of the door", KeyKind.Length) { Least = "4 in", Most = "100 in" },
                new("width", "Width of the door", KeyKind.Length) { Least = "2 in", Most = "4 ft" },
                new("weight", "Weight of the door", KeyKind.Quantity)
                {
                    Quantity = QuantityKind.Mass,
                    Optional = true,
                    Least = "0.1 lb",
                    Most = "300 lb",
                    Hint = "Left out, it is worked out from wood and thickness",
                },
                new("species", "Wood or sheet", KeyKind.Choice) { Default = "yellow-poplar", Choices = WoodForms.Strong },
                new("thickness", "Thickness", KeyKind.Length)
                {
                    Default = "3/4 in",
                    Least = "3/8 in",
                    Most = "3 in",
                },
                new("fit", "How the door fits", KeyKind.Choice)
                {
                    Default = "overlay",
                    Choices = [new("overlay", "on the front"), new("inset", "in the opening")],
                },
                new("edge", "Wood between cup and edge", KeyKind.Length)
                {
                    Default = "5 mm",
                    Least = "3 mm",
                    Most = "8 mm",
                },
            ],
            reader =>
            {
                var (height, width, thickness) = (
                    Working.Given("Height", reader.Length("height")),
                    Working.Given("Width", reader.Length("width")),
                    Working.Given("Thickness", reader.Length("thickness"))
                );
                var row = StrengthTable.Find(reader.Choice("species"))!;
                var weight = reader.MaybeQuantity("weight") is { } kg
                    ? Working.Given("Weight", kg, QuantityKind.Mass, 1)
                    : Weight.Of(
                        Area.Of(height.Value, width.Value) * thickness.Value,
                        Weight.Density(row, Working.Given("Moisture", 8, QuantityKind.Percent, 0))
                    );
                var edge = Working.Given("Wood to the edge", reader.Length("edge"));
                var inset = reader.Choice("fit") == "inset";
                return () => Answer(height, width, thickness, weight, edge, inset);
            }
        );

    private static FormOutcome Answer(
        Working<Length> height,
        Working<Length> width,
        Working<Length> thickness,
        Working<double> weight,
        Working<Length> edge,
        bool inset
    )
    {
        var count = Hinges.Count(height, weight);
        var places = Hinges.Places(height, count);
        var diameter = Working.Looked(
            "Cup",
            Length.FromMillimetres(35),
            new LengthFigure(Length.FromMillimetres(35)),
            Hinges.MakerSheet
        );
        var depth = Working.Looked("Depth of the cup's hole, at most", CupDepth, new LengthFigure(CupDepth), Hinges.MakerSheet);
        var screw = Working.Looked(
            "Screws",
            "5/8 in",
            new WordFigure("#6 × 5/8 in, 45 mm apart, 9.5 mm behind the cup"),
            Hinges.MakerSheet
        );
        return new Answer([count, places, diameter, depth, Hinges.CupCentre(edge), screw, weight])
        {
            Verdicts = [.. Verdicts(places, width.Value, thickness.Value, inset, count)],
            Cautions = [Cautions.SmallParts],
        };
    }

    private static IEnumerable<Verdict> Verdicts(
        Working<ImmutableArray<Length>> places,
        Length width,
        Length thickness,
        bool inset,
        Working<int> count
    )
    {
        if (thickness < CupDepth + Length.FromMillimetres(2))
            yield return new(
                Severity.Fails,
                "The door is too thin for a cup of this depth: the bit would come through. Use butt hinges or a shallower cup."
            );
        if (count.OutsideRange is not null)
            yield return new(Severity.Fails, "Too heavy for cup hinges by the maker's table.");
        if (places.Value[^1] - places.Value[0] <= width)
            yield return new(
                Severity.Watch,
                "The end hinges are no further apart than the door is wide: it will sag. Two narrower doors carry better."
            );
        yield return new(
            Severity.Fine,
            inset
                ? "Inset: the plate sits back by the door's thickness, and the hinge is one made for inset doors."
                : "Overlay: how far the door covers the side is set by cup distance and plate; follow the maker's sheet."
        );
    }
}
