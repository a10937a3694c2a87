using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Trees;

internal sealed partial class CutTree
{
    /// <summary>The tree with the least size of every node, in the problem's measure; places are left open, and items are
    /// types.</summary>
    public LayoutNode Read(long scaleX, long scaleY)
    {
        var at = 0;
        return Read(scaleX, scaleY, ref at);
    }

    private LayoutNode Read(long scaleX, long scaleY, ref int at)
    {
        var node = nodes[at];
        var end = EndOf(at++);
        var (dx, dy) = (node.W * scaleX, node.H * scaleY);
        if (node.IsLeaf)
            return LayoutNode.Piece(node.Item, false, 0, 0, dx, dy);
        var children = ImmutableArray.CreateBuilder<LayoutNode>();
        while (at < end)
            children.Add(Read(scaleX, scaleY, ref at));
        return new(0, 0, dx, dy, null, false, CutsAlongX(node.Depth), children.ToImmutable());
    }
}
