using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Gathers the copies, joints and hardware that frames, fills and free parts make; <see cref="Marking"/> turns copies of
/// one kind into parts with marks.</summary>
internal sealed class Builder
{
    /// <summary>More copies than any piece of furniture has; beyond it a wrong count is more likely than a want.</summary>
    public const int MostCopies = 2000;

    private readonly List<Draft> drafts = [];
    private readonly List<DraftJoint> joints = [];
    private readonly Dictionary<string, int> hardware = [];

    public IReadOnlyList<Draft> Drafts => drafts;

    public IReadOnlyList<DraftJoint> Joints => joints;

    public IReadOnlyDictionary<string, int> Hardware => hardware;

    /// <summary>How far fronts stand out before the frame, whose front plane is at y = 0 while it is built.</summary>
    public Length StandsOut { get; set; }

    public List<Opening> Openings { get; } = [];

    public List<DraftWarning> Warnings { get; } = [];

    /// <summary>What boxes and joints don't tell, so that the order of work can't either; the same sentence twice counts
    /// once.</summary>
    public HashSet<string> Steps { get; } = [];

    /// <summary>Unit of lengths in texts.</summary>
    public LengthUnit Unit { get; init; }

    /// <summary>Whether something in it fixes it to the wall.</summary>
    public bool IsFixedToWall { get; set; }

    /// <summary>Place in the document of what is being built.</summary>
    public string Path { get; set; } = "";

    /// <summary>Place in the document that asked for more than <see cref="MostCopies"/>; null while there is room.</summary>
    public string? FullAt { get; private set; }

    /// <summary>Adds one copy; the handle is for joints and for bays that it bounds.</summary>
    public Draft Add(Draft draft)
    {
        draft.Path = Path;
        if (drafts.Count < MostCopies)
            drafts.Add(draft);
        else
            FullAt ??= Path;
        return draft;
    }

    /// <summary>Joins two copies. What is let in overlaps by exactly the depth along the axis.</summary>
    /// <param name="kind">How.</param>
    /// <param name="from">What is let in, screwed or hung.</param>
    /// <param name="into">What takes it.</param>
    /// <param name="along">Direction in which it is let in.</param>
    /// <param name="depth">How far.</param>
    /// <param name="clearance">How much deeper the cut is.</param>
    public void Join(JointKind kind, Draft from, Draft into, Axis along, Length depth, Length clearance = default) =>
        joints.Add(new(kind, from, into, along, depth, clearance));

    /// <summary>A butt joint: nothing overlaps.</summary>
    public void Join(JointKind kind, Draft from, Draft into, Axis along) => Join(kind, from, into, along, Length.Zero);

    /// <summary>Joins a copy to every member that a clear box touches at one end of an axis; the copy reaches so far into
    /// them.</summary>
    /// <returns>How many there are: where none is, nothing holds the copy there.</returns>
    public int JoinAt(Draft from, Box clear, Axis axis, bool atEnd, Func<Draft, JointKind> kind, Length depth)
    {
        var found = Touching(clear, axis, atEnd).Where(one => one != from).ToList();
        foreach (var one in found)
            Join(kind(one), from, one, axis, depth);
        return found.Count;
    }

    /// <summary>Joins a copy to every member that butts against it at one end of an axis, as the two allow.</summary>
    public int ButtAt(Draft from, Axis axis, bool atEnd) =>
        JoinAt(from, from.Box, axis, atEnd, into => ButtJoint.Of(from, into, axis), Length.Zero);

    public void Buy(string name, int quantity)
    {
        if (quantity > 0)
            hardware[name] = hardware.GetValueOrDefault(name) + quantity;
    }

    // They move, and hold nothing.
    private static bool Opens(Draft draft) => draft.Assembly is "Door" or "Drawer" or "Sliding door";

