using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Doors on butt hinges.</summary>
internal static class ButtHingeCalculator
{
    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("height", "Height of the door", least: "5 in", most: "10 ft"),
        Key.Length("width", "Width of the door", least: "2 in", most: "6 ft"),
        Key.Length("thickness", "Thickness of the door", "3/4 in", "3/8 in", "3 in"),
        Key.Length("knuckle", "Thickness of the knuckle", "3/16 in", "1/32 in", "1 in").Hint("Measure the closed hinge"),
        Key.LengthOrZero("gap", "Gap between door and frame", "1/16 in", "1/4 in"),
        Key.Length("hinge", "Length of the hinge", least: "1/2 in", most: "8 in").Optional().Hint("Blank = by the door"),
    ];

    private static readonly ImmutableArray<Refusal<ButtAsked>> Refusals =
    [
        new(
            "gap",
            asked => asked.Gap.Value >= asked.Knuckle.Value,
            asked =>
                "leaves nothing to let in: it must be less than the knuckle's "
                + $"{asked.Say(asked.Knuckle.Value)}, or screw the hinge on without a recess"
        ),
        new(
            "hinge",
            asked => !asked.Fits,
            asked =>
                $"is too long for a door {asked.Say(asked.Height.Value)} high: the hinges would crowd each other. "
                + "Enter a shorter one"
        )
        {
            Quote = asked => LengthFormat.WithUnit(asked.Size.Value, asked.Unit),
        },
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<ButtAsked, ButtMade>(
        "butt-hinges",
        "Butt hinges",
        "How many butt hinges a door needs, how long, where they go, and how deep to let them in."
    )
    {
        Keys = Keys,
        Read = ButtAsked.Read,
        Refusals = Refusals,
        Make = asked => new(asked),
        Results = made => made.Sizes,
        Verdicts =
        [
            new(
                Watch,
                made => made.Span <= made.Asked.Width.Value,
                "The end hinges are no farther apart than the door is wide, so it will sag. Use two narrower doors."
            ),
            new(
                Watch,
                made => made.Swing.Value > made.Asked.Gap.Value,
                made =>
                    $"The gap is too small for the swinging edge. Plane a slight bevel on it, inward, or leave at least "
                    + $"{made.Swing.Figure.Text(made.Asked.Unit)} with the pin in line with the face."
            ),
            new(
                Tip,
                "If the door springs back from the frame, a recess is too deep: put card under the leaf. If it leaves a gap at "
                    + "the hinge side, cut the recess deeper."
            ),
            new(Tip, "The pin in line with the door's face opens flat and racks least. Farther out, the door opens wider."),
            new(
                Tip,
                made => !made.Asked.IsHouse,
                "On a framed door, put the hinges just below the top rail and just above the bottom rail instead."
            ),
        ],
        MostSevereFirst = true,
        Cautions = [ShopCautions.Chisels, ShopCautions.Router],
    }.Form;

    private sealed record ButtAsked(
        LengthUnit Unit,
        Working<Length> Height,
        Working<Length> Width,
        Working<Length> Thickness,
        Working<Length> Knuckle,
        Working<Length> Gap,
        Working<Length> Size
    ) : Question(Unit)
    {
        public bool IsHouse => ButtHinges.IsHouse(Height.Value, Thickness.Value);

        public bool Fits => ButtHinges.Fits(Height.Value, Size.Value, IsHouse);

        public static ButtAsked Read(FormReader reader)
        {
            var (height, width) = (reader.Given("Door height", "height"), reader.Given("Door width", "width"));
            var thickness = reader.Given("Door thickness", "thickness");
            return new(
                reader.Unit,
                height,
                width,
                thickness,
                reader.Given("Knuckle", "knuckle"),
                reader.Given("Gap", "gap"),
                reader.MaybeGiven("Hinge length", "hinge") ?? ButtHinges.Size(height, width, thickness)
            );
        }
    }

    private sealed record ButtMade(ButtAsked Asked)
    {
        public Working<int> Count { get; } = ButtHinges.Count(Asked.Height, Asked.Width);

        public Working<Length> Swing { get; } = ButtHinges.Swing(Asked.Width, Asked.Thickness);

        public Length Span => Places.Value[^1] - Places.Value[0];

        public IEnumerable<Working> Sizes =>
            [Count, Asked.Size, Places, ButtHinges.Gain(Asked.Knuckle, Asked.Gap), ButtHinges.Leaf(Asked.Thickness), Swing];

        private Working<ImmutableArray<Length>> Places => ButtHinges.Places(Asked.Height, Asked.Size, Count, Asked.IsHouse);
    }
}
