using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Makes the box behind a drawer's front.</summary>
internal static class DrawerMaker
{
    // The bottom lies so high above the lower edges of the sides (common practice: wood enough below the groove).
    private static readonly Length BottomUp = Length.FromInches(0.375m);

    public static void Add(DrawersAsked asked, NodeReader members, Bay bay, Draft front, Builder builder)
    {
        var y = front.Box.EndY;
        var opening = Working.Given("Opening width", Length.Min(bay.Front.Dx, bay.Box.Dx));
        var deep = Working.Given("Depth behind the front", bay.Box.EndY - y);
        if (Slides.Longest(deep, LengthUnit.Inch) is not { } slide)
        {
            members.Fail(
                "box",
                deep.Figure.Text(members.Unit),
                "is the depth behind the front, shorter than the shortest slide sold: at least 10 in"
            );
            return;
        }

        var box = Sizes(asked, opening, Working.Given("Box height", front.Box.Dz - asked.Room), slide);
        if (!box.FrontBack.Value.IsPositive)
            members.Fail(
                "slide",
                asked.Slide.Figure.Text(members.Unit),
                "and the sides leave nothing of the opening between them"
            );
        if (members.Failed)
            return;
        var x = Length.Max(bay.Front.X, bay.Box.X) + asked.Slide.Value;
        var z = front.Box.Z + Length.FromTicks(asked.Room.Ticks / 2);
        Box(
            asked,
            box,
            Model.Box.Between(x, y, z, x + box.Width.Value, y + box.Depth.Value, z + box.Height.Value),
            bay,
            front,
            builder
        );
        builder.Buy("Drawer slides, " + LengthFormat.Plain(slide.Value, LengthUnit.Inch).Text + " in (pair)", 1);
    }

    private static DrawerBox Sizes(DrawersAsked asked, Working<Length> opening, Working<Length> height, Working<Length> slide) =>
        DrawerBox.Of(
            opening,
            height,
            Working.Of("Box depth", slide.Value, "same as {slide}", Slides.Lengths, ("slide", slide)),
            asked.Slide,
            Working.Given("Side", asked.Box.Thickness),
            asked.Joint,
            asked.Groove
        );

    private static void Box(DrawersAsked asked, DrawerBox sizes, Box whole, Bay bay, Draft front, Builder builder)
    {
        var thick = asked.Box.Thickness;
        Draft Side(Length x) =>
            builder.Add(
                new("Drawer side", "Drawer", asked.Box, whole.With(Axis.X, x, x + thick), Axis.Y, Axis.X)
                {
                    Length = sizes.Depth,
                    Width = sizes.Height,
                    FacesToFinish = "both faces, upper edge",
                }
            );
        var (left, right) = (Side(whole.X), Side(whole.EndX - thick));
        var between = whole.Grown(Axis.X, sizes.LetIn - thick, sizes.LetIn - thick);
        Draft End(string name, Length y) =>
            Joined(
                builder.Add(
                    new(name, "Drawer", asked.Box, between.With(Axis.Y, y, y + thick), Axis.X, Axis.Y)
                    {
                        Length = sizes.FrontBack,
                        Width = sizes.Height,
                        FacesToFinish = "both faces, upper edge",
                    }
                )
            );
        var (fore, aft) = (End("Drawer box front", whole.Y), End("Drawer back", whole.EndY - thick));
        builder.Join(JointKind.Screwed, front, fore, Axis.Y);
        SlideMounts.Carry(asked, bay, left, false, builder);
        SlideMounts.Carry(asked, bay, right, true, builder);
        Bottom(asked, sizes, whole, (left, right, fore, aft), builder);

        Draft Joined(Draft end)
        {
            foreach (var side in new[] { left, right })
                builder.Join(Kind(asked.Joint), end, side, Axis.X, sizes.LetIn);
            return end;
        }
    }

    private static JointKind Kind(DrawerJoint joint) =>
        joint switch
        {
            DrawerJoint.Butt => JointKind.Screwed,
            DrawerJoint.Rabbet => JointKind.Rabbet,
            DrawerJoint.Dado => JointKind.Dado,
            _ => JointKind.Dovetail,
        };

    private static void Bottom(
        DrawersAsked asked,
        DrawerBox sizes,
        Box whole,
        (Draft Left, Draft Right, Draft Fore, Draft Aft) sides,
        Builder builder
    )
    {
        var inset = asked.Groove.Value - asked.Box.Thickness;
        var z = whole.Z + BottomUp;
        var box = whole.Grown(Axis.X, inset, inset).Grown(Axis.Y, inset, inset).With(Axis.Z, z, z + asked.Bottom.Thickness);
        var bottom = builder.Add(
            new("Drawer bottom", "Drawer", asked.Bottom, box, Axis.X, Axis.Z)
            {
                Length = sizes.BottomWidth,
                Width = sizes.BottomDepth,
                FacesToFinish = "upper face",
            }
        );
        foreach (var side in new[] { sides.Left, sides.Right })
            builder.Join(JointKind.Groove, bottom, side, Axis.X, asked.Groove.Value);
        foreach (var end in new[] { sides.Fore, sides.Aft })
            builder.Join(JointKind.Groove, bottom, end, Axis.Y, asked.Groove.Value);
    }
}
