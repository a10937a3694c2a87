using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Drawings of a piece for a page.</summary>
internal static class PiecePictures
{
    // Without letters a drawing is the same on every screen.
    private static readonly DrawingRoom Plain = DrawingRoom.PieceOnPhone with { Height = 340 };

    /// <summary>Whether a view has letters, so that it is drawn for a wide screen and for a phone.</summary>
    public static bool HasLetters(PieceView view) => view.Key != "isometric";

    /// <summary>The drawing as SVG; null for a view that is no drawing.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="view">How it is looked at.</param>
    /// <param name="id">Of the element, unique on its page.</param>
    /// <param name="isNarrow">Whether it is for a phone.</param>
    /// <param name="chosen">Letter of the part that stands out; null for none.</param>
    /// <param name="picks">What can be chosen in it; null for a drawing that is only looked at.</param>
    public static string? Draw(Piece piece, PieceView view, string id, bool isNarrow, string? chosen, PiecePicks? picks)
    {
        var room =
            !HasLetters(view) ? Plain
            : isNarrow ? DrawingRoom.PieceOnPhone
            : DrawingRoom.PieceOnScreen;
        return Drawing(piece, view.Key, room, chosen, picks) is { } drawing ? SvgWriter.Write(drawing, id) : null;
    }

    /// <summary>The drawing alone, for a screen of its own; null for a view that is no drawing.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="view">How it is looked at.</param>
    /// <param name="isNarrow">Whether it is for a phone.</param>
    public static string? Large(Piece piece, PieceView view, bool isNarrow) =>
        Drawing(piece, view.Key, isNarrow ? DrawingRoom.PieceFillsPhone : DrawingRoom.PieceFillsScreen, null, null) is { } drawing
            ? SvgWriter.Write(drawing, "drawing", alone: true)
            : null;

    private static LineDrawing? Drawing(Piece piece, string view, DrawingRoom room, string? chosen, PiecePicks? picks) =>
        view switch
        {
            "front" => PieceDrawings.Front(piece, room, chosen, picks),
            "side" => PieceDrawings.Side(piece, room, chosen, picks),
            "plan" => PieceDrawings.Plan(piece, room, chosen, picks),
            "isometric" => PieceDrawings.Isometric(piece, room, chosen, picks),
            "exploded" => PieceDrawings.Exploded(piece, room, chosen, picks),
            _ => null,
        };
}
