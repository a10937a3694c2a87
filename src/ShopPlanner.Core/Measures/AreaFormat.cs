using System.Globalization;

namespace ShopPlanner.Core.Measures;

/// <summary>Prints areas as people buy by them: square feet beside inches, square meters beside millimeters.</summary>
public static class AreaFormat
{
    /// <summary><c>12.3 sq ft</c>, <c>1.14 m²</c>: a tenth of a square foot or a hundredth of a square meter, about a hand's
    /// breadth each way. What is less than that, and not nothing, is <c>under 0.1 sq ft</c>.</summary>
    /// <param name="area">Zero or more.</param>
    /// <param name="unit">Of the lengths beside it.</param>
    public static string Of(Area area, LengthUnit unit) =>
        unit == LengthUnit.Inch
            ? Text(area.ToSquareFeet(), "0.#", 0.1m, "sq ft")
            : Text(area.ToSquareMetres(), "0.##", 0.01m, "m²");

    /// <summary><c>14%</c>, whole percent; <c>under 1%</c> for what is less and not nothing.</summary>
    /// <param name="part">Of the whole, zero or more.</param>
    /// <param name="whole">May be nothing.</param>
    public static string Percent(Area part, Area whole)
    {
        if (whole == Area.Zero || part == Area.Zero)
            return "0%";
        var percent = Math.Round(100m * (decimal)part.SquareTicks / (decimal)whole.SquareTicks, MidpointRounding.AwayFromZero);
        return percent < 1 ? "under 1%" : percent.ToString("0", CultureInfo.InvariantCulture) + "%";
    }

    private static string Text(decimal value, string format, decimal least, string unit)
    {
        var shown = value > 0 && value < least ? $"under {least.ToString(CultureInfo.InvariantCulture)}" : Rounded(value, format);
        return $"{shown} {unit}";
    }

    private static string Rounded(decimal value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
