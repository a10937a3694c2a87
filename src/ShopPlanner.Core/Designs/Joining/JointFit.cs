using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Joining;

/// <summary>A joint with the two copies it joins and where they meet.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="From">What is let in, screwed or hung.</param>
/// <param name="Into">What takes it.</param>
internal sealed record JointFit(Joint Joint, PartCopy From, PartCopy Into)
{
    private static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];

    /// <summary>Where the two touch or share wood; null where they lie apart.</summary>
    public Box? Meeting => From.Box.Meeting(Into.Box);

    /// <summary>The longer side of the face in which they meet: fasteners stand along it.</summary>
    public Length Long => Sides().Max();

    /// <summary>The shorter side of that face.</summary>
    public Length Narrow => Sides().Min();

    /// <summary>All joints of a piece.</summary>
    public static IEnumerable<JointFit> Of(Piece piece)
    {
        var copies = piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark, StringComparer.Ordinal);
        return piece.Joints.Select(joint => new JointFit(joint, copies[joint.From], copies[joint.Into]));
    }

    /// <summary>The screw of a screwed or pocket-screwed joint, or why there is none.</summary>
    public (ScrewChoice? Choice, ScrewRefusal? Refused) Screw()
    {
        var into = Into.Box.Extent(Joint.Along);
        if (Joint.Kind == JointKind.PocketScrew)
            return Choose(From.Box.Extent(From.Flat), into, ScrewJoint.Pocket);
        var from = From.Box.Extent(Joint.Along);
        return Choose(Length.Min(from, into), Length.Max(from, into), ScrewJoint.Face);
    }

    /// <summary>The dowels of a doweled joint; null where the wood is too thin for any.</summary>
    public Dowels? Dowels() =>
        Joinery.Dowels.Rod(Narrow) is { } rod && Long >= Joinery.Dowels.Narrowest(rod)
            ? Joinery.Dowels.Of(Working.Given("thickness", Narrow), Working.Given("width", Long), null)
            : null;

    /// <summary>Depth of the dowels' holes in what takes the other piece: 1/8 in of wood stays beyond them.</summary>
    public Length DowelHole(Dowels dowels)
    {
        var room = Length.Max(Length.FromInches(0.25m), Into.Box.Extent(Joint.Along) - Length.FromInches(0.125m));
        return Length.Min(dowels.HoleDepth.Value, room);
    }

    private IEnumerable<Length> Sides() =>
        Meeting is { } box ? Axes.Where(axis => axis != Joint.Along).Select(box.Extent) : [Length.Zero];

    private static (ScrewChoice?, ScrewRefusal?) Choose(Length near, Length into, ScrewJoint joint) =>
        ScrewChoice.Of(Working.Given("near", near), Working.Given("into", into), joint);
}
