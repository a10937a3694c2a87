using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Core.Designs.Counting;

/// <summary>A piece's own parts, as workings add them up.</summary>
public static class PieceParts
{
    /// <summary>Everything that stays in the piece; spacers and practice pieces come from scrap and are left out.</summary>
    public static TakenParts Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var members = piece.Parts.Where(part => part.Purpose == PartPurpose.Member).ToList();
        return new([.. members.Select(Count)], [.. GluedPanels.Of(piece, members)], Stands(piece));
    }

    /// <summary>A material as it is counted.</summary>
    internal static CountedMaterial Material(RoleMaterial material) =>
        new(material.Name, material.Species, material.Form == MaterialForm.Board, material.Width);

    private static CountedPart Count(PiecePart part) =>
        new(
            part.Name,
            part.Copies.Length,
            part.Length.Value,
            part.Width.Value,
            part.Thickness.Value,
            Material(part.Material),
            Faces(part)
        );

    // A frame or a fill says nothing of a part that nobody sees; a part that someone placed freely has no such word.
    private static FinishFaces Faces(PiecePart part) =>
        part is { Assembly: "Free parts", FacesToFinish.Length: 0 } ? FinishFaces.NotSaid : FinishFaces.Of(part.FacesToFinish);

    private static StandingSize Stands(Piece piece)
    {
        var opening = StandingPiece.Opening(piece);
        return new(
            piece.Outside.Dx,
            (opening.Count == 0 ? StandingPiece.Base(piece) : StandingPiece.BehindFront(piece, opening)).Value,
            opening.Count == 0 ? Length.Zero : StandingPiece.SetBack(piece, opening),
            piece.Outside.Dz,
            opening.Count == 0 ? 0 : Math.Max(1, StandingPiece.Opens(piece)),
            opening.Count == 0 ? Length.Zero : StandingPiece.Reach(opening).Value,
            [.. opening.Where(part => part.Purpose == PartPurpose.Member).Select(Count)]
        );
    }
}
