using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Shaping;

/// <summary>Cuts the shapes of a document out of its parts: each lies inside the wood, and takes none from a joint.</summary>
/// <param name="reader">Reads the members of a node.</param>
/// <param name="builder">Holds the copies.</param>
/// <param name="outside">Of the piece.</param>
/// <param name="faults">Takes what does not fit.</param>
internal sealed class Shaper(Func<DesignNode, KindInfo, NodeReader> reader, Builder builder, Box outside, List<Fault> faults)
{
    // Of a face where two butt; more leaves too little for glue and screws (our rule).
    private const double MostOfAFace = 0.2;

    private static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];

    // Where each feature came from, to name the place of one that spoils a joint.
    private readonly List<(Draft Draft, PartFeature Feature, DesignNode Node)> cut = [];

    /// <summary>Shapes free parts, then the parts that are named.</summary>
    public void Shape(IReadOnlyDictionary<FreePart, IReadOnlyList<Draft>> free, IEnumerable<AppliedShape> applied)
    {
        foreach (var (part, copies) in free)
        foreach (var node in part.Shapes)
            Cut(node, copies);
        foreach (var shape in applied)
            if (Named(shape) is { Count: > 0 } copies)
                Cut(shape.Shape, copies);
    }

    /// <summary>Refuses what takes wood that a joint needs; to be asked when all joints are made.</summary>
    public void Check()
    {
        if (cut.Count == 0)
            return;
        var joints = builder
            .Joints.SelectMany(one => new[] { (Draft: one.From, Joint: one), (Draft: one.Into, Joint: one) })
            .ToLookup(one => one.Draft, one => one.Joint);
        foreach (var (draft, feature, node) in cut)
            if (joints[draft].FirstOrDefault(joint => Spoils(draft, feature, joint)) is { } spoiled)
            {
                var other = spoiled.From == draft ? spoiled.Into : spoiled.From;
                Refuse(
                    node,
                    $"takes wood from the joint of the {Lower(draft)} and the {Lower(other)}: move it, or make it smaller"
                );
            }
    }

    private void Cut(DesignNode node, IReadOnlyList<Draft> copies)
    {
        if (
            KindChoice.Find(ShapeList.All, one => one.Info, node, faults) is not { } shape
            || shape.Read(reader(node, shape.Info)) is not { } read
        )
            return;
        foreach (var draft in copies)
        {
            var known = faults.Count;
            var copy = new ShapedCopy(
                draft,
                outside,
                (name, value, says) => faults.Add(Fault.Of($"{node.Path}.{name}", value, says))
            );
            foreach (var feature in read(copy))
                if (faults.Count == known && Fits(draft, feature, node))
                {
                    draft.Features = draft.Features.Add(feature);
                    cut.Add((draft, feature, node));
                }

            // The other copies would say the same again.
            if (faults.Count > known)
                return;
        }
    }

    private bool Fits(Draft draft, PartFeature feature, DesignNode node)
    {
        var (room, box) = (feature.Room(draft.Box), draft.Box);
        foreach (var axis in Axes)
        {
            var (from, to) = (room.Start(axis) - box.Start(axis), room.End(axis) - box.Start(axis));
            if (from < Length.Zero || to > box.Extent(axis))
                Refuse(
                    node,
                    $"reaches from {Text(from)} to {Text(to)} along {Export.Words.Axis(axis)}, and the {Lower(draft)} is only "
                        + $"{Text(box.Extent(axis))} there: keep it inside the wood"
                );
            else if (to <= from)
                Refuse(node, $"takes no wood along {Export.Words.Axis(axis)}: make it larger");
            else
                continue;
            return false;
        }

        return true;
    }

    // What is let in must be there whole, and most of the face where two butt. A fastener goes through its own hole, a pin
    // through a tenon; a slanted edge may be what is joined, and a hollow takes nothing at its ends.
    private static bool Spoils(Draft draft, PartFeature feature, DraftJoint joint)
    {
        if (IsOfTheJoint(feature, joint) || joint.From.Box.Meeting(joint.Into.Box) is not { } met)
            return false;
        if (feature is Arc { IsHollow: true } arc && met.Extent(arc.Run) == Length.Zero)
            return false;
        // Where a notch makes room for the other, they touch in it.
        if (joint.From.Box.Shared(joint.Into.Box) is { } shared && Cutouts.Clear(joint.From, joint.Into, shared))
            return false;
        var taken = Share(feature.Room(draft.Box), met);
        return joint.Depth.IsPositive ? taken > 0 : taken > MostOfAFace;
    }

    private static bool IsOfTheJoint(PartFeature feature, DraftJoint joint) =>
        feature switch
        {
            Hole when joint.Kind is JointKind.Bolted or JointKind.Screwed or JointKind.Dowel or JointKind.Slotted => true,
            Hole hole => joint.Kind == JointKind.MortiseAndTenon && hole.Face.Axis() != joint.Along,
            Bevel bevel => joint.Kind == JointKind.Beveled || bevel.Edge.Axis() == joint.Along,
            _ => false,
        };

    // Of the place where two meet, what lies in the room of a cut; a face has no thickness.
    private static double Share(Box room, Box met)
    {
        var share = 1d;
        foreach (var axis in Axes)
        {
            var both = Length.Min(room.End(axis), met.End(axis)) - Length.Max(room.Start(axis), met.Start(axis));
            if (both < Length.Zero)
                return 0;
            if (met.Extent(axis).IsPositive)
                share *= (double)both.Ticks / met.Extent(axis).Ticks;
        }

        return share;
    }

    private List<Draft>? Named(AppliedShape shape)
    {
        var members = builder.Drafts.Where(one => one.Purpose == PartPurpose.Member).ToList();
        var copies = members.FindAll(one => string.Equals(one.Name, shape.Of, StringComparison.OrdinalIgnoreCase));
        if (copies.Count == 0)
            faults.Add(
                Fault.Of(
                    shape.Shape.Path + ".of",
                    shape.Of,
                    "isn't a part of this design: it has " + string.Join(", ", members.Select(one => one.Name).Distinct())
                )
            );
        return copies;
    }

    private void Refuse(DesignNode node, string says) => faults.Add(Fault.Of(node.Path, node.Kind, says));

    private string Text(Length length) => LengthFormat.WithUnit(length, builder.Unit);

    private static string Lower(Draft draft) => draft.Name.ToLowerInvariant();
}
