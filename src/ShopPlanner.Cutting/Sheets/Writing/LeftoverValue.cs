using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Writing;

/// <summary>
/// What a free rectangle is worth: its area to the power 1.25 when it reaches the keep sizes of its stock, else nothing. The
/// power makes one large leftover worth more than the same area in pieces, and a large offcut dearer to cut than a small one.
/// </summary>
internal static class LeftoverValue
{
    private const double Power = 1.25;

    public static double Of(SheetStock stock, long dx, long dy) => stock.Keeps(dx, dy) ? Math.Pow((double)dx * dy, Power) : 0;

    /// <summary>Of a stock left as it is; new stock is not bought then and counts nothing.</summary>
    public static double OfUntouched(SheetStock stock) => stock.FromBin ? Math.Pow((double)stock.Dx * stock.Dy, Power) : 0;

    /// <summary>Of all remnants of a layout.</summary>
    public static double OfAll(SheetStock stock, LayoutNode node)
    {
        if (node.Item is not null || node.Blocked)
            return 0;
        return node.Children.IsEmpty ? Of(stock, node.Dx, node.Dy) : node.Children.Sum(child => OfAll(stock, child));
    }
}
