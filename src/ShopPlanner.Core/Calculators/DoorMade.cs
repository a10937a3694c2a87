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
internal sealed record DoorMade(DoorAsked Asked, FrameDoor Parts, Shims Shims, Working<Length>? Growth)
{
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
        return new(asked, parts, Shims.Of(gap, asked.Shim), Grows(asked, parts.PanelWidth));
    }

    /// <summary>The length as a person reads it.</summary>
    public string Say(Length length) => Asked.Say(length);

    private static Working<Length>? Grows(DoorAsked asked, Working<Length> panel)
    {
        if (ShrinkageTable.All.FirstOrDefault(row => row.SpeciesId == asked.Species) is not { } wood)
            return null;
        var (from, to) = (
            Working.Given("Moisture when built", asked.BuiltAt, QuantityKind.Percent, 1),
            Working.Given("Moisture in the most humid season", asked.Dampest, QuantityKind.Percent, 1)
        );
        return Movement.Change(wood, panel, from, to, Sawn.Flat).Named("Change in the panel's width");
    }

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
