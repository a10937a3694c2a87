using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>A cabinet of square posts: rails in front and behind, sides flush with the inner faces of the posts or inset in
/// grooves, a back planted on from behind, a low shelf between the feet where wanted. Its bottom drops in, so it has none of its
/// own.</summary>
internal sealed class PostCabinet : IFrame
{
    public KindInfo Info { get; } =
        new(
            "post-cabinet",
            "Post cabinet",
            "Four posts with rails front and back, sides flush or inset, and a back screwed on from behind.",
            [
                new("leg", "Posts", MemberType.Role, null),
                new("wide_face", "Wide face of the posts", MemberType.Choice, "front", "front", "side"),
                new("rail", "Rails", MemberType.Role, null),
                new("side", "Sides", MemberType.Role, null),
                new("side_fit", "Side fit", MemberType.Choice, "flush", "flush", "inset"),
                new("groove", "Groove depth for inset sides", MemberType.Length, "3/8 in"),
                new("clearance", "Clearance for inset sides, each edge", MemberType.Length, "1/32 in"),
                new("back", "Back", MemberType.Role, ""),
                new("foot", "Height of the lower rails", MemberType.Length, "4 in"),
                .. RailJoint.Members,
                .. LowShelf.Members,
            ]
        );

    public Bay? Build(NodeReader members, Outside outside, Builder builder)
    {
        var (leg, rail, side, back) = (
            members.Role("leg"),
            members.Role("rail"),
            members.Role("side"),
            members.MaybeRole("back")
        );
        var (foot, wide) = (members.Length("foot"), members.Choice("wide_face") == "front");
        if (members.Failed)
            return null;
        var within = outside with { Depth = Less(outside.Depth, back?.Thickness ?? Length.Zero) };
        var sizes = new LegSizes(leg, wide, within);
        var sides = PostSides.Read(members, sizes, rail, side);
        var joint = RailJoint.Read(members, sizes, Length.Zero, rail.Thickness);
        if (joint is null || sides is null)
            return null;
        var shelf = LowShelf.Read(members, sizes, foot.Value, "lower rails");
        if (members.Failed)
            return null;
        var rails = new Rails(sizes, sizes.AddLegs(builder, "Post"), rail, LegAndApron.Tall(rail), Length.Zero, joint);
        var (low, high) = (foot.Value, within.Height.Value - rails.Tall);
        foreach (var z in new[] { low, high })
        {
            rails.Front("Front rail", z, builder);
            rails.Back("Back rail", z, builder);
        }

        sides.Add(rails, foot, builder);
        shelf?.Add(sizes, rails.Legs, joint.Kind == JointKind.Dowel ? JointKind.Dowel : JointKind.PocketScrew, builder);
        if (back is not null)
            Plant(back, outside, sizes, foot, builder);
        return Within(sizes, rails, low + rails.Tall, high);
    }

    private static Working<Length> Less(Working<Length> depth, Length back) =>
        back == Length.Zero
            ? depth
            : Working.Of(
                "Depth of the frame",
                depth.Value - back,
                "{depth} − {back}",
                Working.Geometry,
                ("depth", depth),
                ("back", Working.Given("back", back))
            );

    private static void Plant(RoleMaterial material, Outside outside, LegSizes sizes, Working<Length> foot, Builder builder)
    {
        var box = Box.Between(Length.Zero, sizes.Depth, foot.Value, sizes.Width, outside.Depth.Value, outside.Height.Value);
        var back = builder.Add(
            new("Back", "Frame", material, box, Axis.Z, Axis.Y)
            {
                Length = Working.Of(
                    "Height of the back",
                    box.Dz,
                    "{height} − {foot}",
                    Working.Geometry,
                    ("height", outside.Height),
                    ("foot", foot)
                ),
                Width = outside.Width,
                GrainMatters = box.Dx <= box.Dz,
                FacesToFinish = "both faces, all edges, before it goes on",
            }
        );
        builder.ButtAt(back, Axis.Y, false);
    }

    private static Bay Within(LegSizes sizes, Rails rails, Length low, Length high)
    {
        var thick = rails.Material.Thickness;
        var box = Box.Between(sizes.Lx, thick, low, sizes.Width - sizes.Lx, sizes.Depth - thick, high);
        return new(box, box.With(Axis.Y, Length.Zero, thick))
        {
            CoverLeft = sizes.Lx,
            CoverRight = sizes.Lx,
            CoverBottom = rails.Tall,
            CoverTop = rails.Tall,
            Left = rails.Legs.FrontLeft,
            Right = rails.Legs.FrontRight,
            Mid = rails.Mid,
            FaceLeft = rails.Legs.FrontLeft,
            FaceRight = rails.Legs.FrontRight,
            ReachBelow = rails.Tall,
            ReachAbove = rails.Tall,
        };
    }
}
