using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Drawers.</summary>
internal static class DrawerForms
{
    public static readonly ImmutableArray<WorkingForm> All = [DrawerForm()];

    private static readonly Length Slack = Length.FromInches(0.125m);

    private static WorkingForm DrawerForm() =>
        new(
            "drawer",
            "Drawer",
            "The box of a drawer from its opening, its parts, and the slide that fits.",
            [
                new("opening-width", "Opening, width", KeyKind.Length) { Most = "6 ft" },
                new("opening-height", "Opening, height", KeyKind.Length) { Most = "3 ft" },
                new("opening-depth", "Depth behind the front", KeyKind.Length) { Most = "4 ft" },
                new("slide-clearance", "Room at each side", KeyKind.LengthOrZero)
                {
                    Default = "1/2 in",
                    Most = "2 in",
                    Hint = "By the slide's sheet; 1/2 in for most side-mount slides (common " + "practice)",
                },
                new("slides", "Runs on", KeyKind.Choice)
                {
                    Default = "side",
                    Choices = [new("side", "slides at its sides, as long as the box"), new("none", "runners of wood")],
                },
                new("joint", "Corners", KeyKind.Choice)
                {
                    Default = "butt",
                    Choices =
                    [
                        new("butt", "butted"),
                        new("rabbet", "in rabbets of the sides"),
                        new("dado", "tongues in dadoes of the sides"),
                        new("dovetail", "through dovetails"),
                    ],
                },
                new("side", "Thickness of sides, front and back", KeyKind.Length) { Default = "1/2 in", Most = "2 in" },
                new("bottom", "Thickness of the bottom", KeyKind.Length) { Default = "1/4 in", Most = "1 in" },
                new("groove", "Depth of the bottom's groove", KeyKind.LengthOrZero)
                {
                    Default = "1/4 in",
                    Most = "1 in",
                    Hint = "0: the bottom is planted on from below",
                },
                new("play", "Bottom smaller than its grooves, in all", KeyKind.LengthOrZero)
                {
                    Default = "1/16 in",
                    Most = "1/2 in",
                },
                new("height-clearance", "Room above and below together", KeyKind.LengthOrZero)
                {
                    Default = "1 in",
                    Most = "6 in",
                },
                new("depth-clearance", "Room behind the box", KeyKind.LengthOrZero) { Default = "0 in", Most = "12 in" },
            ],
            reader =>
            {
                var asked = DrawerAsked.Read(reader);
                return () => Answer(asked, reader);
            }
        );

    private static FormOutcome Answer(DrawerAsked asked, FormReader reader)
    {
        if (Refused(asked, reader) is { } fault)
            return fault;
        var slide = asked.HasSlides ? Slides.Longest(asked.Behind, reader.Unit) : null;
        var depth = slide is null
            ? Working.Of("Box depth", asked.Behind.Value, "{behind}", Working.Geometry, ("behind", asked.Behind))
            : Working.Of("Box depth", slide.Value, "as long as the {slide}", Slides.Lengths, ("slide", slide));
        var height = Working.Of(
            "Box height",
            asked.Height.Value - asked.Room.Value,
            "{opening} − {room}",
            Working.Geometry,
            ("opening", asked.Height),
            ("room", asked.Room)
        );
        var box = DrawerBox.Of(asked.Width, height, depth, asked.Clearance, asked.Side, asked.Joint, asked.Groove, asked.Play);
        return new Answer([.. Sizes(asked, box), .. slide is null ? [] : new Working[] { slide }])
        {
            Verdicts = [.. Verdicts(asked, box, slide, reader.Unit).OrderByDescending(one => one.Severity)],
            Cautions =
            [
                Cautions.Tipping,
                Cautions.Guards,
                Cautions.GrooveWithoutGuard,
                Cautions.TrappedCutoff,
                Cautions.SmallParts,
            ],
            Parts = Parts(asked, box),
        };
    }

    private static IEnumerable<Working> Sizes(DrawerAsked asked, DrawerBox box) =>
        [
            box.Width,
            box.Height,
            box.Depth,
            Working.Of("Side length", box.Depth.Value, "{depth}", Working.Geometry, ("depth", box.Depth)),
            box.FrontBack,
            box.BottomWidth,
            box.BottomDepth,
            DrawerBox.LetInto(asked.Side, asked.Joint),
        ];

    private static ImmutableArray<ProposedPart> Parts(DrawerAsked asked, DrawerBox box) =>
        [
            new("Drawer side", box.Depth.Value, box.Height.Value, asked.Side.Value, 2),
            new("Drawer front and back", box.FrontBack.Value, box.Height.Value, asked.Side.Value, 2),
            new("Drawer bottom", box.BottomWidth.Value, box.BottomDepth.Value, asked.Bottom, 1),
        ];

