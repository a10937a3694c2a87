using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Shaping;

/// <summary>Grooves, dadoes and rabbets.</summary>
internal sealed class GrooveShape : IShape
{
    public KindInfo Info { get; } =
        new(
            "groove",
            "Groove",
            "A groove, a dado or, along an edge, a rabbet: from end to end, or stopped.",
            [
                ShapeMembers.Side("face", "Cut in"),
                ShapeMembers.Direction("run", "Direction it runs in"),
                new("from", "From the edge to its nearer wall", MemberType.Length, "0 in"),
                ShapeMembers.Measured,
                new("width", "Width", MemberType.Length, null),
                new("depth", "Depth", MemberType.Length, null),
                new("start", "Stopped so far from its near end", MemberType.Length, "0 in"),
                new("end", "Stopped so far from its far end", MemberType.Length, "0 in"),
                ShapeMembers.Mirror,
            ]
        );

    public Func<ShapedCopy, IEnumerable<PartFeature>>? Read(NodeReader members)
    {
        var (face, run, isFar) = (members.Side("face"), members.Direction("run"), members.Choice("measured") == "far");
        var (from, width, depth) = (members.Length("from").Value, members.Length("width").Value, members.Length("depth").Value);
        var (start, end, mirror) = (members.Length("start").Value, members.Length("end").Value, members.Choice("mirror"));
        if (!members.Failed && run == face.Axis())
            members.Fail("run", Export.Words.Axis(run), "is the direction that the face looks in: pick one along the face");
        if (members.Failed)
            return null;
        return copy => ShapeMembers.Mirrored(copy, mirror, [Slot(copy)]);

        PartFeature Slot(ShapedCopy copy)
        {
            var deep = copy.Box.Extent(face.Axis());
            if (depth >= deep)
                copy.Fail(
                    "depth",
                    LengthFormat.WithUnit(depth, members.Unit),
                    $"goes right through the {copy.Name}, {LengthFormat.WithUnit(deep, members.Unit)} there: use a notch for that"
                );
            var slot = new Slot(face, run, from, width, depth, start, null);
            if (isFar)
                slot = slot with { From = copy.Box.Extent(slot.Across) - from - width };
            return end == Length.Zero ? slot : slot with { End = copy.Box.Extent(run) - end };
        }
    }
}

/// <summary>Notches at a corner or in an edge.</summary>
internal sealed class NotchShape : IShape
{
    public KindInfo Info { get; } =
        new(
            "notch",
            "Notch",
            "A corner or a piece of an edge, cut out right through.",
            [
                ShapeMembers.Direction("through", "Cut through in direction"),
                ShapeMembers.Side("edge", "Edge it is cut in"),
                new("deep", "Depth from that edge", MemberType.Length, null),
                new("long", "Length along the edge", MemberType.Length, null),
                new("from", "From the corner", MemberType.Length, "0 in"),
                ShapeMembers.Measured,
                ShapeMembers.Mirror,
            ]
        );

    public Func<ShapedCopy, IEnumerable<PartFeature>>? Read(NodeReader members)
    {
        var (through, edge, isFar) = (members.Direction("through"), members.Side("edge"), members.Choice("measured") == "far");
        var (deep, along, from) = (members.Length("deep").Value, members.Length("long").Value, members.Length("from").Value);
        var mirror = members.Choice("mirror");
        if (!members.Failed && through == edge.Axis())
            members.Fail(
                "edge",
                Export.Words.Side(edge),
                "looks in the direction that the notch goes through: pick another side"
            );
        if (members.Failed)
            return null;
        return copy => ShapeMembers.Mirrored(copy, mirror, [Notch(copy)]);

        PartFeature Notch(ShapedCopy copy)
        {
            var (across, run) = (edge.Axis(), BoxSides.Third(through, edge.Axis()));
            if (deep >= copy.Box.Extent(across))
                copy.Fail(
                    "deep",
                    LengthFormat.WithUnit(deep, members.Unit),
                    $"cuts the {copy.Name} in two or shortens it: leave some of its "
                        + LengthFormat.WithUnit(copy.Box.Extent(across), members.Unit)
                );
            var start = isFar ? copy.Box.Extent(run) - from - along : from;
            var into = edge.IsFar() ? copy.Box.Extent(across) - deep : Length.Zero;
            var (inEdge, alongEdge) = ((into, into + deep), (start, start + along));
            var (one, other) = BoxSides.Others(through).First == across ? (inEdge, alongEdge) : (alongEdge, inEdge);
            return new Notch(through, one.Item1, one.Item2, other.Item1, other.Item2);
        }
    }
}
