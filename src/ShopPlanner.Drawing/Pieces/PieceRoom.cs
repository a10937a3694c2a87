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
        LargestAsked = 13,
        WidthPerType = 58,
        Phone = 480;

    public static PieceRoom Of(double width, double height) =>
        new(width, height, Math.Clamp(width / WidthPerType, Smallest, Largest), WholeScale: false);

    public static PieceRoom Of(DrawingRoom room) =>
        new(room.Width, room.Height, Math.Min(room.NoteText, LargestAsked), room.WholeScale)
        {
            Least = Math.Min(room.LeastText, LargestAsked),
        };

    /// <summary>The smallest type that is set.</summary>
    public double Least { get; init; }

    /// <summary>Of a ring's letters.</summary>
    public double RingType => Math.Max(Type * 0.82, Least);

    /// <summary>Of the figures of a chain.</summary>
    public double ChainType => Math.Max(Type * 0.88, Least);

    /// <summary>Of names and notes.</summary>
    public double NoteType => Math.Max(Type * 0.9, Least);

    /// <summary>Whether one row of figures beside a view is all that fits.</summary>
    public bool IsNarrow => Width < Phone;
}
