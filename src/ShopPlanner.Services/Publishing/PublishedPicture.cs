using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Services.Publishing;

/// <summary>A view of a piece on its published page.</summary>
/// <param name="Key">In ids and file names.</param>
/// <param name="Caption">What is seen.</param>
/// <param name="Wide">As SVG inside the page, for a wide screen.</param>
/// <param name="Narrow">The same for a phone; null where it has no letters that would shrink.</param>
/// <param name="Alone">As a file of its own.</param>
internal sealed record PublishedPicture(string Key, string Caption, string Wide, string? Narrow, string Alone)
{
    /// <summary>The file's place.</summary>
    public string Path => $"pictures/{Key}.svg";

    /// <summary>All views of a piece, the whole first.</summary>
    public static IReadOnlyList<PublishedPicture> Of(Piece piece) =>
        [
            Make("isometric", "The whole piece", room => PieceDrawings.Isometric(piece, room), hasLetters: false),
            Make("front", "Front", room => PieceDrawings.Front(piece, room)),
            Make("side", "Right side", room => PieceDrawings.Side(piece, room)),
            Make("top", "Top", room => PieceDrawings.Plan(piece, room)),
            Make("exploded", "The parts drawn apart, with their marks", room => PieceDrawings.Exploded(piece, room)),
        ];

    private static PublishedPicture Make(string key, string caption, Func<DrawingRoom, LineDrawing> draw, bool hasLetters = true)
    {
        var wide = draw(DrawingRoom.PieceOnScreen);
        return new(
            key,
            caption,
            SvgWriter.Write(wide, key),
            hasLetters ? SvgWriter.Write(draw(DrawingRoom.PieceOnPhone), key + "-phone") : null,
            SvgWriter.Write(wide, key, alone: true)
        );
    }
}
