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
        Key.Length("opening-width", "Opening width", most: "6 ft"),
        Key.Length("opening-height", "Opening height", most: "3 ft"),
        Key.Length("opening-depth", "Depth behind the front", most: "4 ft"),
        Key.LengthOrZero("slide-clearance", "Clearance at each side", most: "2 in")
            .Optional()
            .Hint("From the slide's sheet. Blank = 1/2 in with slides, 1/16 in on wood runners"),
        Key.Choice("slides", "Runs on", "side", new("side", "side-mount slides as long as the box"), new("none", "wood runners")),
        Key.Choice(
            "joint",
            "Corners",
            "butt",
            new("butt", "butted"),
            new("rabbet", "rabbets in the sides"),
            new("dado", "tongues in dadoes in the sides"),
            new("dovetail", "through dovetails")
        ),
        Key.Length("side", "Thickness of sides, front and back", "1/2 in", most: "2 in"),
        Key.Length("bottom", "Thickness of the bottom", "1/4 in", most: "1 in"),
        Key.LengthOrZero("groove", "Depth of the bottom's groove", "1/4 in", "1 in")
            .Hint("0 = the bottom is fastened on from below"),
        Key.LengthOrZero("groove-height", "Groove above the lower edge", "1/4 in", "6 in")
            .Hint("1/4 in is common practice; for undermount slides, see their sheet"),
        Key.LengthOrZero("play", "Bottom smaller than its grooves by", "1/16 in", "1/2 in"),
        Key.LengthOrZero("height-clearance", "Clearance above and below, total", "1 in", "6 in"),
        Key.LengthOrZero("depth-clearance", "Clearance behind the box", "0 in", "12 in"),
    ];

    private static readonly ImmutableArray<Refusal<DrawerAsked>> Refusals =
    [
        new(
            "slide-clearance",
            asked => (asked.Clearance.Value + asked.Side.Value) * 2 >= asked.Width.Value,
            asked =>
                $"and sides of {asked.Say(asked.Side.Value)} leave nothing between them: "
                + $"an opening of {asked.Say(asked.Width.Value)} holds both sides and more"
        )
        {
            Quote = asked => asked.Say(asked.Clearance.Value),
        },
        new(
            "height-clearance",
            asked => asked.Room.Value >= asked.Height.Value,
            asked => $"leaves no height for the box: it must be less than {asked.Say(asked.Height.Value)}"
        ),
        new(
            "groove",
            asked => asked.Groove.Value >= asked.Side.Value,
            asked => $"goes through the side: it must be less than {asked.Say(asked.Side.Value)}"
        ),
        new(
            "bottom",
            asked => asked.Bottom >= asked.Height.Value - asked.Room.Value,
            asked => $"is as thick as the box is high: it must be less than {asked.Say(asked.Height.Value - asked.Room.Value)}"
        ),
        new(
            "groove-height",
            asked => !asked.IsPlanted && asked.GrooveHeight + asked.Bottom >= asked.Height.Value - asked.Room.Value,
            asked =>
                "leaves no side above the bottom: it must be less than "
                + asked.Say(asked.Height.Value - asked.Room.Value - asked.Bottom)
        ),
        new(
            "play",
            asked => asked.Groove.Value.IsPositive && asked.Play.Value >= asked.Groove.Value * 2,
            asked => $"is as much as both grooves are deep: it must be less than {asked.Say(asked.Groove.Value * 2)}"
        ),
        new(
            "depth-clearance",
            asked => !asked.Behind.Value.IsPositive,
            asked => $"leaves nothing of the depth: it must be less than {asked.Say(asked.Depth.Value)}"
        ),
        new(
            "opening-depth",
            asked => asked.HasSlides && asked.Behind.Value < Slides.Sold(asked.Unit)[0],
            asked => $"is shorter than any slide sold: at least {asked.Say(Slides.Sold(asked.Unit)[0])}, or wood runners"
        ),
        new(
            "opening-depth",
            asked => asked.Behind.Value <= asked.Side.Value * 2,
            asked => $"is no more than the thickness of front and back: it must be more than {asked.Say(asked.Side.Value * 2)}"
        ),
    ];

    private static readonly ImmutableArray<Remark<DrawerMade>> Verdicts =
    [
        new(
            Watch,
            made => made.Spare is { } spare && spare < Slack,
            made => $"The slide leaves only {made.Asked.Say(made.Spare!.Value)} behind it. Check its sheet: it may need more."
        ),
        new(
            Watch,
            made => made.Slide is not null,
            "Buy the slides first. Their sheet says what clearance they need, and a box a little too wide jams."
        ),
        new(
            Watch,
            made => made.Asked.Joint == DrawerJoint.Butt,
            "Butted corners hold by their screws or nails alone: end grain glues badly (Handwork in Wood)."
        ),
        new(
            Watch,
            made => made.Asked.Groove.Value * 2 > made.Asked.Side.Value,
            made =>
                "The bottom's groove takes more than half of the side. "
                + $"{made.Asked.Say(Length.FromTicks(made.Asked.Side.Value.Ticks / 2))} is enough."
        ),
        new(
            Watch,
            made => made.Racks,
            "A box much wider or taller than it is deep racks and binds (common practice). "
                + "Make it deeper, or use a center guide."
        ),
        new(Tip, "Check that both diagonals are equal before the glue sets."),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<DrawerAsked, DrawerMade>(
        "drawer",
        "Drawer",
        "A drawer box from its opening: parts, and the slide that fits."
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
