using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Shaping;

/// <summary>Curved edges.</summary>
internal sealed class ArcShape : IShape
{
    public KindInfo Info { get; } =
        new(
            "arc",
            "Arc",
            "A curved edge, an arc of a circle: hollow as under an apron, or a crown.",
            [
                ShapeMembers.Side("edge", "Edge"),
                ShapeMembers.Direction("run", "Direction of the edge"),
                new("rise", "Rise", MemberType.Length, null),
                new("from", "From the near end", MemberType.Length, "0 in"),
                new("to", "From the far end", MemberType.Length, "0 in"),
                new("bend", "Curve", MemberType.Choice, "hollow", "hollow", "crown"),
                ShapeMembers.Mirror,
            ]
        );

    public Func<ShapedCopy, IEnumerable<PartFeature>>? Read(NodeReader members)
    {
        var (edge, run, rise) = (members.Side("edge"), members.Direction("run"), members.Length("rise").Value);
        var (from, to) = (members.Length("from").Value, members.Length("to").Value);
        var (isHollow, mirror) = (members.Choice("bend") == "hollow", members.Choice("mirror"));
        if (!members.Failed && run == edge.Axis())
            members.Fail("run", Export.Words.Axis(run), "is the direction that the edge looks in: pick one along it");
        if (!members.Failed && !rise.IsPositive)
            members.Fail("rise", LengthFormat.WithUnit(rise, members.Unit), "must be more than zero");
        if (members.Failed)
            return null;
        return copy => ShapeMembers.Mirrored(copy, mirror, [Arc(copy)]);

        PartFeature Arc(ShapedCopy copy)
        {
            var arc = new Arc(edge, run, from, copy.Box.Extent(run) - to, rise, isHollow);
            var (chord, deep) = (arc.To - arc.From, copy.Box.Extent(edge.Axis()));
            if (rise >= deep)
                copy.Fail(
                    "rise",
                    LengthFormat.WithUnit(rise, members.Unit),
                    $"cuts the {copy.Name} in two: it is {LengthFormat.WithUnit(deep, members.Unit)} there, leave some of it"
                );
            else if (rise * 2 > chord)
                copy.Fail(
                    "rise",
                    LengthFormat.WithUnit(rise, members.Unit),
                    $"is more than half a circle over {LengthFormat.WithUnit(chord, members.Unit)}: at most half of that"
                );
            return arc;
        }
    }
}

/// <summary>Rounded corners.</summary>
internal sealed class CornerShape : IShape
{
    public KindInfo Info { get; } =
        new(
            "corner",
            "Rounded corner",
            "A corner rounded by a radius; all four where none is named.",
            [
                ShapeMembers.Direction("through", "Cut through in direction"),
                new("radius", "Radius", MemberType.Length, null),
                ShapeMembers.Side("first", "One side of the corner", ""),
                ShapeMembers.Side("second", "The other side", ""),
                ShapeMembers.Mirror,
            ]
        );

    public Func<ShapedCopy, IEnumerable<PartFeature>>? Read(NodeReader members)
    {
        var (through, radius, mirror) = (members.Direction("through"), members.Length("radius").Value, members.Choice("mirror"));
        var (first, second) = (members.Choice("first"), members.Choice("second"));
        if (!members.Failed)
            Check(members, through, radius, first, second);
        if (members.Failed)
            return null;
        var corners = Corners(through, radius, first, second);
        return copy =>
        {
            // Two corners of an edge share it.
            foreach (var corner in corners)
            {
                var room = Length.Min(copy.Box.Extent(corner.First.Axis()), copy.Box.Extent(corner.Second.Axis()));
                if (radius * (corners.Count > 1 ? 2 : 1) > room)
                    copy.Fail(
                        "radius",
                        LengthFormat.WithUnit(radius, members.Unit),
                        $"is too large for the {copy.Name}: it is {LengthFormat.WithUnit(room, members.Unit)} there"
                    );
            }

            return ShapeMembers.Mirrored(copy, mirror, corners);
        };
    }

    private static void Check(NodeReader members, Axis through, Length radius, string first, string second)
    {
        if (!radius.IsPositive)
            members.Fail("radius", LengthFormat.WithUnit(radius, members.Unit), "must be more than zero");
        if (first.Length == 0 != (second.Length == 0))
            members.Fail(
                first.Length == 0 ? "first" : "second",
                "",
                "is missing: a corner has two sides; leave out both for all four"
            );
        if (members.Failed || first.Length == 0)
            return;
        foreach (var (name, side) in new[] { ("first", first), ("second", second) })
            if (DesignReader.Sides[side].Axis() == through)
                members.Fail(name, side, "looks in the direction that the corner is cut through: pick another side");
        if (!members.Failed && DesignReader.Sides[first].Axis() == DesignReader.Sides[second].Axis())
            members.Fail("second", second, "doesn't meet the first side: pick one beside it");
    }

    private static List<Corner> Corners(Axis through, Length radius, string first, string second)
    {
        if (first.Length > 0)
            return [new(DesignReader.Sides[first], DesignReader.Sides[second], radius)];
        var axes = Enum.GetValues<Axis>().Where(axis => axis != through).ToArray();
        bool[] ends = [false, true];
        return
        [
            .. ends.SelectMany(one =>
                ends.Select(other => new Corner(BoxSides.Of(axes[0], one), BoxSides.Of(axes[1], other), radius))
            ),
        ];
    }
}
