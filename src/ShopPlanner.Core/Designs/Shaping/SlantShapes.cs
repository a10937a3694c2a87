using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Shaping;

/// <summary>Bevels, miters and chamfers.</summary>
internal sealed class BevelShape : IShape
{
    // A saw's blade tilts to 45°; with a jig more is cut, but hardly beyond this.
    private const double Steepest = 80;

    public KindInfo Info { get; } =
        new(
            "bevel",
            "Bevel",
            "An edge or an end cut at a slant: a bevel, a miter or, where it stops short of the other face, a chamfer.",
            [
                ShapeMembers.Side("edge", "Edge or end"),
                ShapeMembers.Side("keeps", "Face beside it that keeps its full size"),
                new("angle", "Degrees from a square cut", MemberType.Angle, null),
                new("reach", "Only so far, for a chamfer", MemberType.Length, ""),
                ShapeMembers.Mirror,
            ]
        );

    public Func<ShapedCopy, IEnumerable<PartFeature>>? Read(NodeReader members)
    {
        var (edge, keeps, angle) = (members.Side("edge"), members.Side("keeps"), members.Angle("angle"));
        var (reach, mirror) = (members.MaybeLength("reach")?.Value, members.Choice("mirror"));
        if (!members.Failed && edge.Axis() == keeps.Axis())
            members.Fail("keeps", Export.Words.Side(keeps), "isn't beside that edge: pick a face that meets it");
        if (!members.Failed && angle is not (> 0 and <= Steepest))
            members.Fail(
                "angle",
                angle.ToString(CultureInfo.InvariantCulture),
                FormattableString.Invariant($"must be more than 0 and at most {Steepest} degrees")
            );
        if (members.Failed)
            return null;
        return copy => ShapeMembers.Mirrored(copy, mirror, [Bevel(copy)]);

        PartFeature Bevel(ShapedCopy copy)
        {
            var bevel = new Bevel(edge, keeps, angle, reach);
            if (bevel.Back(copy.Box) >= copy.Box.Extent(edge.Axis()))
                copy.Fail(
                    "angle",
                    angle.ToString(CultureInfo.InvariantCulture),
                    $"takes off all of the {copy.Name}: use a smaller angle, or a reach"
                );
            return bevel;
        }
    }
}

/// <summary>Tapers, of legs above all.</summary>
internal sealed class TaperShape : IShape
{
    public KindInfo Info { get; } =
        new(
            "taper",
            "Taper",
            "Faces that slope toward one end, as of a leg that grows slender.",
            [
                new("faces", "Faces", MemberType.Choice, null, [.. ShapeMembers.Sides, "inner", "all"]),
                ShapeMembers.Side("end", "Slender end"),
                new("from", "From the other end to where it begins", MemberType.Length, "0 in"),
                new("to", "Size left at the slender end", MemberType.Length, null),
            ]
        );

    public Func<ShapedCopy, IEnumerable<PartFeature>>? Read(NodeReader members)
    {
        var (faces, end) = (members.Choice("faces"), members.Side("end"));
        var (from, to) = (members.Length("from").Value, members.Length("to").Value);
        if (!members.Failed && !to.IsPositive)
            members.Fail(
                "to",
                LengthFormat.WithUnit(to, members.Unit),
                "must be more than zero: leave some wood at the slender end"
            );
        if (!members.Failed && DesignReader.Sides.TryGetValue(faces, out var side) && side.Axis() == end.Axis())
            members.Fail("faces", faces, "is an end, not a face beside the slender end: pick one that runs to it");
        if (members.Failed)
            return null;
        return copy => Faces(copy, faces, end).Select(face => Taper(copy, face)).OfType<PartFeature>();

        // Where both faces of a direction slope, each takes half.
        Taper? Taper(ShapedCopy copy, BoxSide face)
        {
            var (whole, along) = (copy.Box.Extent(face.Axis()), copy.Box.Extent(end.Axis()));
            var off = faces == "all" ? Length.FromTicks((whole - to).Ticks / 2) : whole - to;
            if (off.IsPositive && from < along)
                return new(face, end, along - from, off);
            var (name, value) = off.IsPositive ? ("from", from) : ("to", to);
            var most = off.IsPositive ? along : whole;
            copy.Fail(
                name,
                LengthFormat.WithUnit(value, members.Unit),
                $"leaves nothing to taper: the {copy.Name} is {LengthFormat.WithUnit(most, members.Unit)} there, give less"
            );
            return null;
        }
    }

    private static List<BoxSide> Faces(ShapedCopy copy, string faces, BoxSide end)
    {
        var beside = Enum.GetValues<BoxSide>().Where(side => side.Axis() != end.Axis()).ToList();
        if (faces == "all")
            return beside;
        if (faces != "inner")
            return [DesignReader.Sides[faces]];
        var inner = beside.Where(side => copy.Inner(side.Axis()) == side).ToList();
        if (inner.Count == 0)
            copy.Fail("faces", faces, $"looks to the middle of the piece, and the {copy.Name} is there: name its faces");
        return inner;
    }
}
