using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Problems;

/// <summary>Which layouts can be cut in a shop whose saw, car and store set limits, from stock that may have bad places. Sides
/// are those of the problem. Safe to use from several threads.</summary>
internal interface ILayoutRule
{
    /// <summary>False for a stock of which every layout can be cut.</summary>
    bool Binds(int stock);

    /// <summary>Whether <see cref="Write"/> finds a layout for the tree.</summary>
    bool Allows(int stock, LayoutNode root) => Write(stock, root) is not null;

    /// <summary>Returns the layout of a tree of least sizes, written so that it can be cut; null when that cannot be
    /// done.</summary>
    LayoutNode? Write(int stock, LayoutNode root);
}
