using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Layouts;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Drawings of a piece of furniture. Each uses the whole width that it is given and at most its height; what belongs to
/// a part carries the mark of its copy. A drawing in a room with a whole scale says its scale.</summary>
public static class PieceDrawings
{
    /// <summary>Straight from the front, with dimensions.</summary>
    /// <param name="piece">What.</param>
    /// <param name="width">Width in page units.</param>
    /// <param name="height">Most height.</param>
    /// <param name="highlight">Mark of a copy, or letter of a part, drawn in chalk; null for none.</param>
    public static LineDrawing Front(Piece piece, double width, double height, string? highlight = null) =>
        new FlatPage(piece, PieceRoom.Of(width, height), highlight).One(ViewFrom.Front, "Front");

    /// <summary>Straight from the front, with dimensions.</summary>
    /// <param name="piece">What.</param>
    /// <param name="room">Its width is used, its height is the most.</param>
    /// <param name="highlight">Mark of a copy, or letter of a part, drawn in chalk; null for none.</param>
    /// <param name="picks">What can be chosen on a page; null for a drawing that is only looked at.</param>
    public static LineDrawing Front(Piece piece, DrawingRoom room, string? highlight = null, PiecePicks? picks = null) =>
        new FlatPage(piece, PieceRoom.Of(room), highlight).One(ViewFrom.Front, "Front", picks);

    /// <summary>Straight from the right.</summary>
    /// <inheritdoc cref="Front(Piece, double, double, string?)" path="/param"/>
    public static LineDrawing Side(Piece piece, double width, double height, string? highlight = null) =>
        new FlatPage(piece, PieceRoom.Of(width, height), highlight).One(ViewFrom.Right, "Right side");

    /// <summary>Straight from the right.</summary>
    /// <inheritdoc cref="Front(Piece, DrawingRoom, string?, PiecePicks?)" path="/param"/>
    public static LineDrawing Side(Piece piece, DrawingRoom room, string? highlight = null, PiecePicks? picks = null) =>
        new FlatPage(piece, PieceRoom.Of(room), highlight).One(ViewFrom.Right, "Right side", picks);

    /// <summary>Straight from above, the front at the foot.</summary>
    /// <inheritdoc cref="Front(Piece, double, double, string?)" path="/param"/>
    public static LineDrawing Plan(Piece piece, double width, double height, string? highlight = null) =>
        new FlatPage(piece, PieceRoom.Of(width, height), highlight).One(ViewFrom.Above, "Top");

    /// <summary>Straight from above, the front at the foot.</summary>
    /// <inheritdoc cref="Front(Piece, DrawingRoom, string?, PiecePicks?)" path="/param"/>
    public static LineDrawing Plan(Piece piece, DrawingRoom room, string? highlight = null, PiecePicks? picks = null) =>
        new FlatPage(piece, PieceRoom.Of(room), highlight).One(ViewFrom.Above, "Top", picks);

    /// <summary>Front, right side and plan at one scale, in line with each other.</summary>
    /// <inheritdoc cref="Front(Piece, DrawingRoom, string?, PiecePicks?)" path="/param[not(@name='picks')]"/>
    public static LineDrawing ThreeViews(Piece piece, DrawingRoom room, string? highlight = null) =>
        new FlatPage(piece, PieceRoom.Of(room), highlight).Three("Front, right side and top");

    /// <summary>Isometric, from the front, the right and above.</summary>
    /// <inheritdoc cref="Front(Piece, double, double, string?)" path="/param"/>
    public static LineDrawing Isometric(Piece piece, double width, double height, string? highlight = null) =>
        new SlantView(piece, PieceRoom.Of(width, height), highlight).Whole("Isometric view");

    /// <summary>Isometric, from the front, the right and above.</summary>
    /// <inheritdoc cref="Front(Piece, DrawingRoom, string?, PiecePicks?)" path="/param"/>
    public static LineDrawing Isometric(Piece piece, DrawingRoom room, string? highlight = null, PiecePicks? picks = null) =>
        new SlantView(piece, PieceRoom.Of(room), highlight).Whole("Isometric view", picks);

    /// <summary>Isometric with the parts drawn apart, each with its mark; of a piece with very many parts, each kind.</summary>
    /// <inheritdoc cref="Front(Piece, double, double, string?)" path="/param"/>
    public static LineDrawing Exploded(Piece piece, double width, double height, string? highlight = null) =>
        new SlantView(piece, PieceRoom.Of(width, height), highlight).Exploded("Exploded view");

    /// <summary>Isometric with the parts drawn apart, each with its mark; of a piece with very many parts, each kind.</summary>
    /// <inheritdoc cref="Front(Piece, DrawingRoom, string?, PiecePicks?)" path="/param"/>
    public static LineDrawing Exploded(Piece piece, DrawingRoom room, string? highlight = null, PiecePicks? picks = null) =>
        new SlantView(piece, PieceRoom.Of(room), highlight).Exploded("Exploded view", picks);
}
