using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Doors.</summary>
internal static class DoorForms
{
    public static readonly ImmutableArray<WorkingForm> All = [DoorForm()];

    private static WorkingForm DoorForm() =>
        new(
            "door",
            "Frame-and-panel door",
            "Every part of a door from its opening: leaves, stiles, rails, panels, finished and " + "rough.",
            [
                new("opening-width", "Opening, width", KeyKind.Length) { Most = "10 ft" },
                new("opening-height", "Opening, height", KeyKind.Length) { Most = "10 ft" },
                new("leaves", "Leaves", KeyKind.Count)
                {
                    Default = "1",
                    Least = "1",
                    Most = "2",
                },
                new("fit", "Fit", KeyKind.Choice)
                {
                    Default = "inset",
                    Choices = [new("inset", "in the opening"), new("overlay", "on the face around it")],
                },
                new("gap", "Gap", KeyKind.LengthOrZero)
                {
                    Default = "1/16 in",
                    Most = "1 in",
                    Hint = "All round an inset door; only between two leaves on the face",
                },
                new("middle", "Gap between two leaves", KeyKind.LengthOrZero)
                {
                    Optional = true,
                    Most = "1 in",
                    Hint = "As the gap where left out",
                },
                new("overlay", "Overlay at each side", KeyKind.LengthOrZero) { Default = "1/2 in", Most = "6 in" },
                new("stile", "Width of a stile", KeyKind.Length) { Default = "2 1/4 in", Most = "12 in" },
                new("rail", "Width of a rail", KeyKind.Length)
                {
                    Optional = true,
                    Most = "12 in",
                    Hint = "As the stiles where left out",
                },
                new("groove", "Depth of the groove", KeyKind.Length)
                {
                    Default = "3/8 in",
                    Most = "2 in",
                    Hint = "So long are the tongues",
                },
                new("panel", "Thickness of the panel", KeyKind.Length)
                {
                    Default = "1/4 in",
                    Most = "2 in",
                    Hint = "At its edges",
                },
                new("clearance", "Room for the panel at each side", KeyKind.LengthOrZero) { Default = "1/16 in", Most = "1 in" },
                new("clearance-along", "Room below and above it", KeyKind.LengthOrZero)
                {
                    Optional = true,
                    Most = "1 in",
                    Hint = "Half as much as at the sides where left out: along the grain wood " + "hardly moves",
                },
                new("oversize", "Cut long, to trim to size", KeyKind.LengthOrZero) { Default = "1/2 in", Most = "3 in" },
                new("thickness", "Thickness of the frame", KeyKind.Length) { Default = "3/4 in", Most = "3 in" },
                new("species", "Wood of a solid panel", KeyKind.Choice) { Optional = true, Choices = WoodForms.Shrinking },
                new("built-at", "Moisture when it is built, %", KeyKind.Number)
                {
                    Default = "8",
                    Least = "4",
                    Most = "25",
                },
                new("dampest", "Moisture in the dampest season, %", KeyKind.Number)
                {
                    Default = "11",
                    Least = "4",
                    Most = "25",
                },
                new("shim", "Thickness of a playing card", KeyKind.Length)
                {
                    Default = "0.0115 in",
                    Least = "0.005 in",
                    Most = "1/4 in",
                },
            ],
            reader =>
            {
                var asked = DoorAsked.Read(reader);
                return () => Answer(asked, reader);
            }
        );

    private static FormOutcome Answer(DoorAsked asked, FormReader reader)
    {
        var door = asked.Sizes();
        if (Refused(asked, door, reader) is { } fault)
            return fault;
        var parts = FrameDoor.Of(door.Width, door.Height, asked.Stile, asked.Rail, asked.Groove, asked.Across, asked.Along);
        var shims = Shims.Of(asked.Middle is { } middle && asked.IsOverlay ? middle : asked.Gap, asked.Shim);
        var growth = asked.Growth(parts.PanelWidth);
        return new Answer([
            .. Sizes(asked, door, parts),
            .. Numbers(asked),
            shims.Count,
            shims.Thickness,
            .. growth is null ? [] : new Working[] { growth },
        ])
        {
            Verdicts = [.. DoorVerdicts.Of(asked, door, shims, growth, reader.Unit).OrderByDescending(one => one.Severity)],
            Cautions = [Cautions.Guards, Cautions.GrooveWithoutGuard, Cautions.TrappedCutoff, Cautions.SmallParts],
            Parts = Parts(asked, parts),
        };
    }

    private static IEnumerable<Working> Sizes(DoorAsked asked, DoorSizes door, FrameDoor parts) =>
        [
            door.Width,
            door.Height,
            parts.Stile,
            parts.Rail,
            parts.PanelWidth,
            parts.PanelHeight,
            FrameDoor.Rough("Stiles cut at", parts.Stile, asked.Oversize),
            FrameDoor.Rough("Rails cut at", parts.Rail, asked.Oversize),
            FrameDoor.Rough("Panel cut, across", parts.PanelWidth, asked.Oversize),
            FrameDoor.Rough("Panel cut, along", parts.PanelHeight, asked.Oversize),
            .. door.Middle is { } middle ? new Working[] { middle } : [],
            FrameDoor.Hold(asked.Groove, asked.Across),
        ];

    private static IEnumerable<Working> Numbers(DoorAsked asked)
    {
        var leaves = Working.Given("Leaves", asked.Leaves, QuantityKind.Bare, 0);
        Working Number(string name, int each, string template) =>
            Working.Of(name, each * asked.Leaves, QuantityKind.Bare, 0, template, Working.Geometry, ("leaves", leaves));
        return [Number("Stiles", 2, "2 × {leaves}"), Number("Rails", 2, "2 × {leaves}"), Number("Panels", 1, "{leaves}")];
    }

