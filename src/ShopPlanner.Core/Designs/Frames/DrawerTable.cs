using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>Legs and aprons with an opening for drawers in front, between two rails that lie flat: a desk, a nightstand. The end
/// aprons stand flush with the inner faces of the legs, so that both carry the slides of drawers.</summary>
internal sealed class DrawerTable : IFrame
{
    // A front rail from a sheet is as wide as one from a 1x3 (common practice).
    private static readonly Length FrontRailWidth = Length.FromInches(2.5m);

    public KindInfo Info { get; } =
        new(
            "drawer-table",
            "Table frame for drawers",
            "Legs and aprons with an opening for drawers in front: a desk or a nightstand.",
            [
                new("leg", "Legs", MemberType.Role, null),
                new("wide_face", "Wide face of the legs", MemberType.Choice, "front", "front", "side"),
                new("apron", "Aprons", MemberType.Role, null),
                new("rail", "Front rails", MemberType.Role, null),
                new("joint", "Joint", MemberType.Choice, "pocket", "pocket", "dowel"),
                .. LowShelf.Members,
            ]
        );

    public Bay? Build(NodeReader members, Outside outside, Builder builder)
    {
        var (leg, apron, rail) = (members.Role("leg"), members.Role("apron"), members.Role("rail"));
        var (wide, joint) = (
            members.Choice("wide_face") == "front",
            members.Choice("joint") == "dowel" ? JointKind.Dowel : JointKind.PocketScrew
        );
        if (members.Failed)
            return null;
        var sizes = new LegSizes(leg, wide, outside);
        var (tall, low) = (LegAndApron.Tall(apron), outside.Height.Value - LegAndApron.Tall(apron));
        var shelf = LowShelf.Read(members, sizes, low, "aprons");
        if (!members.Failed)
            Check(members, sizes, apron, rail, tall);
        if (members.Failed)
            return null;
        var legs = sizes.AddLegs(builder, "Leg");
        var rails = new Rails(sizes, legs, apron, tall, Length.Zero, RailJoint.Butted(joint));
        rails.Back("Back apron", low, builder);
        var inner = rails with { SetBack = sizes.Lx - apron.Thickness };
        inner.Left("End apron", low, builder);
        inner.Right("End apron", low, builder);
        foreach (var z in new[] { low, outside.Height.Value - rail.Thickness })
            Front(sizes, legs, rail, z, joint, builder);
        shelf?.Add(sizes, legs, joint, builder);
        return Within(sizes, legs, rail, apron, low);
    }

    private static void Check(NodeReader members, LegSizes sizes, RoleMaterial apron, RoleMaterial rail, Length tall)
    {
        if (apron.Thickness > Length.Min(sizes.Lx, sizes.Ly))
            members.Fail("apron", apron.Name, "is thicker than the legs: use a thinner board, or thicker legs");
        if (rail.Thickness * 2 >= tall)
            members.Fail("rail", rail.Name, "leaves no opening between the front rails: use wider aprons, or thinner rails");
    }

    private static void Front(LegSizes sizes, Legs legs, RoleMaterial material, Length z, JointKind joint, Builder builder)
    {
        var deep = material.Width ?? FrontRailWidth;
        var rail = builder.Add(
            new(
                "Front rail",
                "Frame",
                material,
                Box.Between(sizes.Lx, Length.Zero, z, sizes.Width - sizes.Lx, deep, z + material.Thickness),
                Axis.X,
                Axis.Z
            )
            {
                Length = sizes.Between(Axis.X, RailJoint.Butted(joint).Tongue),
                Width = Working.Given("Width of a front rail", deep),
                FacesToFinish = "front edge, both faces",
            }
        );
        foreach (var leg in new[] { legs.FrontLeft, legs.FrontRight })
            builder.Join(joint, rail, leg, Axis.X);
    }

    private static Bay Within(LegSizes sizes, Legs legs, RoleMaterial rail, RoleMaterial apron, Length low)
    {
        var box = Box.Between(
            sizes.Lx,
            Length.Zero,
            low + rail.Thickness,
            sizes.Width - sizes.Lx,
            sizes.Depth - apron.Thickness,
            sizes.Outside.Height.Value - rail.Thickness
        );
        return new(box, box.With(Axis.Y, Length.Zero, Length.Zero))
        {
            Left = legs.FrontLeft,
            Right = legs.FrontRight,
            CoverLeft = sizes.Lx,
            CoverRight = sizes.Lx,
            CoverBottom = rail.Thickness,
            CoverTop = rail.Thickness,
        };
    }
}
