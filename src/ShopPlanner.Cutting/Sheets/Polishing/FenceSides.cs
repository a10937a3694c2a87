using ShopPlanner.Cutting.Sequence;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Polishing;

/// <summary>Counts the rips of a tree whose piece is short for a fence, as <see cref="FenceEdge"/> says it. The sizes of a tree
/// are those that it needs: what wood hangs on longer is only known once it is written, so this is a count to compare
/// by.</summary>
internal static class FenceSides
{
    /// <summary>Returns how many there are.</summary>
    public static int ShortRips(SheetModel model, CutTree tree)
    {
        var nodes = tree.Nodes;
        var count = 0;
        for (var i = 1; i < nodes.Length; i++)
        {
            ref readonly var node = ref nodes[i];
            ref readonly var parent = ref nodes[node.Parent];
            // A strip is ripped off the piece that its parent is; a part that is narrower than its row is ripped by itself.
            if (!tree.CutsAlongX(parent.Depth))
                count += IsShort(model, node.Parent == 0 ? tree.W : parent.W, node.H);
            else if (node.IsLeaf && node.H < parent.H)
                count += IsShort(model, node.W, node.H);
        }

        return count;
    }

    private static int IsShort(SheetModel model, int edge, int setting) =>
        FenceEdge.IsShort(edge * model.Scale.X, setting * model.Scale.Y) ? 1 : 0;
}
