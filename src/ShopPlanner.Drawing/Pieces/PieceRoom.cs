using ShopPlanner.Drawing.Layouts;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Room for a drawing of a piece: its width is all used, its height is the most.</summary>
/// <param name="Width">Page units.</param>
/// <param name="Height">Page units, everything included.</param>
/// <param name="Type">Size of the outermost figures; the others are smaller.</param>
/// <param name="WholeScale">True for a whole-number scale, 1 : 12.</param>
internal sealed record PieceRoom(double Width, double Height, double Type, bool WholeScale)
{
    private const double Smallest = 8.5,
        Largest = 11,
        WidthPerType = 58;

    public static PieceRoom Of(double width, double height) =>
        new(width, height, Math.Clamp(width / WidthPerType, Smallest, Largest), WholeScale: false);

    public static PieceRoom Of(DrawingRoom room) =>
        new(room.Width, room.Height, Math.Min(room.NoteText, Largest), room.WholeScale);

    /// <summary>Of a ring's letters.</summary>
    public double RingType => Type * 0.82;
}
