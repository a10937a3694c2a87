using System.Collections.Immutable;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>Layouts to begin with, as trees of least sizes in the search's measure: joined, trimmed to a sheet, made ready for a
/// <see cref="CutTree"/>.</summary>
internal static class SeedTrimming
{
    /// <summary>A cut with these children, drawn together as far as possible: none of them is a cut of the same direction; null
    /// without any.</summary>
    public static LayoutNode? Join(bool alongX, IEnumerable<LayoutNode?> children)
    {
        ImmutableArray<LayoutNode> flat =
        [
            .. children
                .OfType<LayoutNode>()
                .SelectMany(child => child.Item is null && child.AlongX == alongX ? child.Children : [child]),
        ];
        return flat.Length < 2 ? flat.FirstOrDefault() : LayoutNode.Row(alongX, flat);
    }

    /// <summary>The same without parts that the sheet has no room for; null when nothing is left.</summary>
    public static LayoutNode? Within(LayoutNode whole, int w, int h)
    {
        var tree = whole;
        while (tree is not null && (tree.Dx > w || tree.Dy > h))
            tree = tree.Dx > w ? Less(tree, true, tree.Dx - w) : Less(tree, false, tree.Dy - h);
        return tree;
    }

    /// <summary>The nodes in the order that a <see cref="CutTree"/> takes them.</summary>
    public static IEnumerable<CutNode> Preorder(LayoutNode node, int depth = 0) =>
        node
            .Children.SelectMany(child => Preorder(child, depth + 1))
            .Prepend(
                new CutNode
                {
                    Depth = depth,
                    Item = node.Item ?? CutNode.Cut,
                    W = (int)node.Dx,
                    H = (int)node.Dy,
                }
            );

    // Without one part of those that make it so long: the smallest that is long enough, else the longest.
    private static LayoutNode? Less(LayoutNode node, bool alongX, long excess)
    {
        if (node.Item is not null)
            return null;
        var longest = node.Children.MaxBy(child => Along(child, alongX))!;
        var chosen =
            node.AlongX != alongX
                ? longest
                : node.Children.Where(child => Along(child, alongX) >= excess).MinBy(child => Along(child, alongX)) ?? longest;
        return Join(
            node.AlongX,
            node.Children.Select(child => ReferenceEquals(child, chosen) ? Less(child, alongX, excess) : child)
        );
    }

    private static long Along(LayoutNode node, bool alongX) => alongX ? node.Dx : node.Dy;
}
