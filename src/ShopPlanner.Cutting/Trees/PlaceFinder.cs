using System.Runtime.CompilerServices;

namespace ShopPlanner.Cutting.Trees;

/// <summary>How places are judged: lower is better, in area lost.</summary>
/// <param name="Reusable">Share of a gap's area that counts as lost while the gap can still hold an item.</param>
/// <param name="Rest">Share of the strip that stays open beside the new item that counts as lost (tighter fits first).</param>
/// <param name="Growth">Weight of the area lost by making nodes larger.</param>
internal readonly record struct FitWeights(double Reusable, double Rest, double Growth)
{
    public static FitWeights Usual => new(0.3, 0.05, 1);
}

/// <summary>Looks through all nodes of a sheet for places of an item of given sides.</summary>
internal static class PlaceFinder
{
    public static bool Probe<TSink>(CutTree tree, int item, int w, int h, int minSide, in FitWeights weights, ref TSink sink)
        where TSink : struct, IPlaceSink
    {
        if (w > tree.W || h > tree.H || !tree.CanDeepen)
            return false;
        if (tree.IsEmpty)
            return Offer(tree, 0, true, item, w, h, EmptyScore(tree, w, h, minSide, weights), ref sink);
        var found =
            ProbeRoot(tree, true, item, w, h, minSide, weights, ref sink)
            | ProbeRoot(tree, false, item, w, h, minSide, weights, ref sink);
        return found | ProbeBelow(tree, item, w, h, minSide, weights, ref sink);
    }

    // On an empty sheet the way that leaves the wider strips lies better.
    private static double EmptyScore(CutTree tree, int w, int h, int minSide, in FitWeights weights) =>
        (Lost(tree.H - h, minSide, weights) * w) + (Lost(tree.W - w, minSide, weights) * h);

    private static bool ProbeRoot<TSink>(
        CutTree tree,
        bool alongX,
        int item,
        int w,
        int h,
        int minSide,
        in FitWeights weights,
        ref TSink sink
    )
        where TSink : struct, IPlaceSink
    {
        ref readonly var root = ref tree.Nodes[0];
        var rest = alongX ? root.AvailW - root.W - w : root.AvailH - root.H - h;
        if (rest < 0)
            return false;
        var gap = alongX ? tree.H - h : tree.W - w;
        var along = alongX ? w : h;
        var cross = alongX ? tree.H : tree.W;
        var score = (Lost(gap, minSide, weights) * along) + (RestLost(rest, minSide, weights) * cross);
        return Offer(tree, 0, alongX, item, w, h, score, ref sink);
    }

    private static bool ProbeBelow<TSink>(
        CutTree tree,
        int item,
        int w,
        int h,
        int minSide,
        in FitWeights weights,
        ref TSink sink
    )
        where TSink : struct, IPlaceSink
    {
        var found = false;
        var nodes = tree.Nodes;
        for (var i = 1; i < nodes.Length; i++)
        {
            ref readonly var node = ref nodes[i];
            var alongX = tree.CutsAlongX(node.Depth);
            var fits = alongX ? node.W + w <= node.AvailW && h <= node.AvailH : node.H + h <= node.AvailH && w <= node.AvailW;
            if (!fits)
                continue;
            ref readonly var parent = ref nodes[node.Parent];
            var score = alongX
                ? Score(node.W, node.H, parent.W, parent.H, w, h, minSide, weights)
                : Score(node.H, node.W, parent.H, parent.W, h, w, minSide, weights);
            found |= Offer(tree, i, alongX, item, w, h, score, ref sink);
        }
        return found;
    }

    // Area lost by putting an item (along, cross) beside a node, measured along the node's own axis: the gap between item and
    // node, what making the node wider costs its children, and what making the parent longer costs the node's siblings.
    private static double Score(
        int nodeAlong,
        int nodeCross,
        int parentAlong,
        int parentCross,
        int along,
        int cross,
        int minSide,
        in FitWeights weights
    )
    {
        var wider = cross - nodeCross;
        var longer = nodeAlong + along - parentAlong;
        var newCross = Math.Max(cross, nodeCross);
        var lost = wider >= 0 ? weights.Growth * wider * nodeAlong : Lost(-wider, minSide, weights) * along;
        return longer > 0
            ? lost + (weights.Growth * longer * (parentCross + Math.Max(wider, 0) - newCross))
            : lost + (RestLost(-longer, minSide, weights) * newCross);
    }

    // Width of a gap, as far as it counts as lost.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Lost(int gap, int minSide, in FitWeights weights) => gap < minSide ? gap : gap * weights.Reusable;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double RestLost(int rest, int minSide, in FitWeights weights) => rest < minSide ? rest : rest * weights.Rest;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static bool Offer<TSink>(CutTree tree, int node, bool alongX, int item, int w, int h, double score, ref TSink sink)
        where TSink : struct, IPlaceSink
    {
        sink.Offer(
            new Place
            {
                Tree = tree,
                Node = node,
                AlongX = alongX,
                Item = item,
                W = w,
                H = h,
                Score = score,
            }
        );
        return true;
    }
}
