using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>What a door hangs on.</summary>
internal static class HingeCalculator
{
    // Wood left behind the cup, so that the bit does not show.
    private static readonly Length LeastBehind = Length.FromMillimetres(2);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("height", "Height of the door", least: "1 in", most: "100 in"),
        Key.Length("width", "Width of the door", least: "2 in", most: "4 ft"),
        Key.Quantity("weight", "Weight of the door", QuantityKind.Mass, null, "0.1 lb", "300 lb")
            .Optional()
            .Hint("Blank = worked out from wood and thickness"),
        Key.Choice("species", "Wood or sheet", "yellow-poplar", WoodChoices.Strong),
        Key.Length("thickness", "Thickness", "3/4 in", "3/8 in", "3 in"),
        Key.Choice(
            "fit",
            "How the door fits",
            "overlay",
            new("overlay", "overlay, on the front"),
            new("inset", "inset, in the opening")
        ),
        Key.Length("edge", "Wood between cup and edge", "5 mm", "3 mm", "8 mm"),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<HingesAsked, HingesMade>(
        "hinges",
        "Hinges",
        "How many hinges a door needs, where they go, and how to drill their cups."
    )
    {
        Keys = Keys,
        Read = HingesAsked.Read,
        Make = HingesMade.Of,
        Failures =
        [
            new(
                made => IsHeavy(made) ? "weight" : "height",
                made => !Hinges.Fit(made.Asked.Height.Value, made.Count.Value),
                made =>
                    $"leaves no room for {made.Count.Value} cup hinges, which need "
                    + $"{made.Asked.Say(Hinges.Room * made.Count.Value)} of height: use butt hinges"
            )
            {
                Quote = made => (IsHeavy(made) ? (Working)made.Asked.Weight : made.Asked.Height).Figure.Text(made.Asked.Unit),
            },
        ],
        Results = made => made.Sizes,
        Verdicts =
        [
            new(
                Fails,
                made => made.Asked.Thickness.Value < HingesMade.CupDepth + LeastBehind,
                "The door is too thin for a cup of this depth: the bit would come through. Use butt hinges or a shallower cup."
            ),
            new(Fails, made => made.Count.OutsideRange is not null, "Too heavy for cup hinges by the maker's table."),
            new(
                Watch,
                made => made.Places.Value[^1] - made.Places.Value[0] <= made.Asked.Width.Value,
                "The end hinges are no farther apart than the door is wide, so it will sag. Use two narrower doors."
            ),
            new(
                Tip,
                made =>
                    made.Asked.IsInset
                        ? "Inset: set the plate back by the door's thickness, and use a hinge made for inset doors."
                        : "Overlay: cup distance and plate set how far the door covers the side. Follow the maker's sheet."
            ),
        ],
        Cautions = [Cautions.LargeBit, Cautions.Drilling, Cautions.SmallParts],
    }.Form;

    // Too many hinges because of its weight, not too low for two.
    private static bool IsHeavy(HingesMade made) => Hinges.Fit(made.Asked.Height.Value, 2);
}
