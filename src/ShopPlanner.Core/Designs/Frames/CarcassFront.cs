using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>What closes a sheet carcass in front: toe board and face frame.</summary>
internal static class CarcassFront
{
    /// <summary>Adds them; the stiles of the face frame, null without one.</summary>
    public static (Draft? Left, Draft? Right) Add(
        CarcassSizes size,
        Draft left,
        Draft right,
        Draft bottom,
        Draft top,
        Builder builder
    )
    {
        if (size.Toe.Value.IsPositive)
            Toe(size, left, right, bottom, builder);
        return size.Face is { } face ? Face(size, face, left, right, bottom, top, builder) : (null, null);
    }

    private static void Toe(CarcassSizes size, Draft left, Draft right, Draft bottom, Builder builder)
    {
        var y = size.FrontY + size.ToeSetback;
        var box = Box.Between(size.Thick, y, Length.Zero, size.Width.Value - size.Thick, y + size.Thick, size.Toe.Value);
        var toe = builder.Add(
            new("Toe board", "Carcass", size.Case, box, Axis.X, Axis.Y)
            {
                Length = Working.Of(
                    "Length between the sides",
                    box.Dx,
                    "{width} − 2 × {side}",
                    Working.Geometry,
                    ("width", size.Width),
                    ("side", Working.Given("side", size.Thick))
                ),
                Width = size.Toe,
                FacesToFinish = "front face",
            }
        );
        foreach (var side in new[] { left, right })
            builder.Join(ButtJoint.Hidden(toe, side, Axis.X), toe, side, Axis.X);
        builder.Join(JointKind.Screwed, bottom, toe, Axis.Z);
        if (size.ToeSetback.IsPositive)
            Notch(size, left, right);
    }

    private static void Notch(CarcassSizes size, Draft left, Draft right)
    {
        var notch = new Notch(Axis.X, Length.Zero, size.ToeSetback, Length.Zero, size.Toe.Value);
        foreach (var side in new[] { left, right })
            side.Features = side.Features.Add(notch);
    }

    private static (Draft Left, Draft Right) Face(
        CarcassSizes size,
        RoleMaterial face,
        Draft left,
        Draft right,
        Draft bottom,
        Draft top,
        Builder builder
    )
    {
        var wide = size.FaceWidth;
        var stiles = new[] { (X: Length.Zero, Side: left), (X: size.Width.Value - wide, Side: right) }
            .Select(one =>
            {
                var stile = builder.Add(Stile(size, face, one.X));
                builder.Join(JointKind.Glued, stile, one.Side, Axis.Y);
                return stile;
            })
            .ToList();
        foreach (var (z, behind) in new[] { (size.Toe.Value, bottom), (size.Height.Value - wide, top) })
        {
            var rail = builder.Add(Rail(size, face, z));
            foreach (var stile in stiles)
                builder.Join(JointKind.PocketScrew, rail, stile, Axis.X);
            builder.Join(JointKind.Glued, rail, behind, Axis.Y);
        }

        return (stiles[0], stiles[1]);
    }

    private static Draft Stile(CarcassSizes size, RoleMaterial face, Length x)
    {
        var (low, high) = (size.Toe.Value, size.Height.Value);
        var box = Box.Between(x, Length.Zero, low, x + size.FaceWidth, size.FrontY, high);
        return new("Face stile", "Face frame", face, box, Axis.Z, Axis.Y)
        {
            Length = Working.Of(
                "Stile length",
                high - low,
                "{height} − {toe}",
                Working.Geometry,
                ("height", size.Height),
                ("toe", size.Toe)
            ),
            FacesToFinish = "front face, edges",
        };
    }

    private static Draft Rail(CarcassSizes size, RoleMaterial face, Length z)
    {
        var wide = size.FaceWidth;
        var box = Box.Between(wide, Length.Zero, z, size.Width.Value - wide, size.FrontY, z + wide);
        return new("Face rail", "Face frame", face, box, Axis.X, Axis.Y)
        {
            Length = Working.Of(
                "Rail length",
                size.Width.Value - (wide * 2),
                "{width} − 2 × {stile}",
                Working.Geometry,
                ("width", size.Width),
                ("stile", Working.Given("stile", wide))
            ),
            FacesToFinish = "front face, edges",
        };
    }
}
