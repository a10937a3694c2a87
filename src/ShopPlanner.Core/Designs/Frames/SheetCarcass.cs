using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>A case of sheet goods: sides, bottom, top or stretchers, a back let in or planted on, a face frame and a toe space
/// where wanted.</summary>
internal sealed class SheetCarcass : IFrame
{
    public KindInfo Info { get; } =
        new(
            "sheet-carcass",
            "Sheet-goods case",
            "Sides, bottom and top of sheet goods, with a back.",
            [
                new("case", "Sides, bottom, top", MemberType.Role, null),
                new("back", "Back", MemberType.Role, ""),
                new("back_fit", "Back fit", MemberType.Choice, "planted", "planted", "rabbet", "let-in"),
                new("back_groove", "Depth of the back's groove or rabbet", MemberType.Length, "1/4 in"),
                new("back_clearance", "Clearance for the back in its groove, each edge", MemberType.Length, "1/32 in"),
                new("back_setback", "Wood behind the back's groove", MemberType.Length, "1/2 in"),
                new("let_in", "Dado depth for bottom and top", MemberType.Length, "0 in"),
                new("over", "Top of the case", MemberType.Choice, "panel", "panel", "stretchers"),
                new("stretcher", "Stretcher width", MemberType.Length, "3 1/2 in"),
                new("toe", "Height of the toe space", MemberType.Length, "0 in"),
                new("toe_setback", "Depth of the toe space", MemberType.Length, "3 in"),
                new("face", "Face frame", MemberType.Role, ""),
                .. EdgeAsked.ThinMembers("Front edges"),
            ]
        );

    public Bay? Build(NodeReader members, Outside outside, Builder builder)
    {
        var case_ = CarcassSizes.Read(members, outside);
        if (case_ is null)
            return null;
        var (left, right) = Sides(case_, builder);
        var bottom = Level(case_, "Bottom", case_.BottomZ, case_.FrontY, case_.BackY, left, right, builder);
        var top = case_.IsPanel
            ? Level(case_, "Top", case_.TopZ, case_.FrontY, case_.SideBackY, left, right, builder)
            : Stretchers(case_, left, right, builder);
        CarcassBack.Add(case_, left, right, bottom, case_.IsPanel ? top : null, builder);
        foreach (var panel in new[] { left, right, bottom, top })
            EdgeMaker.Treat(panel, BoxSide.Front, case_.Edge, builder);
        var (faceLeft, faceRight) = CarcassFront.Add(case_, left, right, bottom, top, builder);
        return Within(case_) with
        {
            Left = left,
            Right = right,
            Face = case_.Face,
            FaceLeft = faceLeft,
            FaceRight = faceRight,
            Behind = Behind(case_),
        };
    }

    private static (Draft Left, Draft Right) Sides(CarcassSizes size, Builder builder)
    {
        Draft Side(Length x) =>
            builder.Add(
                new(
                    "Side",
                    "Carcass",
                    size.Case,
                    Box.Between(x, size.FrontY, Length.Zero, x + size.Thick, size.SideBackY, size.Height.Value),
                    Axis.Z,
                    Axis.X
                )
                {
                    Length = size.Height,
                    Width = size.SideDepth,
                    FacesToFinish = "both faces, front edge",
                }
            );
        return (Side(Length.Zero), Side(size.Width.Value - size.Thick));
    }

    private static Draft Level(
        CarcassSizes size,
        string name,
        Length z,
        Length y,
        Length endY,
        Draft left,
        Draft right,
        Builder builder
    )
    {
        var box = Box.Between(size.Thick, y, z, size.Width.Value - size.Thick, endY, z + size.Thick)
            .Grown(Axis.X, size.LetIn.Value, size.LetIn.Value);
        var level = builder.Add(
            new(name, "Carcass", size.Case, box, Axis.X, Axis.Z)
            {
                Length = size.LevelLength,
                Width = Wide(size, name, y, endY),
                FacesToFinish = "upper face, front edge",
            }
        );
        var kind = size.LetIn.Value.IsPositive ? JointKind.Dado : JointKind.Screwed;
        builder.Join(kind, level, left, Axis.X, size.LetIn.Value);
        builder.Join(kind, level, right, Axis.X, size.LetIn.Value);
        return level;
    }

    private static Working<Length> Wide(CarcassSizes size, string name, Length y, Length endY) =>
        name == "Stretcher" ? size.Stretcher
        : endY == size.BackY ? size.CaseDepth
        : size.SideDepth;

    private static Draft Stretchers(CarcassSizes size, Draft left, Draft right, Builder builder)
    {
        var width = size.Stretcher.Value;
        Level(size, "Stretcher", size.TopZ, size.StretcherBackY - width, size.StretcherBackY, left, right, builder);
        return Level(size, "Stretcher", size.TopZ, size.FrontY, size.FrontY + width, left, right, builder);
    }

    // What a back that is let in leaves between itself and the wall.
    private static Box? Behind(CarcassSizes size) =>
        size.IsBackLetIn
            ? Box.Between(
                size.Thick,
                size.Depth.Value - size.BackSetback,
                size.BottomZ + size.Thick,
                size.Width.Value - size.Thick,
                size.Depth.Value,
                size.TopZ
            )
            : null;

    private static Bay Within(CarcassSizes size)
    {
        var inside = Box.Between(
            size.Thick,
            size.FrontY,
            size.BottomZ + size.Thick,
            size.Width.Value - size.Thick,
            size.InsideBackY,
            size.TopZ
        );
        var face = size.Face is null ? Length.Zero : size.Face.Thickness;
        if (size.Face is null)
        {
            return new(inside, inside.With(Axis.Y, Length.Zero, Length.Zero))
            {
                CoverLeft = size.Thick,
                CoverRight = size.Thick,
                CoverBottom = size.Thick,
                CoverTop = size.Thick,
            };
        }

        var stile = size.FaceWidth;
        var front = Box.Between(
            stile,
            Length.Zero,
            size.Toe.Value + stile,
            size.Width.Value - stile,
            face,
            size.Height.Value - stile
        );
        return new(inside, front)
        {
            CoverLeft = stile,
            CoverRight = stile,
            CoverBottom = stile,
            CoverTop = stile,
        };
    }
}
