using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Drawers.</summary>
internal static class DrawerCalculator
{
    private static readonly Length Slack = Length.FromInches(0.125m);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("opening-width", "Opening, width", most: "6 ft"),
        Key.Length("opening-height", "Opening, height", most: "3 ft"),
        Key.Length("opening-depth", "Depth behind the front", most: "4 ft"),
        Key.LengthOrZero("slide-clearance", "Room at each side", "1/2 in", "2 in")
            .Hint("By the slide's sheet; 1/2 in for most side-mount slides (common practice)"),
        Key.Choice(
            "slides",
            "Runs on",
            "side",
            new("side", "slides at its sides, as long as the box"),
            new("none", "runners of wood")
        ),
        Key.Choice(
            "joint",
            "Corners",
            "butt",
            new("butt", "butted"),
            new("rabbet", "in rabbets of the sides"),
            new("dado", "tongues in dadoes of the sides"),
            new("dovetail", "through dovetails")
        ),
        Key.Length("side", "Thickness of sides, front and back", "1/2 in", most: "2 in"),
        Key.Length("bottom", "Thickness of the bottom", "1/4 in", most: "1 in"),
        Key.LengthOrZero("groove", "Depth of the bottom's groove", "1/4 in", "1 in")
            .Hint("0: the bottom is planted on from below"),
        Key.LengthOrZero("play", "Bottom smaller than its grooves, in all", "1/16 in", "1/2 in"),
        Key.LengthOrZero("height-clearance", "Room above and below together", "1 in", "6 in"),
        Key.LengthOrZero("depth-clearance", "Room behind the box", "0 in", "12 in"),
    ];

    private static readonly ImmutableArray<Refusal<DrawerAsked>> Refusals =
    [
        new(
            "slide-clearance",
            asked => (asked.Clearance.Value + asked.Side.Value) * 2 >= asked.Width.Value,
            asked =>
                $"and sides of {asked.Say(asked.Side.Value)} leave nothing between them: "
                + $"an opening of {asked.Say(asked.Width.Value)} holds both sides and more"
        ),
        new(
            "height-clearance",
            asked => asked.Room.Value >= asked.Height.Value,
            asked => $"leaves no height for the box: less than {asked.Say(asked.Height.Value)} is wanted"
        ),
        new(
            "groove",
            asked => asked.Groove.Value >= asked.Side.Value,
            asked => $"goes through the side: less than {asked.Say(asked.Side.Value)} is wanted"
        ),
        new(
            "bottom",
            asked => asked.Bottom >= asked.Height.Value - asked.Room.Value,
            asked => $"is as thick as the box is high: less than {asked.Say(asked.Height.Value - asked.Room.Value)} is wanted"
        ),
        new(
            "play",
            asked => asked.Groove.Value.IsPositive && asked.Play.Value >= asked.Groove.Value * 2,
            asked => $"is as much as both grooves are deep: less than {asked.Say(asked.Groove.Value * 2)} is wanted"
        ),
        new(
            "depth-clearance",
            asked => !asked.Behind.Value.IsPositive,
            asked => $"leaves nothing of the depth: less than {asked.Say(asked.Depth.Value)} is wanted"
        ),
        new(
            "opening-depth",
            asked => asked.HasSlides && asked.Behind.Value < Slides.Sold(asked.Unit)[0],
            asked => $"is shorter than the shortest usual slide: at least {asked.Say(Slides.Sold(asked.Unit)[0])}, or slides=none"
        ),
        new(
            "opening-depth",
            asked => asked.Behind.Value <= asked.Side.Value * 2,
            asked => $"is no more than front and back are thick: more than {asked.Say(asked.Side.Value * 2)} is wanted"
        ),
    ];

    private static readonly ImmutableArray<Remark<DrawerMade>> Verdicts =
    [
        new(
            Watch,
            made => made.Spare is { } spare && spare < Slack,
            made =>
                $"The slide is as long as the depth but for {made.Asked.Say(made.Spare!.Value)}: "
                + "look up in its sheet whether it wants more."
        ),
        new(
            Watch,
            made => made.Slide is not null,
            "Buy the slides first: their sheet says what room they want, and a box a little too wide jams."
        ),
        new(
            Watch,
            made => made.Asked.Joint == DrawerJoint.Butt,
            "Butted corners hold by their screws or nails only: end grain glues badly (Handwork in Wood)."
        ),
        new(
            Watch,
            made => made.Asked.Groove.Value * 2 > made.Asked.Side.Value,
            made =>
                "The bottom's groove takes more than half of the side: "
                + $"{made.Asked.Say(Length.FromTicks(made.Asked.Side.Value.Ticks / 2))} is enough."
        ),
        new(
            Watch,
            made => made.Racks,
            "A box much wider than deep, or higher than deep, racks and binds (common practice): "
                + "keep it long, or use a guide in the middle."
        ),
        new(Fine, "Check the box for square by equal diagonals before the glue sets."),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<DrawerAsked, DrawerMade>(
        "drawer",
        "Drawer",
        "The box of a drawer from its opening, its parts, and the slide that fits."
    )
    {
        Keys = Keys,
        Read = DrawerAsked.Read,
        Refusals = Refusals,
        Make = DrawerMade.Of,
        Results = made => made.Sizes,
        Verdicts = Verdicts,
        MostSevereFirst = true,
        Cautions = [Cautions.Tipping, Cautions.Guards, Cautions.GrooveWithoutGuard, Cautions.TrappedCutoff, Cautions.SmallParts],
        Parts = made => made.Proposed,
    }.Form;
}
