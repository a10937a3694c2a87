namespace ShopPlanner.Drawing.Layouts;

/// <summary>Draws how one board or sheet is cut, to scale.</summary>
public static class LayoutDrawing
{
    /// <summary>
    /// A board, its length across the page. A narrow one is drawn wider than true, with a note; lengths stay to scale. Pieces as
    /// wide as the board are dimensioned below it, in a row that ends with the whole length.
    /// </summary>
    public static LineDrawing Board(LayoutPicture picture, DrawingRoom room) =>
        new LayoutComposition(picture, room, isBoard: true).Draw();

    /// <summary>A sheet, its face grain across the page, true in both directions.</summary>
    public static LineDrawing Sheet(LayoutPicture picture, DrawingRoom room) =>
        new LayoutComposition(picture, room, isBoard: false).Draw();

    /// <summary>The largest whole-number scale at which a layout fits a room: 12 for 1 : 12.</summary>
    /// <param name="picture">What is drawn.</param>
    /// <param name="room">For paper.</param>
    /// <param name="isBoard">True for a board, false for a sheet.</param>
    public static int ScaleOf(LayoutPicture picture, DrawingRoom room, bool isBoard) =>
        new LayoutComposition(picture, room, isBoard).Scale ?? 1;

    /// <summary>The width that a board takes at the scale of a room, with its end beside it.</summary>
    /// <param name="picture">The board.</param>
    /// <param name="room">For paper, with a scale.</param>
    public static double WidthOf(LayoutPicture picture, DrawingRoom room)
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentNullException.ThrowIfNull(room);
        const double pointsPerInch = 72;
        return ((double)picture.Length.ToInches() * pointsPerInch / (room.Scale ?? 1)) + LayoutComposition.Beside;
    }
}