    private static Fault? Refused(DrawerAsked asked, FormReader reader)
    {
        string Say(Length length) => LengthFormat.WithUnit(length, reader.Unit);
        var (width, height, side) = (asked.Width.Value, asked.Height.Value, asked.Side.Value);
        var least = Slides.Sold(reader.Unit)[0];
        return Check.First(
            reader,
            new(
                (asked.Clearance.Value + side) * 2 >= width,
                "slide-clearance",
                $"and sides of {Say(side)} leave nothing between them: an opening of {Say(width)} holds both sides and more"
            ),
            new(
                asked.Room.Value >= height,
                "height-clearance",
                $"leaves no height for the box: less than {Say(height)} is wanted"
            ),
            new(asked.Groove.Value >= side, "groove", $"goes through the side: less than {Say(side)} is wanted"),
            new(
                asked.Bottom >= height - asked.Room.Value,
                "bottom",
                $"is as thick as the box is high: less than {Say(height - asked.Room.Value)} is wanted"
            ),
            new(
                asked.Play.Value >= asked.Groove.Value * 2 && asked.Groove.Value.IsPositive,
                "play",
                $"is as much as both grooves are deep: less than {Say(asked.Groove.Value * 2)} is wanted"
            ),
            new(
                !asked.Behind.Value.IsPositive,
                "depth-clearance",
                $"leaves nothing of the depth: less than {Say(asked.Depth.Value)} is wanted"
            ),
            new(
                asked.HasSlides && asked.Behind.Value < least,
                "opening-depth",
                $"is shorter than the shortest usual slide: at least {Say(least)}, or slides=none"
            ),
            new(
                asked.Behind.Value <= side * 2,
                "opening-depth",
                $"is no more than front and back are thick: more than {Say(side * 2)} is wanted"
            )
        );
    }

    private static IEnumerable<Verdict> Verdicts(DrawerAsked asked, DrawerBox box, Working<Length>? slide, LengthUnit unit)
    {
        string Say(Length length) => LengthFormat.WithUnit(length, unit);
        if (slide is not null && asked.Behind.Value - slide.Value < Slack)
            yield return new(
                Severity.Watch,
                $"The slide is as long as the depth but for "
                    + $"{Say(asked.Behind.Value - slide.Value)}: look up in its sheet whether it wants more."
            );
        if (slide is not null)
            yield return new(
                Severity.Watch,
                "Buy the slides first: their sheet says what room they want, and a box a little too " + "wide jams."
            );
        if (asked.Joint == DrawerJoint.Butt)
            yield return new(
                Severity.Watch,
                "Butted corners hold by their screws or nails only: end grain glues badly (Handwork " + "in Wood)."
            );
        if (asked.Groove.Value * 2 > asked.Side.Value)
            yield return new(
                Severity.Watch,
                $"The bottom's groove takes more than half of the side: "
                    + $"{Say(Length.FromTicks(asked.Side.Value.Ticks / 2))} is enough."
            );
        if (box.Height.Value > box.Depth.Value || box.Width.Value > box.Depth.Value * 2)
            yield return new(
                Severity.Watch,
                "A box much wider than deep, or higher than deep, racks and binds (common "
                    + "practice): keep it long, or use a guide in the middle."
            );
        yield return new(Severity.Fine, "Check the box for square by equal diagonals before the glue sets.");
    }
}

/// <summary>What is asked of a drawer.</summary>
internal sealed record DrawerAsked(
    Working<Length> Width,
    Working<Length> Height,
    Working<Length> Depth,
    Working<Length> Behind,
    Working<Length> Clearance,
    bool HasSlides,
    DrawerJoint Joint,
    Working<Length> Side,
    Length Bottom,
    Working<Length> Groove,
    Working<Length> Play,
    Working<Length> Room
)
{
    public static DrawerAsked Read(FormReader reader)
    {
        Working<Length> Given(string name, string key) => Working.Given(name, reader.Length(key));
        var (depth, behind) = (Given("Depth behind the front", "opening-depth"), Given("Room behind", "depth-clearance"));
        var free = Working.Of(
            "Depth for the box",
            depth.Value - behind.Value,
            "{depth} − {room}",
            Working.Geometry,
            ("depth", depth),
            ("room", behind)
        );
        return new(
            Given("Opening width", "opening-width"),
            Given("Opening height", "opening-height"),
            depth,
            free,
            Given("Room at each side", "slide-clearance"),
            reader.Choice("slides") == "side",
            Enum.Parse<DrawerJoint>(reader.Choice("joint"), true),
            Given("Side", "side"),
            reader.Length("bottom"),
            Given("Groove", "groove"),
            Given("Play", "play"),
            Given("Room above and below", "height-clearance")
        );
    }
}
