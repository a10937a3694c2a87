using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>In which order three figures stand: told by a heading, or by the figures of the bill as a whole.</summary>
internal static class SizeOrders
{
    /// <summary>Returns the order in which three sides are named; null where not just these three are.</summary>
    public static SizeOrder? Named(IEnumerable<SizeRole> roles) =>
        roles.Where(role => role != SizeRole.None).Distinct().Take(4).ToArray() switch
        {
            [SizeRole.Thickness, SizeRole.Width, SizeRole.Length] => SizeOrder.ThicknessWidthLength,
            [SizeRole.Thickness, SizeRole.Length, SizeRole.Width] => SizeOrder.ThicknessLengthWidth,
            [SizeRole.Length, SizeRole.Width, SizeRole.Thickness] => SizeOrder.LengthWidthThickness,
            [SizeRole.Width, SizeRole.Length, SizeRole.Thickness] => SizeOrder.WidthLengthThickness,
            _ => null,
        };

    /// <summary>Returns the size that three figures are in an order.</summary>
    public static BillSize Of(SizeOrder order, Length? first, Length? second, Length? third) =>
        order switch
        {
            SizeOrder.ThicknessLengthWidth => new(first, third, second),
            SizeOrder.LengthWidthThickness => new(third, second, first),
            SizeOrder.WidthLengthThickness => new(third, first, second),
            _ => new(first, second, third),
        };

    /// <summary>Whether the thickness comes first.</summary>
    public static bool IsThicknessFirst(SizeOrder order) => order <= SizeOrder.ThicknessLengthWidth;

    /// <summary>Whether the width comes before the length.</summary>
    public static bool IsWidthFirst(SizeOrder order) => order is SizeOrder.ThicknessWidthLength or SizeOrder.WidthLengthThickness;

    /// <summary>Returns the order with these two properties.</summary>
    public static SizeOrder With(bool isThicknessFirst, bool isWidthFirst) =>
        (isThicknessFirst, isWidthFirst) switch
        {
            (true, true) => SizeOrder.ThicknessWidthLength,
            (true, false) => SizeOrder.ThicknessLengthWidth,
            (false, true) => SizeOrder.WidthLengthThickness,
            _ => SizeOrder.LengthWidthThickness,
        };

    /// <summary>Returns the order in words.</summary>
    public static string Words(SizeOrder order) =>
        order switch
        {
            SizeOrder.ThicknessLengthWidth => "thickness, length, width",
            SizeOrder.LengthWidthThickness => "length, width, thickness",
            SizeOrder.WidthLengthThickness => "width, length, thickness",
            _ => "thickness, width, length",
        };
}
