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

    private static readonly string[] Climbed = ["Carcass", "Shelves", "Slats", "Decks"];

    private static readonly SourceNote Parts = new(
        "Sum of the parts; contents aren't counted, since they may be taken out",
        Certainty.Derived
    );

    public static IEnumerable<PieceWarning> Of(Piece piece)
    {
        var opening = StandingPiece.Opening(piece);
        return opening.Count > 0 ? OfOpening(piece, opening) : OfShelves(piece);
    }

    private static IEnumerable<PieceWarning> OfOpening(Piece piece, IReadOnlyList<PiecePart> opening)
    {
        var factor = Factor(piece, opening);
        return piece.IsFixedToWall ? Fixed(piece, factor) : Standing(piece, factor);
    }

    private static IEnumerable<PieceWarning> OfShelves(Piece piece)
    {
        // A table or a desk has nothing to climb.
        if (!piece.Parts.Any(part => Climbed.Contains(part.Assembly)))
            yield break;
        var depth = StandingPiece.Base(piece);
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
        return Tipping.Factor(
            StandingPiece.BehindFront(piece, opening),
            Working.Looked("Weight, empty, without doors and drawers", whole - open, QuantityKind.Mass, 0, Parts),
            StandingPiece.Reach(opening),
            Working.Looked("Weight of doors and drawers", open, QuantityKind.Mass, 0, Parts),
            Working.Looked("A child leaning on it", Child, QuantityKind.Mass, 0, Tipping.Child),
            Working.Given("Foremost foot behind the front", StandingPiece.SetBack(piece, opening))
        );
    }
}
