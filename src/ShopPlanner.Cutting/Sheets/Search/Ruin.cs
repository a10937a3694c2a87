using ShopPlanner.Cutting.Sheets.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>Takes pieces out: whole sheets, branches of the cut tree, single pieces. A sheet that cannot be cut any more without
/// what was taken out goes altogether.</summary>
internal sealed class Ruin(Chance chance)
{
    public void Run(Ledger ledger, int mostSheets)
    {
        var sheets = 1 + chance.Below(mostSheets);
        for (var i = 0; i < sheets && ledger.Now.Trees.Count > 0; i++)
        {
            var index = chance.Below(ledger.Now.Trees.Count);
            if (chance.Happens(0.15))
                ledger.Close(index);
            else
                Thin(ledger, index);
        }
    }

    private void Thin(Ledger ledger, int index)
    {
        var tree = ledger.Own(index);
        if (chance.Happens(0.5))
            TakeBranch(ledger, tree);
        else
            TakeSome(ledger, tree);
        tree.Compact();
        if (tree.IsEmpty || ledger.Now.Model.Rule?.Allows(tree) == false)
            ledger.Close(index);
    }

    private void TakeBranch(Ledger ledger, CutTree tree)
    {
        var node = chance.Below(tree.Count);
        var end = tree.EndOf(node);
        for (var i = node; i < end; i++)
        {
            if (tree.Nodes[i].IsLeaf)
                ledger.TakeOut(tree, i);
        }
    }

    private void TakeSome(Ledger ledger, CutTree tree)
    {
        var share = 0.1 + (0.5 * chance.Unit());
        var taken = 0;
        for (var i = 0; i < tree.Count; i++)
        {
            if (!tree.Nodes[i].IsLeaf || !chance.Happens(share))
                continue;
            ledger.TakeOut(tree, i);
            if (++taken >= 12)
                return;
        }
    }
}
