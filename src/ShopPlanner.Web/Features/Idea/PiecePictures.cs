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
        Drawing(piece, view.Key, chosen) is { } drawing ? SvgWriter.Write(drawing, id) : null;

    private static LineDrawing? Drawing(Piece piece, string view, string? chosen) =>
        view switch
        {
            "front" => PieceDrawings.Front(piece, Width, Height, chosen),
            "side" => PieceDrawings.Side(piece, Width, Height, chosen),
            "plan" => PieceDrawings.Plan(piece, Width, Height, chosen),
            "isometric" => PieceDrawings.Isometric(piece, Width, Height, chosen),
            "exploded" => PieceDrawings.Exploded(piece, Width, Height, chosen),
            _ => null,
        };
}
