using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Workings;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Makes a packet's piece of a piece that has been worked out.</summary>
public static class PieceSheets
{
    /// <summary>Between two drawings side by side.</summary>
    internal const double Gutter = 18;

    // Shares of a page's height: the views and the slanted view fill one page, the parts drawn apart begin the next.
    private const double Views = 0.54,
        Slanted = 0.34,
        Apart = 0.5,
        JointHeight = 128;

    /// <summary>The piece with its drawings made for the paper.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="paper">Size of the pages.</param>
    public static PacketPiece Of(Piece piece, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var page = new PageFlow(paper);
        var (wide, high) = (page.Width, page.Height);
        return new(
            piece.Name,
            piece.Unit,
            [
                new(PieceDrawings.ThreeViews(piece, DrawingRoom.Paper(wide, high * Views)), ToScale: true),
                new(PieceDrawings.Isometric(piece, wide, high * Slanted), ToScale: false),
                new(PieceDrawings.Exploded(piece, wide, high * Apart), ToScale: false),
            ],
            [.. piece.Parts.Select(Part)],
            [
                .. JointDetails
                    .Of(piece, (wide - Gutter) / 2, JointHeight)
                    .Select(one => new PacketJoint(one.Title, one.Note, one.Count, one.Drawing)),
            ],
            [.. piece.Hardware.Select(one => new PacketHardware(one.Name, one.Quantity))],
            [
                .. PieceJudge
                    .Of(piece)
                    .Where(one => one.Severity > Severity.Fine)
                    .Select(one => $"{SeverityWords.Of(one.Severity)}: {one.Text}"),
            ]
        );
    }

    private static PacketPiecePart Part(PiecePart part) =>
        new(
            part.Copies.IsEmpty ? [part.Id] : [.. part.Copies.Select(copy => copy.Mark)],
            part.Quantity,
            part.Name,
            part.Material.Name,
            part.Length.Value,
            part.Width.Value,
            part.Thickness.Value,
            part.RoughLength,
            part.RoughWidth
        );
}
