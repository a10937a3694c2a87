using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Trees;

/// <summary>
/// A rectangle of a layout and how straight edge-to-edge cuts divide it further (a guillotine cut tree). A node is exactly one
/// of: an item, a remnant (neither item nor children), or a cut into children that lie side by side. What a side is measured in,
/// and whether it carries a kerf, is said by who makes the tree. Where only the least sizes of a tree are known, its places are
/// zero.
/// </summary>
/// <param name="X">The place, along the stock's length, of the corner nearest the origin.</param>
/// <param name="Y">The place, across, of the corner nearest the origin.</param>
/// <param name="Dx">The extent along the stock's length.</param>
/// <param name="Dy">The extent across.</param>
/// <param name="Item">The index of the item that fills the node; null when it is none.</param>
/// <param name="Turned">Whether that item lies turned.</param>
/// <param name="AlongX">Whether the children lie side by side along x (crosscuts) and not along y (rips).</param>
/// <param name="Children">The pieces the cuts give; empty for an item or a remnant.</param>
public sealed record LayoutNode(
    long X,
    long Y,
    long Dx,
    long Dy,
    int? Item,
    bool Turned,
    bool AlongX,
    ImmutableArray<LayoutNode> Children
)
{
    /// <summary>Whether the store makes the cuts between the children: then they are panels, whose rough edges may lie between
    /// them, and a side of a panel that is all waste may be less than zero.</summary>
    public bool ByStore { get; init; }

    /// <summary>Whether a bad place lies in this remnant, or may lie in it: it is waste, however large.</summary>
    public bool Blocked { get; init; }

    /// <summary>Whether this remnant is kept from a stock with bad places, so that it must be cut free on all sides like an
    /// item.</summary>
    public bool Freed { get; init; }

    /// <summary>The far end along the stock's length.</summary>
    public long EndX => X + Dx;

    /// <summary>The far end across.</summary>
    public long EndY => Y + Dy;

    /// <summary>Whether the node is left over.</summary>
    public bool IsRemnant => Item is null && Children.IsEmpty;

    /// <summary>Whether some item lies in the node.</summary>
    public bool HasItem => Item is not null || Children.Any(child => child.HasItem);

    /// <summary>Whether something lies in the node that is to be cut free.</summary>
    public bool HasWanted => Item is not null || Freed || Children.Any(child => child.HasWanted);

    /// <summary>Returns a node that is left over.</summary>
    public static LayoutNode Remnant(long x, long y, long dx, long dy) => new(x, y, dx, dy, null, false, false, []);

    /// <summary>Returns a node that an item fills.</summary>
    public static LayoutNode Piece(int item, bool turned, long x, long y, long dx, long dy) =>
        new(x, y, dx, dy, item, turned, false, []);

    /// <summary>Returns a cut of the least size that holds the children side by side; no places are given.</summary>
    public static LayoutNode Row(bool alongX, ImmutableArray<LayoutNode> children) =>
        alongX
            ? new(0, 0, children.Sum(child => child.Dx), children.Max(child => child.Dy), null, false, true, children)
            : new(0, 0, children.Max(child => child.Dx), children.Sum(child => child.Dy), null, false, false, children);

    /// <summary>Returns this node and all below it.</summary>
    public IEnumerable<LayoutNode> Whole() => Children.SelectMany(child => child.Whole()).Prepend(this);
}
