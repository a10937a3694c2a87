namespace ShopPlanner.Cutting.Trees;

internal sealed partial class CutTree
{
    // Recomputes parents, least sizes and available sizes.
    private void Refresh()
    {
        (LeftoverValue, Settings, ShortRips, CanBeCut) = (null, null, null, null);
        if (Count == 0)
            return;
        LinkParents();
        SumSizes();
        ShareSlack();
    }

    private void LinkParents()
    {
        Span<int> last = stackalloc int[MostDepth + 1];
        deepest = 0;
        for (var i = 0; i < Count; i++)
        {
            ref var node = ref nodes[i];
            node.Parent = node.Depth == 0 ? -1 : last[node.Depth - 1];
            last[node.Depth] = i;
            deepest = Math.Max(deepest, node.Depth);
            if (node.Item == CutNode.Cut)
                (node.W, node.H) = (0, 0);
        }
    }

    private void SumSizes()
    {
        for (var i = Count - 1; i > 0; i--)
        {
            ref var node = ref nodes[i];
            ref var parent = ref nodes[node.Parent];
            if (CutsAlongX(parent.Depth))
            {
                parent.W += node.W;
                parent.H = Math.Max(parent.H, node.H);
            }
            else
            {
                parent.H += node.H;
                parent.W = Math.Max(parent.W, node.W);
            }
        }
    }

    private void ShareSlack()
    {
        (nodes[0].AvailW, nodes[0].AvailH) = (W, H);
        for (var i = 1; i < Count; i++)
        {
            ref var node = ref nodes[i];
            ref var parent = ref nodes[node.Parent];
            var alongX = CutsAlongX(parent.Depth);
            node.AvailW = parent.AvailW - (alongX ? parent.W - node.W : 0);
            node.AvailH = parent.AvailH - (alongX ? 0 : parent.H - node.H);
        }
    }
}
