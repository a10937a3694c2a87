using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;

namespace ShopPlanner.Core.Making.Labels;

/// <summary>What goes on the labels of a piece's parts.</summary>
public static class PartLabels
{
    /// <summary>Returns one label for every copy that stays in the piece, in the order of its parts.</summary>
    public static ImmutableArray<PartLabel> Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var work = new PieceWork(piece, WorkChoices.Usual);
        var (triangles, hints) = (new Triangles(work), HintList.Of(work).ToLookup(one => one.Mark, StringComparer.Ordinal));
        return [.. work.Workpieces.Select(one => Label(one, triangles, hints[one.Mark], work))];
    }

    private static PartLabel Label(Workpiece piece, Triangles triangles, IEnumerable<Hint> hints, PieceWork work)
    {
        var view = new FaceView(piece.Copy, Face(piece, triangles.Around(piece) ?? work.Piece.Outside));
        var (told, unit) = (hints.ToList(), work.UnitBox(piece));
        ImmutableArray<string> At(BoxSide? side) => Words(told.Where(one => one.Side == side));
        return new(
            piece.Part,
            view,
            SideWords.Of(piece, view.Face.Axis(), view.Face.IsFar(), unit),
            SideWords.Of(piece, view.Right.Axis(), view.Right.IsFar(), unit),
            new(At(view.Left), At(view.Right), At(view.Top), At(view.Bottom), At(null)),
            triangles.Of(piece)
        );
    }

    // The front, the top, and of an upright part the face that looks away from what it belongs to.
    private static BoxSide Face(Workpiece piece, Box around) =>
        piece.Copy.Flat switch
        {
            Axis.Y => BoxSide.Front,
            Axis.Z => BoxSide.Top,
            _ => piece.Box.X + piece.Box.EndX > around.X + around.EndX ? BoxSide.Right : BoxSide.Left,
        };

    private static ImmutableArray<string> Words(IEnumerable<Hint> hints) =>
        [
            .. hints
                .GroupBy(one => one.Word, StringComparer.Ordinal)
                .Select(same => (same.Key, Count: same.Sum(one => one.Count ?? 0)))
                .Select(one => one.Count > 1 ? FormattableString.Invariant($"{one.Count} {Plural(one.Key)}") : one.Key),
        ];

    private static string Plural(string word) => word == "dado" ? "dadoes" : word + "s";
}
