using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>A board seen from its end, hatched, at the left of the board.</summary>
internal static class EndSection
{
    private const double Widest = 14,
        Gap = 5,
        Spacing = 2.4;

    /// <summary>Room it takes at the left, its gap included.</summary>
    public static double Room => Widest + Gap;

    /// <summary>The end, as thick as the board is at the scale of its width, within the room.</summary>
    public static IEnumerable<Shape> Draw(LayoutPicture picture, Box board)
    {
        if (picture.Thickness is not { } thickness)
            return [];
        var thick = (double)(thickness.ToInches() / picture.Width.ToInches()) * board.Height;
        var wide = Math.Clamp(thick, 3, Widest);
        var end = new Box(board.X - Gap - wide, board.Y, wide, board.Height);
        return
        [
            new Patch(Fill.Wood, end, picture.Tint),
            new Hatch(Stroke.EndGrain, end, Spacing),
            new Frame(Stroke.Outline, end),
        ];
    }

    /// <summary>The section in words: <c>¾ × 2 ½</c>.</summary>
    public static string Words(LayoutPicture picture) =>
        picture.Thickness is { } thickness
            ? $"section {Figures.Of(thickness, picture.Unit)} × {Figures.Of(picture.Width, picture.Unit)}, "
            : $"{Figures.Of(picture.Width, picture.Unit)} wide, ";
}
