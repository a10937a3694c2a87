using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Plans;

/// <summary>How stock and lengths are called in sentences.</summary>
internal static class StockWords
{
    /// <summary>The size as it is sold: <c>8 ft</c>, <c>41 3/8 in</c>, <c>4 × 8 ft</c>, <c>2440 × 1220 mm</c>. Whole feet of a
    /// board, and of a sheet from four feet on, are feet in every shop, a sheet's width first; a size that is exact only in the
    /// other unit was made in that unit. The width of a board that was not ripped goes without saying.</summary>
    /// <param name="length">Along the grain.</param>
    /// <param name="width">Across it.</param>
    /// <param name="boardWidth">Full width of a board of the material; null for sheets.</param>
    /// <param name="unit">Where both units are exact.</param>
    public static string Size(Length length, Length width, Length? boardWidth, LengthUnit unit)
    {
        var board = boardWidth == width;
        if (board && Feet(length) is { } feet)
            return $"{feet} ft";
        if (boardWidth is null && Feet(length) is { } far && Feet(width) is { } across && Math.Max(far, across) >= 4)
            return $"{across} × {far} ft";
        var sold = board ? LengthFormat.MadeIn(unit, length) : LengthFormat.MadeIn(unit, length, width);
        return board ? Say(length, sold) : $"{Plain(length, sold)} × {Say(width, sold)}";
    }

    /// <summary><c>14 in</c>, <c>356 mm</c>.</summary>
    public static string Say(Length length, LengthUnit unit) => Plain(length, unit) + (unit == LengthUnit.Inch ? " in" : " mm");

    private static long? Feet(Length length) =>
        length.Ticks % Length.TicksPerFoot == 0 ? length.Ticks / Length.TicksPerFoot : null;

    private static string Plain(Length length, LengthUnit unit) => LengthFormat.Plain(length, unit).WithSign;
}
