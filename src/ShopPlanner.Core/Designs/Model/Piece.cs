using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Model;

/// <summary>A piece of furniture worked out: every part, where each copy is, what holds it together. Immutable.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Unit">Unit of the design.</param>
/// <param name="Outside">Its outside size, from 0, 0, 0.</param>
/// <param name="Parts">In the order of their marks.</param>
/// <param name="Joints">Between copies, by mark.</param>
/// <param name="Hardware">What to buy beside wood.</param>
/// <param name="Openings">The bays, filled or empty.</param>
/// <param name="Warnings">What to fix, to make safe or to check.</param>
/// <param name="Steps">What is to be done beside the order of work, which follows from boxes and joints: the design's own
/// sentences, then those of its frame and fills.</param>
public sealed record Piece(
    string Name,
    LengthUnit Unit,
    Box Outside,
    ImmutableArray<PiecePart> Parts,
    ImmutableArray<Joint> Joints,
    ImmutableArray<HardwareItem> Hardware,
    ImmutableArray<Opening> Openings,
    ImmutableArray<PieceWarning> Warnings,
    ImmutableArray<string> Steps
)
{
    /// <summary>Whether a part or hardware of it fixes it to the wall.</summary>
    public bool IsFixedToWall { get; init; }
}

/// <summary>A material that a design uses, by the role it plays.</summary>
/// <param name="Role">Name in the design: <c>case</c>.</param>
/// <param name="Id">The shop's material; null where the design leaves it open.</param>
/// <param name="Name">As a person says it: <c>Birch plywood 3/4</c>.</param>
/// <param name="Form">Board or sheet.</param>
/// <param name="Thickness">Actual.</param>
/// <param name="Width">A board's actual width; null for a sheet.</param>
/// <param name="Species">Id of its wood or sheet good in the tables of properties; null where unknown.</param>
public sealed record RoleMaterial(
    string Role,
    string? Id,
    string Name,
    MaterialForm Form,
    Length Thickness,
    Length? Width,
    string? Species
);

/// <summary>What a part is for.</summary>
public enum PartPurpose
{
    /// <summary>It stays in the piece.</summary>
    Member,

    /// <summary>A shop-made spacer that sets a repeated gap; from scrap.</summary>
    Spacer,

    /// <summary>A practice piece for a joint that is dialled in; from scrap.</summary>
    Practice,
}

/// <summary>One kind of part.</summary>
/// <param name="Id">Its letter: <c>A</c>.</param>
/// <param name="Name">What people call it: <c>Shelf</c>.</param>
/// <param name="Assembly">The unit it belongs to: <c>Carcass</c>, <c>Door</c>, <c>Drawer</c>.</param>
/// <param name="Material">What it is cut from.</param>
/// <param name="Length">Along the grain, finished, tongues included.</param>
/// <param name="Width">Across the grain, finished, tongues included.</param>
/// <param name="Thickness">Finished.</param>
/// <param name="RoughLength">As cut, with the allowance to trim later.</param>
/// <param name="RoughWidth">As cut.</param>
/// <param name="GrainMatters">False where the part may be turned on its sheet.</param>
/// <param name="Purpose">What it is for.</param>
/// <param name="FacesToFinish">Faces and edges that are seen: <c>front edge</c>, <c>both faces</c>.</param>
/// <param name="Copies">Where each one is; empty for spacers and practice pieces.</param>
/// <param name="Quantity">How many are cut.</param>
public sealed record PiecePart(
    string Id,
    string Name,
    string Assembly,
    RoleMaterial Material,
    Working<Length> Length,
    Working<Length> Width,
    Working<Length> Thickness,
    Length RoughLength,
    Length RoughWidth,
    bool GrainMatters,
    PartPurpose Purpose,
    string FacesToFinish,
    ImmutableArray<PartCopy> Copies,
    int Quantity
)
{
    /// <summary>Id of the part for whose joint this one is a practice piece; null for any other part.</summary>
    public string? PracticeFor { get; init; }
}

/// <summary>Which of a mirrored pair a copy is.</summary>
public enum Hand
{
    /// <summary>All copies are the same.</summary>
    Either,

    /// <summary>The left one, seen from the front.</summary>
    Left,

    /// <summary>The right one.</summary>
    Right,
}

/// <summary>One copy of a part.</summary>
/// <param name="Mark">Unique in the piece: <c>A1</c>, a mirrored one <c>A1L</c>.</param>
/// <param name="Box">Where it is, tongues included.</param>
/// <param name="Hand">Which of a mirrored pair it is.</param>
/// <param name="Along">The direction of its length, so of its grain.</param>
/// <param name="Flat">The direction of its thickness.</param>
public sealed record PartCopy(string Mark, Box Box, Hand Hand, Axis Along, Axis Flat)
{
    /// <summary>What is cut out of it beside its joints; none for a plain box.</summary>
    public ImmutableArray<PartFeature> Features { get; init; } = [];

