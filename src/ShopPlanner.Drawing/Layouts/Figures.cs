using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>Lengths as they stand in a drawing: set fractions without a unit mark, since the drawing's note names the
/// unit.</summary>
public static class Figures
{
    /// <summary>One length: <c>34 ½</c>, with a sign where a sixty-fourth of an inch is not exact; a tenth of a millimetre is
    /// finer
    /// than any saw and needs none.</summary>
    public static string Of(Length length, LengthUnit unit)
    {
        var rounded = LengthFormat.Set(length, unit);
        return unit == LengthUnit.Inch ? rounded.WithSign : rounded.Text;
    }

    /// <summary>Length by width of an area: <c>27 × 13 ¼</c>; of a turned piece, its own length first.</summary>
    public static string Of(StockArea area, bool turned, LengthUnit unit) =>
        turned ? $"{Of(area.Dy, unit)} × {Of(area.Dx, unit)}" : $"{Of(area.Dx, unit)} × {Of(area.Dy, unit)}";

    /// <summary>The unit's name in a note.</summary>
    public static string UnitName(LengthUnit unit) => unit == LengthUnit.Inch ? "inches" : "millimetres";

    /// <summary>A name for a drawing: printable, and no longer than can be taken in at a glance.</summary>
    public static string Short(string name)
    {
        const int shown = 24;
        var clean = TextFit.Clean(name.Length > 400 ? name[..400] : name);
        return clean.Length <= shown ? clean : clean[..shown].TrimEnd() + "…";
    }
}
