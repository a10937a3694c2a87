using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>The back of a sheet carcass: planted on from behind, in rabbets, or let into grooves.</summary>
internal static class CarcassBack
{
    public static void Add(CarcassSizes size, Draft left, Draft right, Draft bottom, Draft? top, Builder builder)
    {
        if (size.Back is null)
            return;
        if (size.IsBackLetIn)
            LetIn(size, left, right, bottom, top, builder);
        else if (size.BackFit == BackFit.Rabbet)
            Rabbeted(size, left, right, top, builder);
        else
            Planted(size, builder);
    }

    private static void Planted(CarcassSizes size, Builder builder)
    {
        var box = Box.Between(Length.Zero, size.BackY, size.Toe.Value, size.Width.Value, size.Depth.Value, size.Height.Value);
        var back = builder.Add(
            new("Back", "Carcass", size.Back!, box, Axis.Z, Axis.Y)
            {
                Length = Working.Of(
                    "Height of the back",
                    box.Dz,
                    "{height} − {toe}",
                    Working.Geometry,
                    ("height", size.Height),
                    ("toe", size.Toe)
                ),
                Width = size.Width,
                GrainMatters = IsTall(box),
                FacesToFinish = "inner face",
            }
        );
        builder.ButtAt(back, Axis.Y, false);
    }

    // Sides and top hide its edges; it covers those of the bottom and of a stretcher.
    private static void Rabbeted(CarcassSizes size, Draft left, Draft right, Draft? top, Builder builder)
    {
        var rabbet = size.BackGroove;
        var end = top is null ? size.Height.Value : size.TopZ + rabbet;
        var box = Box.Between(
            size.Thick - rabbet,
            size.BackY,
            size.BottomZ,
            size.Width.Value - size.Thick + rabbet,
            size.Depth.Value,
            end
        );
        var back = builder.Add(
            new("Back", "Carcass", size.Back!, box, Axis.Z, Axis.Y)
            {
                Width = Width(size, rabbet),
                GrainMatters = IsTall(box),
                FacesToFinish = "inner face",
            }
        );
        builder.Join(JointKind.Rabbet, back, left, Axis.X, rabbet);
        builder.Join(JointKind.Rabbet, back, right, Axis.X, rabbet);
        if (top is not null)
            builder.Join(JointKind.Rabbet, back, top, Axis.Z, rabbet);
        builder.ButtAt(back, Axis.Y, false);
    }

    // The back of a long low case is cut along its sheet.
    private static bool IsTall(Box box) => box.Dz >= box.Dx;

    private static Working<Length> Width(CarcassSizes size, Length tongue) =>
        Working.Of(
            "Width of the back",
            size.Width.Value - (size.Thick * 2) + (tongue * 2),
            "{width} − 2 × {side} + 2 × {groove}",
            Working.Geometry,
            ("width", size.Width),
            ("side", Working.Given("side", size.Thick)),
            ("groove", Working.Given("let in", tongue))
        );

    private static void LetIn(CarcassSizes size, Draft left, Draft right, Draft bottom, Draft? top, Builder builder)
    {
        var groove = size.BackGroove - size.BackClearance;
        var end = top is null ? size.Height.Value : size.TopZ + groove;
        var y = size.Depth.Value - size.BackSetback - size.Back!.Thickness;
        var box = Box.Between(
            size.Thick - groove,
            y,
            size.BottomZ + size.Thick - groove,
            size.Width.Value - size.Thick + groove,
            y + size.Back.Thickness,
            end
        );
        var back = builder.Add(
            new("Back", "Carcass", size.Back, box, Axis.Z, Axis.Y)
            {
                Width = Width(size, groove),
                GrainMatters = IsTall(box),
                FacesToFinish = "inner face",
            }
        );
        var room = size.BackClearance;
        builder.Join(JointKind.Groove, back, left, Axis.X, groove, room);
        builder.Join(JointKind.Groove, back, right, Axis.X, groove, room);
        builder.Join(JointKind.Groove, back, bottom, Axis.Z, groove, room);
        if (top is null)
        {
            builder.ButtAt(back, Axis.Y, false);
            return;
        }

        builder.Join(JointKind.Groove, back, top, Axis.Z, groove, room);
    }
}