    /// <summary>What is done to its edges; none where they stay as they are cut.</summary>
    public ImmutableArray<EdgeTreatment> Edges { get; init; } = [];

    /// <summary>The direction of its width.</summary>
    public Axis Across => BoxSides.Third(Along, Flat);

    /// <summary>What a notch from left to right takes of its lower front corner, as for a toe space; null where that corner is
    /// whole.</summary>
    public ToeNotch? ToeNotch =>
        Features.OfType<Notch>().Where(one => one.IsToe).Select(one => new ToeNotch(one.To, one.SecondTo)).FirstOrDefault();
}

/// <summary>A notch at the lower front corner of an upright part that shows its edge to the front, through its whole
/// thickness.</summary>
/// <param name="Deep">From the front edge.</param>
/// <param name="High">From the lower end.</param>
public sealed record ToeNotch(Length Deep, Length High);

/// <summary>How two parts are joined.</summary>
public enum JointKind
{
    /// <summary>Glued face to face or edge to edge.</summary>
    Glued,

    /// <summary>Butted and screwed through.</summary>
    Screwed,

    /// <summary>Butted, with pocket screws.</summary>
    PocketScrew,

    /// <summary>The end or edge sits in a dado across the grain.</summary>
    Dado,

    /// <summary>The edge sits in a rabbet.</summary>
    Rabbet,

    /// <summary>A tongue or a panel's edge sits in a groove.</summary>
    Groove,

    /// <summary>A tenon in a mortise.</summary>
    MortiseAndTenon,

    /// <summary>Dovetails.</summary>
    Dovetail,

    /// <summary>Dowels.</summary>
    Dowel,

    /// <summary>Fixed so that a solid top may move: slotted screws, buttons, clips.</summary>
    Slotted,

    /// <summary>Hung on hinges.</summary>
    Hinged,

    /// <summary>Runs on slides.</summary>
    Sliding,

    /// <summary>Rests on it: pins, cleats.</summary>
    Resting,

    /// <summary>Bolted, so that it comes apart again or carries a load that screws would not.</summary>
    Bolted,

    /// <summary>Hangs by its beveled edge on a cleat's.</summary>
    Beveled,

    /// <summary>Each part is cut away by half of its thickness over the width of the other.</summary>
    HalfLap,

    /// <summary>A tenon in a slot that is open at the end of the part that takes it.</summary>
    Bridle,

    /// <summary>Both ends are cut at 45 degrees, with a spline across the corner.</summary>
    Miter,

    /// <summary>The tongue of a panel in the groove of an end that runs across its grain, pinned so that the panel may
    /// move.</summary>
    Breadboard,

    /// <summary>Slides along a groove, and lifts out of it.</summary>
    SlidingGroove,

    /// <summary>Lies in a rabbet, held by brads alone, so that it comes out again: a stop behind glass.</summary>
    Pinned,
}

/// <summary>A joint between two copies.</summary>
/// <param name="Kind">How.</param>
/// <param name="From">Mark of the part that is let in, screwed or hung.</param>
/// <param name="Into">Mark of the part that takes it.</param>
/// <param name="Along">Direction in which it is let in.</param>
/// <param name="Depth">How far it is let in; nothing for a butt joint.</param>
public sealed record Joint(JointKind Kind, string From, string Into, Axis Along, Length Depth)
{
    /// <summary>How much deeper it is cut than the part goes in.</summary>
    public Length Clearance { get; init; }
}

/// <summary>Hardware to buy.</summary>
/// <param name="Name">As asked for in a store: <c>Pocket screw 1 1/4 in, coarse</c>.</param>
/// <param name="Quantity">How many.</param>
public sealed record HardwareItem(string Name, int Quantity);

/// <summary>An empty box between parts.</summary>
/// <param name="Path">Place in the design's tree of bays: <c>bays</c>, <c>bays.0.1</c>.</param>
/// <param name="Box">The clear space.</param>
/// <param name="Fills">Kinds of what fills it.</param>
public sealed record Opening(string Path, Box Box, ImmutableArray<string> Fills);

/// <summary>A warning about the piece: what happens, why, what to do.</summary>
/// <param name="Severity">How severe it is.</param>
/// <param name="Text">A plain sentence.</param>
/// <param name="Part">Id of the part it is about; null for the piece.</param>
/// <param name="Working">The figure it rests on; null where it is plain.</param>
public sealed record PieceWarning(Severity Severity, string Text, string? Part, Working? Working)
{
    /// <summary>Place in the design that brought it about; null where the whole piece did, or the part alone.</summary>
    public string? Place { get; init; }
}