    private static ImmutableArray<ProposedPart> Parts(DoorAsked asked, FrameDoor parts) =>
        [
            Frame("Door stile", parts.Stile, asked.Stile, asked),
            Frame("Door rail", parts.Rail, asked.Rail, asked),
            new("Door panel", parts.PanelHeight.Value, parts.PanelWidth.Value, asked.Panel, asked.Leaves)
            {
                CutLongBy = asked.Oversize.Value,
                CutWideBy = asked.Oversize.Value,
            },
        ];

    private static ProposedPart Frame(string name, Working<Length> length, Working<Length> width, DoorAsked asked) =>
        new(name, length.Value, width.Value, asked.Thickness, 2 * asked.Leaves) { CutLongBy = asked.Oversize.Value };

    private static Fault? Refused(DoorAsked asked, DoorSizes door, FormReader reader)
    {
        string Say(Length length) => LengthFormat.WithUnit(length, reader.Unit);
        var gap = asked.Middle is not null && reader.Has("middle") && asked.Leaves == 2 ? "middle" : "gap";
        return Check.First(
            reader,
            new(
                !door.Width.Value.IsPositive,
                gap,
                $"is more than the opening of {Say(asked.Width.Value)} holds: nothing remains of the door"
            ),
            new(
                !door.Height.Value.IsPositive,
                "gap",
                $"is more than the opening of {Say(asked.Height.Value)} holds: nothing remains of the door"
            ),
            new(
                asked.Stile.Value * 2 >= door.Width.Value,
                "stile",
                $"is half the door or more: a leaf of {Say(door.Width.Value)} wants less than half of that"
            ),
            new(
                asked.Rail.Value * 2 >= door.Height.Value,
                reader.Has("rail") ? "rail" : "stile",
                $"is half the door's height or more: a door of {Say(door.Height.Value)} wants less than half of that"
            ),
            new(
                asked.Groove.Value >= Length.Min(asked.Stile.Value, asked.Rail.Value),
                "groove",
                $"goes through stile or rail: less than {Say(Length.Min(asked.Stile.Value, asked.Rail.Value))} is wanted"
            ),
            new(
                asked.Panel >= asked.Thickness,
                "panel",
                $"is as thick as the frame: no groove takes more than part of {Say(asked.Thickness)}"
            ),
            new(
                asked.Across.Value >= asked.Groove.Value,
                "clearance",
                $"is as much as the groove is deep: the panel would fall out of {Say(asked.Groove.Value)}"
            ),
            new(
                asked.Along.Value >= asked.Groove.Value,
                "clearance-along",
                $"is as much as the groove is deep: the panel would fall out of {Say(asked.Groove.Value)}"
            )
        );
    }
}

/// <summary>What is asked of a door.</summary>
internal sealed record DoorAsked(
    Working<Length> Width,
    Working<Length> Height,
    int Leaves,
    bool IsOverlay,
    Working<Length> Gap,
    Working<Length>? Middle,
    Working<Length> Overlay,
    Working<Length> Stile,
    Working<Length> Rail,
    Working<Length> Groove,
    Length Panel,
    Working<Length> Across,
    Working<Length> Along,
    Working<Length> Oversize,
    Length Thickness,
    string? Species,
    double BuiltAt,
    double Dampest,
    Working<Length> Shim
)
{
    public static DoorAsked Read(FormReader reader)
    {
        Working<Length> Given(string name, string key) => Working.Given(name, reader.Length(key));
        var (stile, across) = (Given("Stile", "stile"), Given("Room at each side", "clearance"));
        var along = reader.MaybeLength("clearance-along") ?? Length.FromTicks(across.Value.Ticks / 2);
        return new(
            Given("Opening width", "opening-width"),
            Given("Opening height", "opening-height"),
            reader.Count("leaves"),
            reader.Choice("fit") == "overlay",
            Given("Gap", "gap"),
            reader.MaybeLength("middle") is { } middle ? Working.Given("Middle gap", middle) : null,
            Given("Overlay", "overlay"),
            stile,
            reader.MaybeLength("rail") is { } rail ? Working.Given("Rail", rail) : Working.Given("Rail", stile.Value),
            Given("Groove", "groove"),
            reader.Length("panel"),
            across,
            Working.Given("Room below and above", along),
            Given("Oversize", "oversize"),
            reader.Length("thickness"),
            reader.MaybeChoice("species"),
            reader.Number("built-at"),
            reader.Number("dampest"),
            Fine("Card", reader.Length("shim"))
        );
    }

    // A card is thinner than a rule shows.
    private static Working<Length> Fine(string name, Length length) =>
        Working.Looked(name, length, new FineLengthFigure(length), Working.AsGiven);

    public DoorSizes Sizes() =>
        IsOverlay
            ? DoorSizes.Overlay(Width, Height, Leaves, Overlay, Gap, Middle)
            : DoorSizes.Inset(Width, Height, Leaves, Gap, Middle);

    /// <summary>How much a solid panel grows until the dampest season; null where its wood is not named.</summary>
    public Working<Length>? Growth(Working<Length> panel)
    {
        if (ShrinkageTable.All.FirstOrDefault(row => row.SpeciesId == Species) is not { } wood)
            return null;
        var (from, to) = (
            Working.Given("Moisture when built", BuiltAt, QuantityKind.Percent, 1),
            Working.Given("Dampest", Dampest, QuantityKind.Percent, 1)
        );
        var change = Movement.Change(wood, panel, from, to, Sawn.Flat);
        return Working.Of(
            "Change in the panel's width",
            change.Value,
            change.Figure,
            change.Template,
            change.Source,
            [.. change.Inputs.Select(input => (input.Key, input.Working))]
        ) with
        {
            OutsideRange = change.OutsideRange,
        };
    }
}
