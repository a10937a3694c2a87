using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>Reads quantities with their units: <c>75 lb</c>, <c>34 kg</c>, <c>25 lb/ft</c>, <c>70 F</c>. Without a unit the
/// system's own is meant.</summary>
internal static class QuantityText
{
    /// <summary>The value in the metric unit of its kind; null where the text is not understood.</summary>
    public static double? Read(string text, QuantityKind kind, LengthUnit system)
    {
        var trimmed = text.Trim();
        var digits = trimmed.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or '-' or '+').Count();
        if (!TryNumber(trimmed[..digits], out var number))
            return null;
        var unit = Same(trimmed[digits..]);
        if (unit.Length == 0)
            return kind.ToMetric(number, system);
        if (unit == Same(kind.Metric))
            return kind.ToMetric(number, LengthUnit.Millimetre);
        return unit == Same(kind.Customary) ? kind.ToMetric(number, LengthUnit.Inch) : null;
    }

    /// <summary>A plain decimal number, finite.</summary>
    public static bool TryNumber(string text, out double number) =>
        double.TryParse(
            text,
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out number
        ) && double.IsFinite(number);

    /// <summary>What would be right.</summary>
    public static string Wanted(QuantityKind kind) =>
        kind.Metric == kind.Customary
            ? "write a number" + (kind.Metric.Length > 0 ? " of " + kind.Metric : "")
            : $"write a number of {kind.Customary} or {kind.Metric}";

    private static string Same(string unit) =>
        unit.Trim().ToLowerInvariant().Replace("°", "").Replace("²", "2").Replace("³", "3").Replace("lbs", "lb");
}
