using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>Lengths in a drawing: set fractions without a unit mark, since the drawing's note names the unit.</summary>
public static class Figures
{
    /// <summary>Returns a length at the nearest mark of a ruler: <c>34 ½</c>. A sixty-fourth of an inch or a tenth of a
    /// millimeter is finer than any saw, so nothing is said of what lies between.</summary>
    public static string Of(Length length, LengthUnit unit) => LengthFormat.Set(length, unit).Text;

    /// <summary>Length by width of an area: <c>27 × 13 ¼</c>; of a turned piece, its own length first.</summary>
    public static string Of(StockArea area, bool turned, LengthUnit unit) =>
        turned ? $"{Of(area.Dy, unit)} × {Of(area.Dx, unit)}" : $"{Of(area.Dx, unit)} × {Of(area.Dy, unit)}";

    /// <summary>The unit's name in a note.</summary>
    public static string UnitName(LengthUnit unit) => unit == LengthUnit.Inch ? "inches" : "millimeters";

    /// <summary>A name for a drawing: printable, and no longer than can be taken in at a glance.</summary>
    public static string Short(string name)
    {
        const int shown = 24;
        var clean = TextFit.Clean(name.Length > 400 ? name[..400] : name);
        return clean.Length <= shown ? clean : clean[..shown].TrimEnd() + "…";
    }
}
