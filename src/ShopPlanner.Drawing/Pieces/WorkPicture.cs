using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Drawing.Layouts;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Pictures of steps of work: the parts drawn apart, those that a step handles in chalk, each with its mark.</summary>
public static class WorkPicture
{
    /// <summary>A step's picture; null where it handles none of the piece's parts.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="step">The step.</param>
    /// <param name="width">Width in page units.</param>
    /// <param name="height">Most height.</param>
    public static LineDrawing? Draw(Piece piece, WorkStep step, double width, double height) =>
        Draw(piece, step, PieceRoom.Of(width, height));

    /// <summary>A step's picture; null where it handles none of the piece's parts.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="step">The step.</param>
    /// <param name="room">Its width is used, its height is the most.</param>
    public static LineDrawing? Draw(Piece piece, WorkStep step, DrawingRoom room) => Draw(piece, step, PieceRoom.Of(room));

    private static LineDrawing? Draw(Piece piece, WorkStep step, PieceRoom room)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(step);
        var marks = step.Handles.ToHashSet(StringComparer.Ordinal);
        return piece.Parts.SelectMany(part => part.Copies).Any(copy => marks.Contains(copy.Mark))
            ? new SlantView(piece, room, null, new StepCast(piece, step)).Exploded(step.Title)
            : null;
    }
}
