using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Shaping;

/// <summary>Round holes: one, or a row of them.</summary>
internal sealed class HoleShape : IShape
{
    private static readonly string[] Positions = ["x", "y", "z"];

    public KindInfo Info { get; } =
        new(
            "hole",
            "Hole",
            "A round hole, right through or to a depth, or a row of them.",
            [
                ShapeMembers.Side("face", "Bored from"),
                new("x", "Center from the left end of the part", MemberType.Length, ""),
                new("y", "Center from the front of the part", MemberType.Length, ""),
                new("z", "Center from the underside of the part", MemberType.Length, ""),
                new("diameter", "Diameter", MemberType.Length, null),
                new("depth", "Depth (right through if empty)", MemberType.Length, ""),
                new("count", "Holes in a row", MemberType.Count, "1"),
                ShapeMembers.Direction("row", "Direction of the row", ""),
                new("step", "From one to the next", MemberType.Length, ""),
                ShapeMembers.Mirror,
            ]
        );

    public Func<ShapedCopy, IEnumerable<PartFeature>>? Read(NodeReader members)
    {
        var face = members.Side("face");
        var at = Positions.Select(name => members.MaybeLength(name)?.Value).ToArray();
        var (diameter, depth) = (members.Length("diameter").Value, members.MaybeLength("depth")?.Value);
        var (count, step, mirror) = (members.Count("count"), members.MaybeLength("step")?.Value, members.Choice("mirror"));
        Axis? row = members.Choice("row") is { Length: > 0 } ? members.Direction("row") : null;
        if (members.Failed)
            return null;
        CheckPlace(members, face, at);
        CheckRow(members, face, count, row, step);
        if (!diameter.IsPositive)
            members.Fail("diameter", LengthFormat.WithUnit(diameter, members.Unit), "must be more than zero");
        if (depth is { IsPositive: false } none)
            members.Fail(
                "depth",
                LengthFormat.WithUnit(none, members.Unit),
                "must be more than zero: leave it out for a hole right through"
            );
        if (members.Failed)
            return null;
        var first = new Hole(face, Length.Zero, Length.Zero, diameter, depth);
        var (one, other) = first.Axes;
        first = first with { First = at[(int)one]!.Value, Second = at[(int)other]!.Value };
        var holes = Enumerable.Range(0, count).Select(i => Moved(first, row, (step ?? Length.Zero) * i)).ToList();
        return copy => ShapeMembers.Mirrored(copy, mirror, holes);
    }

    private static Hole Moved(Hole hole, Axis? row, Length by) =>
        row == hole.Axes.First ? hole with { First = hole.First + by }
        : row == hole.Axes.Second ? hole with { Second = hole.Second + by }
        : hole;

    private static void CheckPlace(NodeReader members, BoxSide face, Length?[] at)
    {
        for (var i = 0; i < at.Length; i++)
            if (i == (int)face.Axis() && at[i] is { } given)
                members.Fail(
                    Positions[i],
                    LengthFormat.WithUnit(given, members.Unit),
                    "is the direction that the hole is bored in: leave it out, and give its depth"
                );
            else if (i != (int)face.Axis() && at[i] is null)
                members.Fail(Positions[i], "", "is missing: a hole is placed along both directions of its face");
    }

    private static void CheckRow(NodeReader members, BoxSide face, int count, Axis? row, Length? step)
    {
        if (count < 1)
            members.Fail("count", count.ToString(CultureInfo.InvariantCulture), "must be at least 1 hole");
        if (count > 1 && row is null)
            members.Fail("row", "", "is missing: say in which direction the holes follow each other");
        if (count > 1 && step is not { IsPositive: true })
            members.Fail("step", "", "is missing: say how far it is from one hole to the next");
        if (row == face.Axis())
            members.Fail("row", Positions[(int)row], "is the direction that the holes are bored in: pick one along the face");
    }
}
