using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>The back of a sheet carcass: planted on from behind, or let into grooves.</summary>
internal static class CarcassBack
{
    public static void Add(CarcassSizes size, Draft left, Draft right, Draft bottom, Draft? top, Builder builder)
    {
        if (size.Back is null)
            return;
        if (size.IsBackLetIn)
            LetIn(size, left, right, bottom, top, builder);
        else
            Planted(size, left, right, bottom, top, builder);
    }

    private static void Planted(CarcassSizes size, Draft left, Draft right, Draft bottom, Draft? top, Builder builder)
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
                FacesToFinish = "inner face",
            }
        );
        foreach (var part in new[] { left, right, bottom, top })
            if (part is not null)
                builder.Join(JointKind.Screwed, back, part, Axis.Y);
    }

    private static void LetIn(CarcassSizes size, Draft left, Draft right, Draft bottom, Draft? top, Builder builder)
    {
        var groove = size.BackGroove;
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
                Width = Working.Of(
                    "Width of the back",
                    box.Dx,
                    "{width} − 2 × {side} + 2 × {groove}",
                    Working.Geometry,
                    ("width", size.Width),
                    ("side", Working.Given("side", size.Thick)),
                    ("groove", Working.Given("groove", groove))
                ),
                FacesToFinish = "inner face",
            }
        );
        builder.Join(JointKind.Groove, back, left, Axis.X, groove);
        builder.Join(JointKind.Groove, back, right, Axis.X, groove);
        builder.Join(JointKind.Groove, back, bottom, Axis.Z, groove);
        if (top is not null)
            builder.Join(JointKind.Groove, back, top, Axis.Z, groove);
    }
}