    /// <summary>Members whose face touches a box at the start or the end of an axis; doors and drawers move, and hold
    /// nothing.</summary>
    public IReadOnlyList<Draft> Touching(Box box, Axis axis, bool atEnd) =>
        [
            .. drafts.Where(one =>
                one.Purpose == PartPurpose.Member
                && !Opens(one)
                && (atEnd ? one.Box.Start(axis) == box.End(axis) : one.Box.End(axis) == box.Start(axis))
                && one.Box.With(axis, box.Start(axis), box.End(axis)).Shared(box) is not null
            ),
        ];

    /// <summary>Moves all that stands so far: room is made for what stands out in front, for a top's overhang and for a
    /// base.</summary>
    public void Move(Length right, Length back, Length up)
    {
        foreach (var draft in drafts)
            draft.Box = draft.Box.Moved(right, back, up);
        for (var i = 0; i < Openings.Count; i++)
            Openings[i] = Openings[i] with { Box = Openings[i].Box.Moved(right, back, up) };
    }

    public void Warn(Severity severity, string text, Draft? about = null, Working? working = null) =>
        Warnings.Add(new(severity, text, about, about?.Path ?? Path, working));

    /// <summary>Warns that a copy ends in the air.</summary>
    /// <param name="about">The copy.</param>
    /// <param name="where">Which end or edge, after a space; empty for all of it.</param>
    /// <param name="remedy">What to do.</param>
    public void WarnOfNothing(Draft about, string where, string remedy) =>
        Warn(Severity.Fails, $"Nothing holds the {about.Name.ToLowerInvariant()}{where}. {remedy}", about);
}

/// <summary>One copy of a part before it has its mark.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Assembly">The unit it belongs to.</param>
/// <param name="Material">What it is cut from.</param>
/// <param name="Box">Where it is, tongues included; for spacers and practice pieces only its size counts.</param>
/// <param name="Along">Direction of its length and grain.</param>
/// <param name="Flat">Direction of its thickness.</param>
internal sealed record Draft(string Name, string Assembly, RoleMaterial Material, Box Box, Axis Along, Axis Flat)
{
    public Box Box { get; set; } = Box;

    /// <summary>How its length came about; the extent along <see cref="Along"/> where null.</summary>
    public Working<Length>? Length { get; set; }

    /// <summary>How its width came about.</summary>
    public Working<Length>? Width { get; set; }

    /// <summary>What is cut out of it beside its joints.</summary>
    public ImmutableArray<PartFeature> Features { get; set; } = [];

    /// <summary>What is done to its edges.</summary>
    public ImmutableArray<EdgeTreatment> Edges { get; set; } = [];

    public PartPurpose Purpose { get; init; }

    /// <summary>Added to the length to be trimmed later.</summary>
    public Length CutLongBy { get; init; }

    /// <summary>Added to the width to be trimmed later.</summary>
    public Length CutWideBy { get; init; }

    public bool GrainMatters { get; init; } = true;

    /// <summary>The copy for whose joint this practice piece is; null for any other part.</summary>
    public Draft? PracticeFor { get; init; }

    public string FacesToFinish { get; init; } = "";

    /// <summary>Place in the document that made it.</summary>
    public string Path { get; set; } = "";

    public Axis Across => BoxSides.Third(Along, Flat);

    // A handle is this very copy: two alike are still two.
    public bool Equals(Draft? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}

/// <summary>A joint between copies that have no marks yet.</summary>
internal sealed record DraftJoint(JointKind Kind, Draft From, Draft Into, Axis Along, Length Depth, Length Clearance);

/// <summary>A warning about a copy that has no mark yet.</summary>
/// <param name="Severity">How severe it is.</param>
/// <param name="Text">A plain sentence.</param>
/// <param name="About">The copy; null for the piece.</param>
/// <param name="Path">Place in the document that brought it about.</param>
/// <param name="Working">The figure it rests on.</param>
internal sealed record DraftWarning(Severity Severity, string Text, Draft? About, string Path, Working? Working);
