using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>What a trench is called, by how it lies in the wood.</summary>
internal enum TrenchKind
{
    /// <summary>Along the grain, wood on both sides.</summary>
    Groove,

    /// <summary>Across the grain, wood on both sides.</summary>
    Dado,

    /// <summary>Along an edge or an end, open to it.</summary>
    Rabbet,

    /// <summary>As wide as a whole part that lies in it.</summary>
    Lap,
}

/// <summary>One trench in one copy, whatever joints it serves: in a door's stile the panel and the rails' tongues share
/// one.</summary>
/// <param name="Into">The copy that is cut.</param>
/// <param name="Along">The direction of its depth.</param>
/// <param name="AtEnd">Whether it is cut into the far side along that direction.</param>
/// <param name="Run">The direction of its length.</param>
/// <param name="Across">The direction of its width.</param>
/// <param name="Start">Where it begins across, in the piece.</param>
/// <param name="End">Where what goes in ends across.</param>
/// <param name="RunStart">Where what goes in begins along the trench.</param>
/// <param name="RunEnd">Where it ends.</param>
/// <param name="Width">How wide it is cut: what goes in, and the room for it.</param>
/// <param name="IsLap">Whether it takes the whole width of a part.</param>
/// <param name="Joints">The joints it is cut for, the one that sets its width first.</param>
internal sealed record Trench(
    Workpiece Into,
    Axis Along,
    bool AtEnd,
    Axis Run,
    Axis Across,
    Length Start,
    Length End,
    Length RunStart,
    Length RunEnd,
    Working<Length> Width,
    bool IsLap,
    ImmutableArray<WorkJoint> Joints
)
{
    /// <summary>Room for what slides in, in all (common practice: the same as the form for grooves proposes).</summary>
    public static readonly Length Room = Length.FromMillimetres(0.2m);

    // Common practice: a full-kerf blade.
    private static readonly Length Kerf = Length.FromInches(0.125m);

    // What is nearer than this to the far end is measured from there, however the others are.
    private static readonly Length Nearby = Length.FromInches(3);

    // A cut that ends so near to an edge runs out at it: the clearance of a panel is no wall.
    public static readonly Length NoWall = Length.FromInches(0.125m);

    // A step so low at the end of a part is not seen in the piece (common practice).
    private static readonly Length Unseen = Length.FromInches(1m / 32);

    /// <summary>The joint that sets its width.</summary>
    public WorkJoint Primary => Joints[0];

    /// <summary>Wood before it, across.</summary>
    public Length Near => Start - Into.Box.Start(Across);

    /// <summary>Wood beyond it.</summary>
    public Length Far => Into.Box.End(Across) - End;

    /// <summary>The part's extent across it.</summary>
    public Length Stock => Into.Box.Extent(Across);

    /// <summary>How deep it is cut: what goes in, and the clearance behind it.</summary>
    public Length Depth => Joints.Max(one => one.Depth + one.Fit.Joint.Clearance);

    public TrenchKind Kind =>
        IsLap ? TrenchKind.Lap
        : Near == Length.Zero || Far == Length.Zero ? TrenchKind.Rabbet
        : Run == Into.Copy.Along ? TrenchKind.Groove
        : TrenchKind.Dado;

    /// <summary>Whether it lies in the middle of an edge, so that both faces may run along the fence.</summary>
    public bool IsCentred => Kind == TrenchKind.Groove && Across == Into.Copy.Flat && Math.Abs((Near - Far).Ticks) <= 1;

    /// <summary>Whether its distance is measured from the far side.</summary>
    public bool IsFromEnd => Far < Near && (Kind != TrenchKind.Dado || Far <= Nearby);

    /// <summary>From the side it is measured from to its near wall.</summary>
    public Length Distance => IsFromEnd ? Far : Near;

    /// <summary>The settings of a groove in the middle of an edge.</summary>
    public CentredGroove Centred =>
        CentredGroove.Of(
            Working.Given("Piece", Stock),
            Working.Given("Blade", Length.Min(Kerf, Width.Value)),
            Width,
            Working.Given("Clearance", Room)
        );

    /// <summary>What stays uncut at one end of the part along the trench; nothing where the cut runs out.</summary>
    /// <param name="atEnd">At the far end.</param>
    /// <param name="work">Joints that hide the end.</param>
    public Length Stop(bool atEnd, PieceWork work)
    {
        var gap = atEnd ? Into.Box.End(Run) - RunEnd : RunStart - Into.Box.Start(Run);
        return gap <= NoWall || IsHidden(gap, atEnd, work) ? Length.Zero : gap;
    }

    /// <summary>Whether what goes in is thicker than the trench, so that it gets a tongue.</summary>
    public bool AsksForTongue(WorkJoint joint) => !IsLap && joint.From.Box.Extent(Across) > End - Start + Length.FromTicks(1);

    // The end of the part is let into another one at least as far, or cut away there as deep by another trench.
    private bool IsHidden(Length gap, bool atEnd, PieceWork work) =>
        work.Trenches.Any(one => CutsAway(one, atEnd))
        || work.Joints.Any(one =>
            one.From.Mark == Into.Mark
            && one.Along == Run
            && one.Depth >= gap
            && (atEnd ? one.Into.Box.End(Run) > Into.Box.End(Run) : one.Into.Box.Start(Run) < Into.Box.Start(Run))
        );

    private bool CutsAway(Trench one, bool atEnd) =>
        one.Into.Mark == Into.Mark
        && (one.Along, one.AtEnd, one.Across) == (Along, AtEnd, Run)
        && one.Depth + Unseen >= Depth
        && (
            atEnd ? one.End == Into.Box.End(Run) && one.Start <= RunEnd : one.Start == Into.Box.Start(Run) && one.End >= RunStart
        );
}
