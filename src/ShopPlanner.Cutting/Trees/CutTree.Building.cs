namespace ShopPlanner.Cutting.Trees;

internal sealed partial class CutTree
{
    /// <summary>False when a tree of such depth is more than <see cref="MostDepth"/> allows.</summary>
    public static bool CanBe(int depth) => depth + 2 < MostDepth;

    /// <summary>A tree from its nodes in preorder, of which depth, item and, for parts, sides are given.</summary>
    public static CutTree Of(int stock, int w, int h, int types, bool rootAlongX, ReadOnlySpan<CutNode> nodes)
    {
        var tree = new CutTree();
        tree.Reset(stock, w, h, types);
        tree.RootAlongX = rootAlongX;
        tree.EnsureRoom(nodes.Length);
        nodes.CopyTo(tree.nodes);
        tree.Count = nodes.Length;
        foreach (ref readonly var node in nodes)
            tree.Used += node.IsLeaf ? (long)node.W * node.H : 0;
        tree.Refresh();
        return tree;
    }
}
