using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>One copy of a part, with its part.</summary>
/// <param name="Part">The kind.</param>
/// <param name="Copy">The copy.</param>
internal sealed record Workpiece(PiecePart Part, PartCopy Copy)
{
    public string Mark => Copy.Mark;

    public string Name => Part.Name;

    public Box Box => Copy.Box;

    /// <summary>Direction of its width.</summary>
    public Axis Across => Copy.Across;

    /// <summary>Its thickness as it stands.</summary>
    public Length Thick => Box.Extent(Copy.Flat);
}

/// <summary>Directions.</summary>
internal static class Axes
{
    public static readonly ImmutableArray<Axis> All = [Axis.X, Axis.Y, Axis.Z];
}

/// <summary>A joint with its place in the piece's list and the two copies that it joins.</summary>
/// <param name="Index">Place in <see cref="Piece.Joints"/>.</param>
/// <param name="Fit">Where they meet.</param>
/// <param name="From">What is let in, screwed or hung.</param>
/// <param name="Into">What takes it.</param>
internal sealed record WorkJoint(int Index, JointFit Fit, Workpiece From, Workpiece Into)
{
    public JointKind Kind => Fit.Joint.Kind;

    public Axis Along => Fit.Joint.Along;

    public Length Depth => Fit.Joint.Depth;
}

/// <summary>Joints and copies as a step names them.</summary>
internal static class WorkLists
{
    /// <summary>Returns the copies of both sides, each once.</summary>
    public static List<Workpiece> Pieces(this IEnumerable<WorkJoint> joints) =>
        [.. joints.SelectMany(one => new[] { one.From, one.Into }).DistinctBy(one => one.Mark)];

    /// <summary>Returns the places in the piece's list.</summary>
    public static ImmutableArray<int> Indexes(this IEnumerable<WorkJoint> joints) =>
        [.. joints.Select(one => one.Index).Distinct().Order()];

    /// <summary>Returns the marks, each once.</summary>
    public static ImmutableArray<string> Marks(this IEnumerable<Workpiece> pieces) =>
        [.. pieces.Select(one => one.Mark).Distinct(StringComparer.Ordinal)];
}

/// <summary>A piece as its operations are worked out: copies, joints and what is cut for them.</summary>
internal sealed class PieceWork
{
    private readonly Dictionary<string, Workpiece> byMark;
    private readonly Lazy<ImmutableArray<Trench>> trenches;

    public PieceWork(Piece piece, WorkChoices choices)
    {
        (Piece, Choices) = (piece, choices);
        Workpieces =
        [
            .. piece
                .Parts.Where(part => part.Purpose == PartPurpose.Member)
                .SelectMany(part => part.Copies.Select(copy => new Workpiece(part, copy))),
        ];
        byMark = Workpieces.ToDictionary(one => one.Mark, StringComparer.Ordinal);
        Joints = [.. JointFit.Of(piece).Select((fit, i) => new WorkJoint(i, fit, this[fit.From.Mark], this[fit.Into.Mark]))];
        trenches = new(() => TrenchList.Of(this));
    }

    public Piece Piece { get; }

    public WorkChoices Choices { get; }

    public LengthUnit Unit => Piece.Unit;

    /// <summary>All copies that stay in the piece, in the order of their parts.</summary>
    public ImmutableArray<Workpiece> Workpieces { get; }

    public ImmutableArray<WorkJoint> Joints { get; }

    /// <summary>Grooves, dadoes, rabbets and laps.</summary>
    public ImmutableArray<Trench> Trenches => trenches.Value;

    public Workpiece this[string mark] => byMark[mark];

    /// <summary>Joints of a kind whose parts meet.</summary>
    public IEnumerable<WorkJoint> Of(JointKind kind) => Joints.Where(one => one.Kind == kind && one.Fit.Meeting is not null);

    /// <summary>The box of what a copy belongs to: of its door or drawer, or of the whole piece.</summary>
    public Box UnitBox(Workpiece piece) => piece.Part.Assembly is "Door" or "Drawer" ? Around(Together(piece)) : Piece.Outside;

    /// <summary>Returns a side of a copy in words.</summary>
    public string Side(Workpiece piece, Axis axis, bool atEnd) => SideWords.Of(piece, axis, atEnd, UnitBox(piece));

    /// <summary>Returns a side of a copy in words.</summary>
    public string Side(Workpiece piece, BoxSide side) => Side(piece, side.Axis(), side.IsFar());

    /// <summary>The copies of a copy's own assembly that joints connect with it, itself first.</summary>
    public IReadOnlyList<Workpiece> Together(Workpiece piece)
    {
        var found = new List<Workpiece> { piece };
        for (var i = 0; i < found.Count; i++)
            foreach (var joint in Joints.Where(one => one.From.Part.Assembly == one.Into.Part.Assembly))
                if (joint.From.Mark == found[i].Mark && found.TrueForAll(one => one.Mark != joint.Into.Mark))
                    found.Add(joint.Into);
                else if (joint.Into.Mark == found[i].Mark && found.TrueForAll(one => one.Mark != joint.From.Mark))
                    found.Add(joint.From);
        return found;
    }

    private static Box Around(IEnumerable<Workpiece> pieces) =>
        pieces.Select(one => one.Box).Aggregate((one, other) => one.Around(other));
}
