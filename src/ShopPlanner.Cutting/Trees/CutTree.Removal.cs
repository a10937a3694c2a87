namespace ShopPlanner.Cutting.Trees;

internal sealed partial class CutTree
{
    /// <summary>Marks the part at a node as gone; <see cref="Compact"/> must follow before anything else.</summary>
    public int TakeOut(int node)
    {
        var item = nodes[node].Item;
        Used -= (long)nodes[node].W * nodes[node].H;
        nodes[node].Item = CutNode.Gone;
        return item;
    }

    /// <summary>The node after the last one below <paramref name="node"/>.</summary>
    public int EndOf(int node)
    {
        var depth = nodes[node].Depth;
        do node++;
        while (node < Count && nodes[node].Depth > depth);
        return node;
    }

    /// <summary>Drops gone parts, cuts left without children, and cuts left with one child.</summary>
    public void Compact()
    {
        CountChildren();
        Rewrite();
        ForgetMisfits();
        Refresh();
    }

    private void CountChildren()
    {
        for (var i = 0; i < Count; i++)
            nodes[i].Kids = 0;
        for (var i = Count - 1; i > 0; i--)
        {
            if (nodes[i].IsLeaf || nodes[i].Kids > 0)
                nodes[nodes[i].Parent].Kids++;
        }
    }

    // A cut whose direction no longer differs from the one above it dissolves: its children join the one above.
    private void Rewrite()
    {
        Span<int> childDepth = stackalloc int[MostDepth + 1];
        var oldRoot = RootAlongX;
        var kept = 0;
        for (var i = 0; i < Count; i++)
        {
            var node = nodes[i];
            var depth = node.Depth == 0 ? 0 : childDepth[node.Depth - 1];
            childDepth[node.Depth] = depth;
            if (node.Item == CutNode.Cut)
            {
                var alongX = oldRoot ^ ((node.Depth & 1) != 0);
                if (node.Kids < 2 || (depth > 0 && CutsAlongX(depth) != alongX))
                    continue;
                if (depth == 0)
                    RootAlongX = alongX;
                childDepth[node.Depth] = depth + 1;
            }
            else if (node.Item == CutNode.Gone)
            {
                continue;
            }
            node.Depth = depth;
            nodes[kept++] = node;
        }
        Count = kept;
    }
}
