using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>A shelf that hides what holds it: a board with an apron in front and ends below it, open underneath, hung on a
/// beveled cleat. Both cleats are ripped from one board at 45 degrees.</summary>
internal sealed class FloatingShelf : IFrame
{
    // The wall's cleat is so much shorter than the space between the ends, to shift the shelf sideways (common practice).
    private static readonly Length Play = Length.FromInches(0.5m);

    public KindInfo Info { get; } =
        new(
            "floating-shelf",
            "Floating shelf",
            "A shelf hung on a beveled cleat that its apron and ends hide.",
            [
                new("shelf", "Shelf", MemberType.Role, null),
                new("apron", "Apron and ends", MemberType.Role, null),
                new("cleat", "Beveled cleats", MemberType.Role, null),
            ]
        );

    public Bay? Build(NodeReader members, Outside outside, Builder builder)
    {
        var (shelf, apron, cleat) = (members.Role("shelf"), members.Role("apron"), members.Role("cleat"));
        if (members.Failed)
            return null;
        var high = outside.Height.Value - shelf.Thickness;
        // Two cleats one above the other under the shelf, their bevels over each other, 1/8 in short of the lower edge.
        var wide = RuleMarks.Down(Length.FromTicks((high + cleat.Thickness - Length.FromInches(0.125m)).Ticks / 2), members.Unit);
        if (wide < cleat.Thickness * 2)
        {
            members.Fail(
                "cleat",
                cleat.Name,
                $"leaves cleats of {LengthFormat.WithUnit(Length.Max(wide, Length.Zero), members.Unit)}: too narrow for a bevel "
                    + $"and screws, at least {LengthFormat.WithUnit(cleat.Thickness * 2, members.Unit)}. Make the shelf higher"
            );
            return null;
        }

        var board = Board(shelf, outside, high, builder);
        var (front, ends) = Apron(apron, outside, high, builder);
        foreach (var under in ends.Prepend(front))
            builder.Join(ButtJoint.Hidden(under, board, Axis.Z), under, board, Axis.Z);
        var clear = Box.Between(
            apron.Thickness,
            outside.Depth.Value - cleat.Thickness,
            high - wide,
            outside.Width.Value - apron.Thickness,
            outside.Depth.Value,
            high
        );
        Hang(cleat, clear, board, ends, builder);
        new WallHanging(outside, clear.Z + Length.FromTicks(cleat.Thickness.Ticks / 2), builder).Note(members.Unit);
        return null;
    }

    private static Draft Board(RoleMaterial material, Outside outside, Length z, Builder builder) =>
        builder.Add(
            new(
                "Shelf",
                "Shelves",
                material,
                new Box(Length.Zero, Length.Zero, z, outside.Width.Value, outside.Depth.Value, material.Thickness),
                Axis.X,
                Axis.Z
            )
            {
                Length = outside.Width,
                Width = outside.Depth,
                FacesToFinish = "all faces",
            }
        );

    private static (Draft Front, Draft[] Ends) Apron(RoleMaterial material, Outside outside, Length high, Builder builder)
    {
        var (thick, depth) = (material.Thickness, outside.Depth.Value);
        var front = builder.Add(
            new(
                "Apron",
                "Frame",
                material,
                new Box(Length.Zero, Length.Zero, Length.Zero, outside.Width.Value, thick, high),
                Axis.X,
                Axis.Y
            )
            {
                Length = outside.Width,
                FacesToFinish = "front face, edges",
            }
        );
        Draft End(Length x)
        {
            var end = builder.Add(
                new("End", "Frame", material, new Box(x, thick, Length.Zero, thick, depth - thick, high), Axis.Y, Axis.X)
                {
                    Length = Working.Of(
                        "Length of an end",
                        depth - thick,
                        "{depth} − {apron}",
                        Working.Geometry,
                        ("depth", outside.Depth),
                        ("apron", Working.Given("apron", thick))
                    ),
                    FacesToFinish = "outer face, lower edge",
                }
            );
            builder.Join(ButtJoint.Hidden(end, front, Axis.Y), end, front, Axis.Y);
            return end;
        }

        return (front, [End(Length.Zero), End(outside.Width.Value - thick)]);
    }

    private static void Hang(RoleMaterial material, Box clear, Draft board, Draft[] ends, Builder builder)
    {
        var shelf = builder.Add(
            new("Beveled shelf cleat", "Frame", material, clear, Axis.X, Axis.Y)
            {
                Length = Working.Given("Between the ends", clear.Dx),
                Width = Working.Given("Width at the long side of the bevel", clear.Dz),
            }
        );
        // Glued edge to face over its whole length, or from pockets where it is wide enough: no screw is to show on the shelf.
        var kind = ButtJoint.TakesPockets(shelf, board, Axis.Z) ? JointKind.PocketScrew : JointKind.Glued;
        builder.Join(kind, shelf, board, Axis.Z);
        foreach (var end in ends)
            builder.Join(ButtJoint.Hidden(shelf, end, Axis.X), shelf, end, Axis.X);
        var (half, top) = (Length.FromTicks(Play.Ticks / 2), clear.Z + material.Thickness);
        var wall = builder.Add(
            new(
                "Beveled wall cleat",
                "Frame",
                material,
                clear.Grown(Axis.X, -half, -(Play - half)).With(Axis.Z, top - clear.Dz, top),
                Axis.X,
                Axis.Y
            )
            {
                Length = Working.Of(
                    "Length of the wall cleat",
                    clear.Dx - Play,
                    "{clear} − {play}",
                    Working.Geometry,
                    ("clear", Working.Given("Between the ends", clear.Dx)),
                    ("play", Working.Given("room to shift it", Play))
                ),
                Width = Working.Given("Width at the long side of the bevel", clear.Dz),
            }
        );
        builder.Join(JointKind.Beveled, shelf, wall, Axis.Z, material.Thickness);
    }
}
