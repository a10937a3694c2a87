using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>A rail under the top against the back, through which the piece is screwed to the wall.</summary>
internal sealed class HangingRail : IFill
{
    public KindInfo Info { get; } =
        new(
            "hanging-rail",
            "Hanging rail",
            "A rail against the back that you screw through into the wall.",
            [new("material", "Material", MemberType.Role, null), new("width", "Width of the rail", MemberType.Length, "3 1/2 in")]
        );

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var (material, width) = (members.Role("material"), members.Length("width"));
        if (members.Failed)
            return bay;
        if (material.Width is { } own)
            width = Working.Given("Width of the board", own);
        // Between a back that is let in and the wall, or else against the back: never across an empty space.
        var place = bay.Behind is { } behind && behind.Dy >= material.Thickness ? behind : bay.Box;
        var box = place
            .With(Axis.Y, place.EndY - material.Thickness, place.EndY)
            .With(Axis.Z, place.EndZ - width.Value, place.EndZ);
        var rail = builder.Add(
            new("Hanging rail", "Carcass", material, box, Axis.X, Axis.Y)
            {
                Length = Working.Given("Clear width", box.Dx),
                Width = width,
                FacesToFinish = "front face",
            }
        );
        foreach (var atEnd in new[] { false, true })
            if (builder.JoinAt(rail, box, Axis.X, atEnd, side => ButtJoint.Hidden(rail, side, Axis.X), Length.Zero) == 0)
                builder.WarnOfNothing(rail, atEnd ? " at its right end" : " at its left end", "Use deeper legs or a case.");
        builder.JoinAt(rail, box, Axis.Z, true, _ => JointKind.Glued, Length.Zero);
        if (bay.Behind is { } empty && place != empty && empty.Dy.IsPositive)
            builder.Warn(
                Severity.Fails,
                $"The hanging rail would pull the back across {LengthFormat.WithUnit(empty.Dy, members.Unit)} of empty space "
                    + "behind it. Make that space as deep as the rail is thick, so that the rail goes there.",
                rail
            );
        Studs(box.Dx, builder);
        builder.IsFixedToWall = true;
        builder.Warn(
            Severity.Safety,
            "Screw the hanging rail into studs or solid masonry, with fasteners made for the wall. Ask a professional if you are "
                + "not sure.",
            rail
        );
        return bay;
    }

    // Two screws for each stud that can lie behind the rail, studs 16 in apart: none is short when all of them do.
    private static void Studs(Length width, Builder builder)
    {
        var studs = 1 + (int)(width / Length.FromInches(16));
        builder.Buy("Cabinet screws for the wall, 2 1/2 in or longer by the wall's covering", studs * 2);
    }
}
