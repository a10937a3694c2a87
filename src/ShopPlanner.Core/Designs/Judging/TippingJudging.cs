using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Stability;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>Whether a piece stands, empty, while its doors and drawers are all open and a child hangs on one.</summary>
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
        if (opening.Count == 0)
            yield break;
        var factor = Factor(piece, opening);
        foreach (var warning in piece.IsFixedToWall ? Fixed(piece, factor) : Standing(piece, factor))
            yield return warning;
    }

    private static IEnumerable<PieceWarning> Standing(Piece piece, Working<double> factor)
    {
        if (factor.Value < 1)
            yield return new(
                Severity.Fails,
                "It tips with its doors or drawers open when a child leans on one. Fix it to the wall with anti-tip brackets or "
                    + "a hanging rail, or make it deeper.",
                null,
                factor
            );
        else if (factor.Value < 1.5)
            yield return new(
                Severity.Safety,
                "With its doors or drawers open it stays up, but only just. Fix it to the wall.",
                null,
                factor
            );
        if (piece.Outside.Dz >= Tipping.TallFrom)
            yield return new(
                Severity.Safety,
                "At 27 in (686 mm) or taller, fix it to the wall whatever the figure says: a homemade piece has not been tested.",
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
                "Until it is fixed to the wall it tips with its doors or drawers open when a child leans on one. Fix it before "
                    + "you load it.",
                null,
                factor
            );
        else if (factor.Value < 1.5 || piece.Outside.Dz >= Tipping.TallFrom)
            yield return new(
                Severity.Safety,
                "Fix it to the wall before you load it, whatever the figure says: a homemade piece has not been tested.",
                null,
                factor
            );
    }

    private static Working<double> Factor(Piece piece, IReadOnlyList<PiecePart> opening)
    {
        var (whole, open) = (PieceWeight.Of(piece.Parts).Value, PieceWeight.Of(opening).Value);
        return Tipping.Factor(
            Base(piece),
            Working.Looked("Weight, empty, without doors and drawers", whole - open, QuantityKind.Mass, 0, Parts),
            Reach(opening),
            Working.Looked("Weight of doors and drawers", open, QuantityKind.Mass, 0, Parts),
            Working.Looked("A child leaning on it", Child, QuantityKind.Mass, 0, Tipping.Child),
            false
        );
    }

    // What stands on the floor.
    private static Working<Length> Base(Piece piece)
    {
        var feet = piece
            .Parts.SelectMany(part => part.Copies)
            .Select(copy => copy.Box)
            .Where(box => box.Z == Length.Zero)
            .ToList();
        return Working.Given("Depth of the base", feet.Count == 0 ? piece.Outside.Dy : feet.Aggregate((a, b) => a.Around(b)).Dy);
    }

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
