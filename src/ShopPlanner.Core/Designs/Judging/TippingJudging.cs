using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Stability;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>
/// Whether a piece stands, empty, while its doors and drawers are all open and a child hangs on one. A piece without any can be
/// climbed by its shelves: where it is tall for its depth, it goes to the wall.
/// </summary>
internal static class TippingJudging
{
    private static readonly double Child = QuantityKind.Mass.ToMetric(60, LengthUnit.Inch);

    private static readonly SourceNote Parts = new(
        "Sum of the parts; contents aren't counted, since they may be taken out",
        Certainty.Derived
    );

    public static IEnumerable<PieceWarning> Of(Piece piece)
    {
        var opening = piece.Parts.Where(part => part.Assembly is "Door" or "Drawer").ToList();
        return opening.Count > 0 ? OfOpening(piece, opening) : OfShelves(piece);
    }

    private static IEnumerable<PieceWarning> OfOpening(Piece piece, IReadOnlyList<PiecePart> opening)
    {
        var factor = Factor(piece, opening);
        return piece.IsFixedToWall ? Fixed(piece, factor) : Standing(piece, factor);
    }

    private static IEnumerable<PieceWarning> OfShelves(Piece piece)
    {
        var depth = Base(piece, Feet(piece));
        if (piece.Outside.Dz < Tipping.TallFrom || depth.Value <= Length.Zero)
            yield break;
        var slender = Tipping.HeightToDepth(Working.Given("Height", piece.Outside.Dz), depth);
        if (slender.Value >= Tipping.Slender)
            yield return new(
                piece.IsFixedToWall ? Severity.Safety : Severity.Anchor,
                piece.IsFixedToWall
                    ? "Anchor it to the wall before you load it: it is tall for its depth, and a child who climbs it can pull it "
                        + "over."
                    : "It is tall for its depth, and a child who climbs it can pull it over. Anchor it to the wall with anti-tip "
                        + "brackets or a hanging rail.",
                null,
                slender
            );
    }

    private static IEnumerable<PieceWarning> Standing(Piece piece, Working<double> factor)
    {
        if (factor.Value < 1)
            yield return new(
                Severity.Anchor,
                "It tips with its doors or drawers open when a child leans on one. Anchor it to the wall with anti-tip brackets "
                    + "or a hanging rail, or make it deeper.",
                null,
                factor
            );
        else if (factor.Value < 1.5)
            yield return new(
                Severity.Anchor,
                "With its doors or drawers open it stays up, but only just. Anchor it to the wall.",
                null,
                factor
            );
        if (piece.Outside.Dz >= Tipping.TallFrom)
            yield return new(
                Severity.Anchor,
                "At 27 in (686 mm) or taller, anchor it to the wall whatever the figure says: a homemade piece has not been "
                    + "tested.",
                null,
                null
            );
    }

    // Built as designed it cannot tip; until it is fixed it can.
    private static IEnumerable<PieceWarning> Fixed(Piece piece, Working<double> factor)
    {
        if (factor.Value < 1)
            yield return new(
                Severity.Safety,
                "Until it is anchored to the wall it tips with its doors or drawers open when a child leans on one. Anchor it "
                    + "before you load it.",
                null,
                factor
            );
        else if (factor.Value < 1.5 || piece.Outside.Dz >= Tipping.TallFrom)
            yield return new(
                Severity.Safety,
                "Anchor it to the wall before you load it, whatever the figure says: a homemade piece has not been tested.",
                null,
                factor
            );
    }

    private static Working<double> Factor(Piece piece, IReadOnlyList<PiecePart> opening)
    {
        var (whole, open) = (PieceWeight.Of(piece.Parts).Value, PieceWeight.Of(opening).Value);
        var (feet, front) = (Feet(piece), Front(opening));
        return Tipping.Factor(
            Behind(piece, feet, front),
            Working.Looked("Weight, empty, without doors and drawers", whole - open, QuantityKind.Mass, 0, Parts),
            Reach(opening),
            Working.Looked("Weight of doors and drawers", open, QuantityKind.Mass, 0, Parts),
            Working.Looked("A child leaning on it", Child, QuantityKind.Mass, 0, Tipping.Child),
            Working.Given("Foremost foot behind the front", Foremost(feet) - front)
        );
    }

    // What stands on the floor.
    private static List<PartCopy> Feet(Piece piece) =>
        [.. piece.Parts.SelectMany(part => part.Copies).Where(copy => copy.Box.Z == Length.Zero)];

    private static Working<Length> Base(Piece piece, List<PartCopy> feet) =>
        Working.Given("Depth of the base", feet.Count == 0 ? piece.Outside.Dy : feet.Max(copy => copy.Box.EndY) - Foremost(feet));

    private static Working<Length> Behind(Piece piece, List<PartCopy> feet, Length front) =>
        Working.Given(
            "Depth from the front to the back of the base",
            (feet.Count == 0 ? piece.Outside.EndY : feet.Max(copy => copy.Box.EndY)) - front
        );

    // The plane of the closed doors and drawers.
    private static Length Front(IReadOnlyList<PiecePart> opening) =>
        opening.SelectMany(part => part.Copies).Min(copy => copy.Box.Y);

    // A piece tips about its foremost foot, which over a toe space or under a face frame stands behind the front.
    private static Length Foremost(List<PartCopy> feet) =>
        feet.Count == 0 ? Length.Zero : feet.Min(copy => copy.Box.Y + (copy.Notch?.Deep ?? Length.Zero));

    // A door swings out by its width, a drawer comes out by its depth. A leaf's width is its widest part, or its stiles' outer
    // edges.
    private static Working<Length> Reach(IReadOnlyList<PiecePart> opening)
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
}
