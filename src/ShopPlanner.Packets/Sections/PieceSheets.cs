using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Makes a packet's piece of a piece that has been worked out.</summary>
public static class PieceSheets
{
    // One piece takes a third of a page, several stand three to a page.
    private const double ViewsShare = 0.56,
        AloneHeight = 225,
        AmongHeight = 165,
        FaceHeight = 118,
        JointHeight = 104;

    /// <summary>In how many columns joints stand.</summary>
    internal const int JointColumns = 3;

    /// <summary>The piece with its drawings made for the paper.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="paper">Size of the pages.</param>
    /// <param name="isAlone">Whether the packet has no other.</param>
    public static PacketPiece Of(Piece piece, PaperSize paper, bool isAlone = true)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var page = new PageFlow(paper);
        var (views, high) = (page.Width * ViewsShare, isAlone ? AloneHeight : AmongHeight);
        return new(
            piece.Name,
            piece.Unit,
            PieceDrawings.Isometric(piece, page.ColumnWidth(3), FaceHeight),
            PieceDrawings.ThreeViews(piece, DrawingRoom.Paper(views, high)),
            PieceDrawings.Exploded(piece, page.Width - views - PageFlow.Gutter, high),
            [.. piece.Parts.Select(Part)],
            [
                .. JointDetails
                    .Of(piece, page.ColumnWidth(JointColumns), JointHeight)
                    .Select(one => new PacketJoint(one.Title, one.Note, one.Count, one.Drawing)),
            ],
            [
                .. PieceJudge
                    .Of(piece)
                    .Where(one => one.Severity > Severity.Fine)
                    .Select(one => $"{SeverityWords.Of(one.Severity)}: {one.Text}"),
            ]
        )
        {
            Workings = WorkingSheets.Of(piece),
        };
    }

    /// <summary>The outside size of a piece, width × height × depth: <c>30″ × 60″ × 11 ½″</c>.</summary>
    public static string Outside(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var box = piece.Outside;
        var sizes = new[] { box.Dx, box.Dz, box.Dy }.Select(one => LengthFormat.WithUnit(one, piece.Unit));
        return string.Join(" × ", sizes) + " (width, height, depth)";
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
        )
        {
            IsHelp = part.Purpose != PartPurpose.Member,
        };
}
