using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Page units for a millimetre.</summary>
/// <param name="PerMm">So many.</param>
/// <param name="Whole">The whole-number scale, 12 for 1 : 12; null where the drawing fills its room.</param>
internal sealed record PieceScale(double PerMm, int? Whole)
{
    private const double UnitsPerMm = 72 / 25.4;

    // A joint's drawing shows sizes at a glance, so thirty-seconds do; the list of parts has the sizes to cut to.
    private const int Finest = 32;

    /// <summary>The largest scale at which millimetres fit.</summary>
    public static PieceScale Fit(double across, double up, double width, double height, bool whole)
    {
        var fit = Math.Min(Math.Max(width, 20) / Math.Max(1, across), Math.Max(height, 20) / Math.Max(1, up));
        if (!whole)
            return new(fit, null);
        var scale = Math.Max(1, (int)Math.Ceiling((UnitsPerMm / fit) - 1e-9));
        return new(UnitsPerMm / scale, scale);
    }

    /// <summary>What to say about scale and unit.</summary>
    /// <param name="unit">Of the figures.</param>
    /// <param name="isRounded">Whether a figure is rounded.</param>
    public string Note(LengthUnit unit, bool isRounded) =>
        (Whole is { } whole ? $"scale 1 : {whole}, " : "")
        + $"in {Figures.UnitName(unit)}"
        + (isRounded ? $", rounded to {DimensionChain.Finest(unit)}" : "");

    /// <summary>On the page.</summary>
    public double Of(Length length) => Mm(length) * PerMm;

    /// <summary>Millimetres.</summary>
    public static double Mm(Length length) => (double)length.Ticks / Length.TicksPerMillimetre;

    /// <summary>A figure of a joint's drawing.</summary>
    public static string Figure(Length length, LengthUnit unit) => LengthFormat.Set(length, unit, Finest).Text;

    /// <summary>The least box around some spots.</summary>
    public static Box Around(IEnumerable<Spot> spots)
    {
        var (x, y, right, bottom) = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (var spot in spots)
            (x, y, right, bottom) = (Math.Min(x, spot.X), Math.Min(y, spot.Y), Math.Max(right, spot.X), Math.Max(bottom, spot.Y));
        return x > right ? default : new(x, y, right - x, bottom - y);
    }
}
