using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>Where the stock lies on the page and at which scale.</summary>
/// <param name="Left">Page x of the stock's corner.</param>
/// <param name="Top">Page y of the stock's corner.</param>
/// <param name="PerInch">Page units along x for one inch of the stock.</param>
/// <param name="Stretch">How many times larger y is drawn than x: 1 for a true drawing.</param>
/// <param name="Scale">The whole-number scale, 12 for 1 : 12; null where the drawing fills its width.</param>
internal sealed record View(double Left, double Top, double PerInch, int Stretch, int? Scale)
{
    private const double UnitsPerInch = 72;

    /// <summary>A view that fills the room.</summary>
    /// <param name="picture">What is drawn.</param>
    /// <param name="left">Room to keep free at the left.</param>
    /// <param name="width">Room for the stock's length.</param>
    /// <param name="room">Says how high, and whether the scale is whole.</param>
    /// <param name="stretch">How y is stretched at a given scale.</param>
    public static View Fill(LayoutPicture picture, double left, double width, DrawingRoom room, Func<double, int> stretch)
    {
        var perInch = Math.Min(width / Inches(picture.Length), room.Height / Inches(picture.Width));
        int? scale = room.WholeScale ? room.Scale ?? Math.Max(1, (int)Math.Ceiling(UnitsPerInch / perInch - 1e-9)) : null;
        perInch = scale is { } whole ? UnitsPerInch / whole : perInch;
        return new(left, 0, perInch, stretch(perInch), scale);
    }

    /// <summary>An area of the stock on the page.</summary>
    public Box Of(StockArea area) => new(X(area.X), Y(area.Y), Inches(area.Dx) * PerInch, High(area.Dy));

    /// <summary>The whole stock on the page.</summary>
    public Box Whole(LayoutPicture picture) => Of(new(Length.Zero, Length.Zero, picture.Length, picture.Width));

    /// <summary>What to say about the scale.</summary>
    public string Note(LengthUnit unit)
    {
        var scale = Scale is { } whole ? $"scale 1 : {whole}, " : "";
        var stretch = Stretch > 1 ? $"; widths drawn ×{Stretch}, lengths to scale" : "";
        return $"{scale}in {Figures.UnitName(unit)}{stretch}";
    }

    private double X(Length x) => Left + (Inches(x) * PerInch);

    private double Y(Length y) => Top + High(y);

    private double High(Length y) => Inches(y) * PerInch * Stretch;

    private static double Inches(Length length) => (double)length.ToInches();
}
