using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Plans;

/// <summary>How stock and lengths are called in sentences.</summary>
internal static class StockWords
{
    /// <summary><c>8 ft</c>, <c>41 3/8 in</c>, <c>2440 × 1220 mm</c>.</summary>
    public static string Size(StockForm form, Length length, Length width, LengthUnit unit)
    {
        if (form == StockForm.Sheet) return $"{Plain(length, unit)} × {Say(width, unit)}";
        var feet = length.Ticks % Length.TicksPerFoot == 0 && unit == LengthUnit.Inch;
        return feet ? $"{length.Ticks / Length.TicksPerFoot} ft" : Say(length, unit);
    }

    /// <summary><c>14 in</c>, <c>356 mm</c>.</summary>
    public static string Say(Length length, LengthUnit unit) => Plain(length, unit) + (unit == LengthUnit.Inch ? " in" : " mm");

    private static string Plain(Length length, LengthUnit unit) => LengthFormat.Plain(length, unit).WithSign;
}
