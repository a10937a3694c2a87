using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>How a piece stands on the floor, and what opens of it.</summary>
internal static class StandingPiece
{
    /// <summary>Parts of its doors and drawers.</summary>
    public static IReadOnlyList<PiecePart> Opening(Piece piece) =>
        [.. piece.Parts.Where(part => part.Assembly is "Door" or "Drawer")];

    /// <summary>Depth of what touches the floor, from the foremost foot; of the piece where nothing does.</summary>
    public static Working<Length> Base(Piece piece)
    {
        var feet = Feet(piece);
        return Working.Given("Depth of the base", feet.Count == 0 ? piece.Outside.Dy : Back(piece, feet) - Foremost(feet));
    }

    /// <summary>Depth from the plane of the closed doors and drawers to the back of what touches the floor.</summary>
    public static Working<Length> BehindFront(Piece piece, IReadOnlyList<PiecePart> opening) =>
        Working.Given("Depth from the front to the back of the base", Back(piece, Feet(piece)) - Front(opening));

    /// <summary>How far the foremost foot stands behind the plane of the closed doors and drawers: the piece tips about
    /// it.</summary>
    public static Length SetBack(Piece piece, IReadOnlyList<PiecePart> opening) => Foremost(Feet(piece)) - Front(opening);

    /// <summary>How many leaves and drawers open: each leaf hangs once, each drawer runs on two sides.</summary>
    public static int Opens(Piece piece)
    {
        int Marks(JointKind kind) =>
            piece.Joints.Where(joint => joint.Kind == kind).Select(joint => joint.From).Distinct(StringComparer.Ordinal).Count();
        return Marks(JointKind.Hinged) + ((Marks(JointKind.Sliding) + 1) / 2);
    }

    /// <summary>The farthest that a door or drawer reaches out: a door swings out by its width, a drawer comes out by its
    /// depth. A
    /// leaf's width is its widest part, or its stiles' outer edges.</summary>
    public static Working<Length> Reach(IReadOnlyList<PiecePart> opening)
    {
        var doors = opening
            .Where(part => part.Assembly == "Door")
            .SelectMany(part => part.Copies)
            .Where(copy => copy.Flat == Axis.Y)
            .ToList();
        var drawers = opening
            .Where(part => part.Assembly == "Drawer")
            .SelectMany(part => part.Copies)
            .Where(copy => copy.Along == Axis.Y)
            .ToList();
        var swing = doors
            .Where(copy => copy.Along != Axis.Z || doors.All(one => one.Along == Axis.Z))
            .Select(copy => copy.Box.Dx + Stiles(copy, doors));
        return Working.Given(
            "Reach of what is open",
            swing.Concat(drawers.Select(copy => copy.Box.Dy)).Append(Length.Zero).Max()
        );
    }

    // A rail lies between stiles, let into them: the leaf is as wide as the two reach beyond it.
    private static Length Stiles(PartCopy rail, IEnumerable<PartCopy> doors) =>
        rail.Along == Axis.Z
            ? Length.Zero
            : doors
                .Where(one =>
                    one.Along == Axis.Z
                    && one.Box.Shared(rail.Box) is { } shared
                    && shared.Dx < one.Box.Dx
                    && one.Box.Dy >= rail.Box.Dy
                )
                .Aggregate(Length.Zero, (sum, one) => sum + one.Box.Dx - one.Box.Shared(rail.Box)!.Value.Dx);

    private static Length Back(Piece piece, List<PartCopy> feet) =>
        feet.Count == 0 ? piece.Outside.EndY : feet.Max(copy => copy.Box.EndY);

    private static Length Front(IReadOnlyList<PiecePart> opening) =>
        opening.SelectMany(part => part.Copies).Min(copy => copy.Box.Y);

    // Over a toe space or under a face frame it stands behind the front.
    private static Length Foremost(List<PartCopy> feet) =>
        feet.Count == 0 ? Length.Zero : feet.Min(copy => copy.Box.Y + (copy.ToeNotch?.Deep ?? Length.Zero));

    // What stands on the floor.
    private static List<PartCopy> Feet(Piece piece) =>
        [.. piece.Parts.SelectMany(part => part.Copies).Where(copy => copy.Box.Z == Length.Zero)];
}
