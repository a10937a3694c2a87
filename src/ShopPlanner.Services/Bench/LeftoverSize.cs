using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>Reads what a leftover measures, and says of a size that cannot be what would be right.</summary>
internal sealed class LeftoverSize(CutStock stock, StoredMaterial material, LengthUnit unit)
{
    // So far from what is expected, while the other unit comes as near as the second figure, the unit is the likelier mistake
    // (our rule).
    private const decimal FarOff = 4;
    private const decimal Near = 1.1m;

    private LengthUnit Other => unit == LengthUnit.Inch ? LengthUnit.Millimetre : LengthUnit.Inch;

    /// <summary>Returns length and width; an empty width of a board is its full width.</summary>
    /// <param name="leftover">As typed.</param>
    /// <param name="expected">What the cuts should have left; null where nobody knows.</param>
    /// <param name="found">Where what is wrong is noted.</param>
    public (Length Length, Length Width) Read(MeasuredLeftover leftover, StockArea? expected, List<Fault> found)
    {
        var blank = leftover.Width.Trim().Length == 0 && material.Form == StockForm.Board;
        var width = blank ? LengthFormat.Exact(stock.Width, unit) : leftover.Width;
        var size = PieceReader.Sizes(material, leftover.Length, width, unit, found);
        if (found.Count == 0 && InOtherUnit(leftover.Length, size.Length, expected?.Dx) is { } meant)
            found.Add(Fault.Of("Length", leftover.Length, meant));
        if (found.Count == 0 && !Fits(size.Length, size.Width))
            found.Add(
                Fault.Of(
                    "Length",
                    $"{leftover.Length} × {width}",
                    $"is larger than what it was cut from, {Say(stock.Length)} × {Say(stock.Width)}{Expected(expected)}"
                )
            );
        else if (found.Count > 0 && expected is not null)
            Add(found, Expected(expected));
        return size;
    }

    // What would be right is told once, after the first thing that is wrong.
    private static void Add(List<Fault> found, string expected) =>
        found[0] = found[0] with { Message = found[0].Message + expected };

    private string Expected(StockArea? expected) =>
        expected is { } area ? $"; about {Say(area.Dx)} × {Say(area.Dy)} is left by these cuts" : "";

    // 610 in a shop of inches is millimeters, as soon as 610 mm is what should be there.
    private string? InOtherUnit(string typed, Length read, Length? expected)
    {
        if (LengthText.ParsePositive(typed, Other) is not { Ok: true, Value: var other } || other == read)
            return null;
        var wanted = expected ?? stock.Length;
        var isFarOff = Ratio(read, wanted) > FarOff;
        var isNear = expected is null ? other <= stock.Length && read > stock.Length : Ratio(other, wanted) <= Near;
        return isFarOff && isNear
            ? $"is {LengthFormat.WithUnit(read, unit)} here: if you measured in {Name(Other)}, write {typed.Trim()} {Sign(Other)}"
            : null;
    }

    private static decimal Ratio(Length one, Length other) =>
        (decimal)Length.Max(one, other).Ticks / Math.Max(1, Length.Min(one, other).Ticks);

    private static string Name(LengthUnit of) => of == LengthUnit.Inch ? "inches" : "millimeters";

    private static string Sign(LengthUnit of) => of == LengthUnit.Inch ? "in" : "mm";

    // A sheet's leftover may be measured along its own longer side.
    private bool Fits(Length length, Length width)
    {
        if (material.Form == StockForm.Board)
            return length <= stock.Length && width <= stock.Width;
        return Length.Max(length, width) <= Length.Max(stock.Length, stock.Width)
            && Length.Min(length, width) <= Length.Min(stock.Length, stock.Width);
    }

    private string Say(Length length) => LengthFormat.WithUnit(length, unit);
}
