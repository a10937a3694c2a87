using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>A box: four sides with the ends in rabbets of front and back, a bottom in grooves, a lid on hinges where wanted. With
/// low sides and hand slots it is a tray.</summary>
internal sealed class LiddedBox : IFrame
{
    public KindInfo Info { get; } =
        new(
            "box",
            "Box",
            "Four sides and a bottom in grooves: a tray, or a chest with a lid on hinges.",
            [
                new("side", "Sides", MemberType.Role, null),
                new("bottom", "Bottom", MemberType.Role, null),
                new("groove", "Depth of the bottom's groove", MemberType.Length, "1/4 in"),
                new("bottom_height", "Wood below the bottom", MemberType.Length, "3/8 in"),
                new("front_lower", "Front lower than the ends by", MemberType.Length, "0 in"),
                new("back_lower", "Back lower than the ends by", MemberType.Length, "0 in"),
                new("handles", "Hand slots in the ends", MemberType.Choice, "none", "none", "slots"),
                new("lid", "Lid", MemberType.Role, ""),
                new("edging", "Edging of the lid", MemberType.Role, ""),
                new("overhang", "Lid overhang, ends and front", MemberType.Length, "1/2 in"),
                .. EdgeAsked.ThinMembers("Upper edges"),
            ]
        );

    public Bay? Build(NodeReader members, Outside outside, Builder builder)
    {
        if (BoxSizes.Read(members, outside) is not { } box)
            return null;
        var (front, back) = (Long(box, true, builder), Long(box, false, builder));
        foreach (var isLeft in new[] { true, false })
            End(box, isLeft, front, back, builder);
        Bottom(box, builder);
        if (box.HasSlots)
            builder.Steps.Add(
                "Make a hand slot in both ends before they are joined: bore a 1 in hole at each end of a slot 4 in long, at "
                    + "least 3/4 in below the upper edge, saw out what is between, and round its edges."
            );
        if (box.Lid is { } lid)
            new BoxLid(box, lid, members.MaybeRole("edging"), outside, back, builder).Add(members.Unit);
        return null;
    }

    private static Draft Long(BoxSizes box, bool isFront, Builder builder)
    {
        var lower = isFront ? box.FrontLower : box.BackLower;
        var y = isFront ? box.Whole.Y : box.Whole.EndY - box.Thick;
        var side = builder.Add(
            new(
                isFront ? "Front" : "Back",
                "Box",
                box.Side,
                box.Whole.With(Axis.Y, y, y + box.Thick).With(Axis.Z, Length.Zero, box.Whole.Dz - lower),
                Axis.X,
                Axis.Y
            )
            {
                Length = Working.Given("Length of the box", box.Whole.Dx),
                Width = box.Lower(isFront ? "Height of the front" : "Height of the back", lower),
                FacesToFinish = "both faces, upper edge",
            }
        );
        EdgeMaker.Treat(side, BoxSide.Top, box.Edge, builder);
        return side;
    }

    private static void End(BoxSizes box, bool isLeft, Draft front, Draft back, Builder builder)
    {
        var x = isLeft ? box.Whole.X : box.Whole.EndX - box.Thick;
        var end = builder.Add(
            new(
                "End",
                "Box",
                box.Side,
                box.Whole.With(Axis.X, x, x + box.Thick).Grown(Axis.Y, box.Rabbet - box.Thick, box.Rabbet - box.Thick),
                Axis.Y,
                Axis.X
            )
            {
                Length = Working.Of(
                    "Length of an end",
                    box.Whole.Dy - ((box.Thick - box.Rabbet) * 2),
                    "{depth} − 2 × ({side} − {rabbet})",
                    Working.Geometry,
                    ("depth", Working.Given("Depth of the box", box.Whole.Dy)),
                    ("side", Working.Given("side", box.Thick)),
                    ("rabbet", Working.Given("rabbet", box.Rabbet))
                ),
                FacesToFinish = "both faces, upper edge",
            }
        );
        EdgeMaker.Treat(end, BoxSide.Top, box.Edge, builder);
        foreach (var side in new[] { front, back })
            builder.Join(JointKind.Rabbet, end, side, Axis.Y, box.Rabbet);
    }

    private static void Bottom(BoxSizes box, Builder builder)
    {
        var inset = box.Groove - box.Thick;
        var bottom = builder.Add(
            new(
                "Bottom",
                "Box",
                box.Bottom,
                box.Whole.Grown(Axis.X, inset, inset)
                    .Grown(Axis.Y, inset, inset)
                    .With(Axis.Z, box.BottomZ, box.BottomZ + box.Bottom.Thickness),
                Axis.X,
                Axis.Z
            )
            {
                Length = box.Between("Length of the bottom", box.Whole.Dx),
                Width = box.Between("Width of the bottom", box.Whole.Dy),
                FacesToFinish = "upper face, before it goes in",
            }
        );
        foreach (var (atEnd, axis) in new[] { (false, Axis.X), (true, Axis.X), (false, Axis.Y), (true, Axis.Y) })
        {
            var clear = bottom.Box.Grown(axis, -box.Groove, -box.Groove);
            foreach (var side in builder.Touching(clear, axis, atEnd))
                builder.Join(JointKind.Groove, bottom, side, axis, box.Groove);
        }
    }
}
