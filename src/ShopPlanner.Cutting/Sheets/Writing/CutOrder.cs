using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Writing;

/// <summary>
/// The order of children that lie side by side: highest first, so that free space above them forms a staircase; equal ones
/// together, widest first, so that one setting serves them all.
/// </summary>
internal static class CutOrder
{
    public static List<LayoutNode> Sorted(LayoutNode cut) =>
        [
            .. cut
                .Children.OrderByDescending(c => cut.AlongX ? c.Dy : c.Dx)
                .ThenByDescending(c => cut.AlongX ? c.Dx : c.Dy)
                .ThenBy(c => c.Item ?? -1),
        ];
}
