using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Steering;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>Takes pieces out: whole sheets, subtrees of the cut tree, single pieces. A sheet that cannot be cut any more without
/// what was taken out goes altogether.</summary>
internal sealed class Ruin(RandomSource random)
{
    public void Run(PackingDraft draft, int mostSheets)
    {
        var sheets = 1 + random.Below(mostSheets);
        for (var i = 0; i < sheets && draft.Now.Trees.Count > 0; i++)
        {
            var index = random.Below(draft.Now.Trees.Count);
            if (random.Happens(0.15))
                draft.Close(index);
            else
                Thin(draft, index);
        }
    }

    private void Thin(PackingDraft draft, int index)
    {
        var tree = draft.Own(index);
        if (random.Happens(0.5))
            TakeSubtree(draft, tree);
        else
            TakeSome(draft, tree);
        tree.Compact();
        if (tree.IsEmpty || draft.Now.Model.Rule?.Allows(tree) == false)
            draft.Close(index);
    }

    private void TakeSubtree(PackingDraft draft, CutTree tree)
    {
        var node = random.Below(tree.Count);
        var end = tree.EndOf(node);
        for (var i = node; i < end; i++)
        {
            if (tree.Nodes[i].IsLeaf)
                draft.TakeOut(tree, i);
        }
    }

    private void TakeSome(PackingDraft draft, CutTree tree)
    {
        var share = 0.1 + (0.5 * random.Unit());
        var taken = 0;
        for (var i = 0; i < tree.Count; i++)
        {
            if (!tree.Nodes[i].IsLeaf || !random.Happens(share))
                continue;
            draft.TakeOut(tree, i);
            if (++taken >= 12)
                return;
        }
    }
}
