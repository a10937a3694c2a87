using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>What closes a sheet carcass in front: toe board and face frame.</summary>
internal static class CarcassFront
{
    public static void Add(CarcassSizes size, Draft left, Draft right, Draft bottom, Draft top, Builder builder)
    {
        if (size.Toe.Value.IsPositive)
            Toe(size, left, right, bottom, builder);
        if (size.Face is { } face)
            Face(size, face, left, right, bottom, top, builder);
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
        builder.Join(JointKind.Screwed, toe, left, Axis.X);
        builder.Join(JointKind.Screwed, toe, right, Axis.X);
        builder.Join(JointKind.Screwed, bottom, toe, Axis.Z);
        builder.Steps.Add("Cut the toe space out of the lower front corner of both sides before the case goes together.");
    }

    private static void Face(
        CarcassSizes size,
        RoleMaterial face,
        Draft left,
        Draft right,
        Draft bottom,
        Draft top,
        Builder builder
    )
    {
        var (wide, low, high) = (size.FaceWidth, size.Toe.Value, size.Height.Value);
        Draft Stile(Length x, Draft side)
        {
            var stile = builder.Add(
                new(
                    "Face stile",
                    "Face frame",
                    face,
                    Box.Between(x, Length.Zero, low, x + wide, size.FrontY, high),
                    Axis.Z,
                    Axis.Y
                )
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
                }
            );
            builder.Join(JointKind.Glued, stile, side, Axis.Y);
            return stile;
        }

        var (a, b) = (Stile(Length.Zero, left), Stile(size.Width.Value - wide, right));
        Rail(low, bottom);
        Rail(high - wide, top);

        void Rail(Length z, Draft behind)
        {
            var rail = builder.Add(
                new(
                    "Face rail",
                    "Face frame",
                    face,
                    Box.Between(wide, Length.Zero, z, size.Width.Value - wide, size.FrontY, z + wide),
                    Axis.X,
                    Axis.Y
                )
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
                }
            );
            builder.Join(JointKind.PocketScrew, rail, a, Axis.X);
            builder.Join(JointKind.PocketScrew, rail, b, Axis.X);
            builder.Join(JointKind.Glued, rail, behind, Axis.Y);
        }
    }
}
