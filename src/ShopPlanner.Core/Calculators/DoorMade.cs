using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>A door worked out.</summary>
/// <param name="Asked">What it was worked out from.</param>
/// <param name="Parts">Sizes of its parts.</param>
/// <param name="Shims">What sets its gap.</param>
/// <param name="Growth">How much a solid panel grows until the dampest season; null where its wood is not named.</param>
/// <param name="Dried">How much narrower it gets until the driest season, less than zero; null where it does not.</param>
internal sealed record DoorMade(DoorAsked Asked, FrameDoor Parts, Shims Shims, Working<Length>? Growth, Working<Length>? Dried)
{
    private static readonly Length StaysIn = Length.FromInches(0.125m);

    /// <summary>How much a solid panel shrinks until the driest season; null where it does not.</summary>
    public Working<Length>? Shrinkage =>
        Dried is { } dried
            ? Working.Of(
                "Panel shrinks by, until the driest season",
                -dried.Value,
                new FineLengthFigure(-dried.Value),
                "−({change})",
                Working.Geometry,
                ("change", dried)
            )
            : null;

    /// <summary>Room at each side that a panel which grows wants. More room makes it narrower, so that it grows less.</summary>
    public Length Wanted
    {
        get
        {
            var share = Share(Growth);
            var whole = Parts.PanelWidth.Value + (Asked.Across.Value * 2);
            return LengthSteps.HalfMarkUp(
                Length.FromTicks((long)Math.Ceiling(share * whole.Ticks / (2 * (1 + share)))),
                Asked.Unit
            );
        }
    }

    /// <summary>Whether the panel, pushed to one side, falls out at the other in the driest season.</summary>
    public bool FallsOut => Shrinkage is { } shrinkage && !Slips && Needed(shrinkage.Value) >= Asked.Groove.Value;

    /// <summary>A groove that still holds the panel by 1/8 in then. A deeper groove takes a wider panel, which
    /// shrinks more.</summary>
    public Length DeepEnough
    {
        get
        {
            var share = Share(Shrinkage);
            var clear = Parts.PanelWidth.Value - (Asked.Groove.Value * 2);
            var deep = ((Asked.Across.Value.Ticks * 2) + (share * clear.Ticks)) / (1 - (2 * share));
            return LengthSteps.HalfMarkUp(Length.FromTicks((long)Math.Ceiling(deep)) + StaysIn, Asked.Unit);
        }
    }

    /// <summary>Whether the panel slips out of one groove when it is pushed into the other.</summary>
    public bool Slips => Asked.Across.Value * 2 >= Asked.Groove.Value;

    /// <summary>Sizes, finished and rough.</summary>
    public IEnumerable<Working?> Sizes =>
        [
            Asked.Door.Width,
            Asked.Door.Height,
            Parts.Stile,
            Parts.Rail,
            Parts.PanelWidth,
            Parts.PanelHeight,
            FrameDoor.Rough("Stiles cut at", Parts.Stile, Asked.Oversize),
            FrameDoor.Rough("Rails cut at", Parts.Rail, Asked.Oversize),
            FrameDoor.Rough("Panel cut, across", Parts.PanelWidth, Asked.Oversize),
            FrameDoor.Rough("Panel cut, along", Parts.PanelHeight, Asked.Oversize),
            Asked.Door.Middle,
            FrameDoor.Hold(Asked.Groove, Asked.Across),
        ];

    /// <summary>How many of each part.</summary>
    public IEnumerable<Working> Numbers =>
        [Number("Stiles", 2, "2 × {leaves}"), Number("Rails", 2, "2 × {leaves}"), Number("Panels", 1, "{leaves}")];

    /// <summary>Parts for a project.</summary>
    public ImmutableArray<ProposedPart> Proposed =>
        [
            Frame("Door stile", Parts.Stile, Asked.Stile),
            Frame("Door rail", Parts.Rail, Asked.Rail),
            new("Door panel", Parts.PanelHeight.Value, Parts.PanelWidth.Value, Asked.Panel, Asked.Leaves)
            {
                CutLongBy = Asked.Oversize.Value,
                CutWideBy = Asked.Oversize.Value,
            },
        ];

    public static DoorMade Of(DoorAsked asked)
    {
        var door = asked.Door;
        var parts = FrameDoor.Of(door.Width, door.Height, asked.Stile, asked.Rail, asked.Groove, asked.Across, asked.Along);
        var gap = asked is { IsOverlay: true, Middle: { } middle } ? middle : asked.Gap;
        var panel = parts.PanelWidth;
        var damp = Moves(asked, panel, "Moisture in the most humid season", asked.Dampest, "Change in the panel's width");
        var dry = Moves(asked, panel, "Moisture in the driest season", asked.Driest, "Change until the driest season");
        return new(asked, parts, Shims.Of(gap, asked.Shim), damp, dry is { Value.Ticks: < 0 } ? dry : null);
    }

    /// <summary>The length as a person reads it.</summary>
    public string Say(Length length) => Asked.Say(length);

    private static Working<Length>? Moves(DoorAsked asked, Working<Length> panel, string season, double percent, string name) =>
        ShrinkageTable.Find(asked.Species ?? "") is { } wood
            ? Movement
                .Change(
                    wood,
                    panel,
                    Working.Given("Moisture when built", asked.BuiltAt, QuantityKind.Percent, 1),
                    Working.Given(season, percent, QuantityKind.Percent, 1),
                    Sawn.Flat
                )
                .Named(name)
            : null;

    private double Share(Working<Length>? change) => (change?.Value.Ticks ?? 0) / (double)Parts.PanelWidth.Value.Ticks;

    // What the groove must be deeper than, the panel standing at its far side.
    private Length Needed(Length shrinkage) => (Asked.Across.Value * 2) + shrinkage;

    private Working<double> Number(string name, int each, string template) =>
        Working.Of(
            name,
            each * Asked.Leaves,
            QuantityKind.Bare,
            0,
            template,
            Working.Geometry,
            ("leaves", Working.Given("Doors", Asked.Leaves, QuantityKind.Bare, 0))
        );

    private ProposedPart Frame(string name, Working<Length> length, Working<Length> width) =>
        new(name, length.Value, width.Value, Asked.Thickness, 2 * Asked.Leaves) { CutLongBy = Asked.Oversize.Value };
}
