using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Drawings of a piece for a page.</summary>
internal static class PiecePictures
{
    // Room that the drawing is fitted into; on the page it is as large as its place. Text stays readable on a phone.
    private const double Width = 360;
    private const double Height = 340;

    /// <summary>The drawing as SVG; null for a view that is no drawing.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="view">How it is looked at.</param>
    /// <param name="id">Of the element, unique on its page.</param>
    /// <param name="chosen">Letter of the part that stands out; null for none.</param>
    public static string? Draw(Piece piece, PieceView view, string id, string? chosen) =>
        Drawing(piece, view.Key, chosen, Width, Height) is { } drawing ? SvgWriter.Write(drawing, id) : null;

    /// <summary>The drawing alone, with as many figures as a screen of its own has room for; null for a view that is no
    /// drawing.</summary>
    public static string? Large(Piece piece, PieceView view) =>
        Drawing(piece, view.Key, null, Width * 2, Height * 2) is { } drawing
            ? SvgWriter.Write(drawing, "drawing", alone: true)
            : null;

    private static LineDrawing? Drawing(Piece piece, string view, string? chosen, double width, double height) =>
        view switch
        {
            "front" => PieceDrawings.Front(piece, width, height, chosen),
            "side" => PieceDrawings.Side(piece, width, height, chosen),
            "plan" => PieceDrawings.Plan(piece, width, height, chosen),
            "isometric" => PieceDrawings.Isometric(piece, width, height, chosen),
            "exploded" => PieceDrawings.Exploded(piece, width, height, chosen),
            _ => null,
        };
}
