using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>Bottoms of drawers that are too thin for their span: a bottom is held all round, so that its lesser side
/// counts.</summary>
internal static class BottomJudging
{
    private static readonly SourceNote Practice = new(
        "Common practice: drawer bottoms of 1/4 in plywood to 24 in wide, 1/2 in to 36 in; wider ones get a muntin",
        Certainty.CommonPractice
    );

    // Up to this thickness, the widest drawer.
    private static readonly (Length Thinner, Length Widest)[] Rows =
    [
        (Length.FromInches(0.4m), Length.FromInches(24)),
        (Length.FromInches(0.6m), Length.FromInches(36)),
    ];

    public static IEnumerable<PieceWarning> Of(Piece piece) =>
        piece
            .Parts.Where(part => part is { Name: "Drawer bottom", Assembly: "Drawer", Copies.IsEmpty: false })
            .Select(part => Judge(part, piece.Unit))
            .OfType<PieceWarning>();

    private static PieceWarning? Judge(PiecePart part, LengthUnit unit)
    {
        var row = Array.Find(Rows, one => part.Thickness.Value < one.Thinner);
        if (row.Widest == Length.Zero || part.Length.Value <= row.Widest)
            return null;
        return new(
            Severity.Watch,
            $"{part.Name} is wide for its thickness and will sag: use a thicker one, or drawers at most "
                + $"{LengthFormat.WithUnit(row.Widest, unit)} wide.",
            part.Id,
            Working.Looked("Widest for this thickness", row.Widest, new LengthFigure(row.Widest), Practice)
        );
    }
}
