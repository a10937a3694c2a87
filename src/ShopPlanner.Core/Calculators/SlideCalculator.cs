using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Drawer boxes by the slides they run on.</summary>
internal static class SlideCalculator
{
    // Undermount slides are a little longer than they are called.
    private static readonly Length Behind = Length.FromInches(0.5m);
    private static readonly Length ThickestSide = Length.FromInches(0.625m);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Choice(
            "slide",
            "Slides",
            "undermount",
            new("undermount", "undermount, hidden below"),
            new("side", "ball-bearing, on the sides"),
            new("roller", "rollers, at the lower edge")
        ),
        Key.Length("width", "Opening width", most: "6 ft"),
        Key.Length("height", "Opening height", most: "3 ft"),
        Key.Length("depth", "Depth behind the front", most: "4 ft"),
        Key.Length("side", "Thickness of the drawer sides", "1/2 in", most: "1 in"),
        Key.Length("each", "Clearance at each side, from the slide's sheet", most: "3 in")
            .Optional()
            .Hint("Undermount: from the case to the inside of the drawer side. Blank = usual"),
    ];

    private static readonly ImmutableArray<Refusal<SlideAsked>> Refusals =
    [
        new(
            "width",
            asked => asked.BoxWidth.Value <= asked.Side.Value * 2,
            asked => $"leaves no drawer between slides and sides: more than {asked.Say(asked.LeastOpening)}"
        ),
        new(
            "each",
            asked => asked.BoxWidth.Value >= asked.Width.Value,
            asked =>
                $"makes the box as wide as the opening: more than {asked.Say(asked.Side.Value)}, "
                + "measured to the inside of the drawer side"
        ),
        new(
            "height",
            asked => !asked.BoxHeight.Value.IsPositive,
            asked => $"leaves no height for the box: more than {asked.Say(asked.Height.Value - asked.BoxHeight.Value)}"
        ),
        new(
            "depth",
            asked => asked.Slide is null,
            asked => $"is shorter than any slide sold: at least {asked.Say(Slides.Sold(asked.Unit)[0] + asked.Spare)}"
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<SlideAsked, SlideAsked>(
        "slides",
        "Drawer slides",
        "The drawer box that undermount, ball-bearing or roller slides need."
    )
    {
        Keys = Keys,
        Read = SlideAsked.Read,
        Refusals = Refusals,
        Make = asked => asked,
        Results = asked => asked.Sizes,
        Verdicts =
        [
            new(Watch, "Buy the slides first. Their sheet has the last word, and a box a little too wide jams."),
            new(
                Watch,
                asked => asked.Kind == SlideKind.Undermount && asked.Side.Value > ThickestSide,
                "Most undermount slides take sides up to 5/8 in (16 mm). For thicker ones look for slides made for them."
            ),
            new(
                Watch,
                asked => asked.Kind == SlideKind.Roller,
                "Roller slides are handed: the case gets a left and a right one, and the drawer lifts to come out."
            ),
            new(
                Tip,
                asked => asked.Kind == SlideKind.Undermount,
                "A box that is 1/32 in (1 mm) narrow still runs. Drill the small holes in the back with the jig that belongs to "
                    + "the slides."
            ),
        ],
        Cautions = [Cautions.Tipping, Cautions.Guards, Cautions.TrappedCutoff, Cautions.SmallParts],
    }.Form;

    private sealed record SlideAsked(
        LengthUnit Unit,
        SlideKind Kind,
        Working<Length> Width,
        Working<Length> Height,
        Working<Length> Depth,
        Working<Length> Side,
        Working<Length>? Each
    ) : Question(Unit)
    {
        public Working<Length> BoxWidth { get; } = SlideBoxes.Width(Kind, Width, Side, Each);

        public Working<Length> BoxHeight { get; } = SlideBoxes.Height(Kind, Height);

        // What must stay free behind the slide's nominal length.
        public Length Spare => Kind == SlideKind.Undermount ? Behind : Length.Zero;

        public Length LeastOpening => Width.Value - BoxWidth.Value + (Side.Value * 2);

        public Working<Length>? Slide =>
            Slides.Longest(
                Working.Of(
                    "Depth for the slide",
                    Depth.Value - Spare,
                    "{depth} − {spare}",
                    Slides.Lengths,
                    ("depth", Depth),
                    ("spare", Working.Looked("Room behind", Spare, new LengthFigure(Spare), Slides.Lengths))
                ),
                Unit
            );

        public IEnumerable<Working?> Sizes =>
            [
                BoxWidth,
                Working.Of(
                    "Box width, inside",
                    BoxWidth.Value - (Side.Value * 2),
                    "{outside} − 2 × {side}",
                    Working.Geometry,
                    ("outside", BoxWidth),
                    ("side", Side)
                ),
                BoxHeight,
                SlideBoxes.Depth(Slide!),
                Slide,
                .. Notches,
            ];

        private IEnumerable<Working> Notches =>
            Kind != SlideKind.Undermount
                ? []
                :
                [
                    Fixed("Bottom above the sides' lower edges", SlideBoxes.Recess),
                    Fixed("Notch at each side of the back, wide", SlideBoxes.Notch),
                ];

        public static SlideAsked Read(FormReader reader) =>
            new(
                reader.Unit,
                Enum.Parse<SlideKind>(reader.Choice("slide"), true),
                reader.Given("Opening width", "width"),
                reader.Given("Opening height", "height"),
                reader.Given("Depth behind the front", "depth"),
                reader.Given("Drawer side", "side"),
                reader.MaybeGiven("Clearance at each side", "each")
            );

        private static Working<Length> Fixed(string name, Length value) =>
            Working.Looked(name, value, new LengthFigure(value), SlideBoxes.NotchRule);
    }
}
