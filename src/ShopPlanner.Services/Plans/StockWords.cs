using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Plans;

/// <summary>How stock and lengths are called in sentences.</summary>
internal static class StockWords
{
    /// <summary>The size as it is sold: <c>8 ft</c>, <c>41 3/8 in</c>, <c>96 × 48 in</c>, <c>2440 × 1220 mm</c>. Whole feet of a board are
    /// feet in every shop; a size that is exact only in the other unit was made in that unit.</summary>
    public static string Size(StockForm form, Length length, Length width, LengthUnit unit)
    {
        var board = form == StockForm.Board;
        if (board && length.Ticks % Length.TicksPerFoot == 0)
            return $"{length.Ticks / Length.TicksPerFoot} ft";
        var sold = SoldIn(unit, board ? [length] : [length, width]);
        return board ? Say(length, sold) : $"{Plain(length, sold)} × {Say(width, sold)}";
    }

    /// <summary><c>14 in</c>, <c>356 mm</c>.</summary>
    public static string Say(Length length, LengthUnit unit) => Plain(length, unit) + (unit == LengthUnit.Inch ? " in" : " mm");

    private static LengthUnit SoldIn(LengthUnit unit, Length[] sides)
    {
        var other = unit == LengthUnit.Inch ? LengthUnit.Millimetre : LengthUnit.Inch;
        bool Exact(LengthUnit one) => Array.TrueForAll(sides, side => LengthFormat.Plain(side, one).Remainder == Length.Zero);
        return !Exact(unit) && Exact(other) ? other : unit;
    }

    private static string Plain(Length length, LengthUnit unit) => LengthFormat.Plain(length, unit).WithSign;
}
