using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Packings;

/// <summary>
/// A packing that can be changed and changed back: a tree is copied before its first change in a round, so undoing is putting
/// the old trees back. Trees are reused, nothing is allocated once the search is warm.
/// </summary>
internal sealed class PackingDraft
{
    private readonly Packing old;
    private readonly Stack<CutTree> spare = new();
    private readonly List<CutTree> made = [];
    private readonly List<CutTree> dropped = [];
    private long round = 1;

    public PackingDraft(SheetModel model)
    {
        Now = new Packing(model);
        old = new Packing(model);
    }

    /// <summary>The state now.</summary>
    public Packing Now { get; }

    public void Load(Packing packing)
    {
        Now.CopyFrom(packing.Clone());
        Keep();
    }

    /// <summary>The index-th tree, safe to change.</summary>
    public CutTree Own(int index)
    {
        var tree = Now.Trees[index];
        if (tree.SavedIn == round)
            return tree;
        var copy = Spare();
        copy.CopyFrom(tree);
        dropped.Add(tree);
        return Now.Trees[index] = Mine(copy);
    }

    public int Open(int stock) => Open(stock, Now.Model.Stocks[stock].W, Now.Model.Stocks[stock].H);

    /// <summary>Opens a sheet of which only a part may be used; <see cref="CutTree.Widen"/> ends that.</summary>
    public int Open(int stock, int w, int h)
    {
        var tree = Spare();
        tree.Reset(stock, w, h, Now.Model.Types.Length);
        Now.Trees.Add(Mine(tree));
        Now.NoteOpened(stock);
        return Now.Trees.Count - 1;
    }

    /// <summary>Opens a sheet cut like another, without pieces that are not left; none where that cannot be cut.</summary>
    public void OpenAs(CutTree pattern)
    {
        var tree = Spare();
        tree.CopyFrom(pattern);
        Now.Trees.Add(Mine(tree));
        Now.NoteOpened(tree.Stock);
        for (var i = 0; i < tree.Count; i++)
        {
            if (!tree.Nodes[i].IsLeaf)
                continue;
            if (Now.Left[tree.Nodes[i].Item] > 0)
                Now.NotePlaced(tree.Nodes[i].Item);
            else
                tree.TakeOut(i);
        }
        tree.Compact();
        if (tree.IsEmpty || Now.Model.Rule?.Allows(tree) == false)
            Close(Now.Trees.Count - 1);
    }

    /// <summary>The sheets changed since the last call of Keep or Undo.</summary>
    public IReadOnlyList<CutTree> Changed => made;

    public void Insert(int index, Place place)
    {
        Own(index).Insert(place);
        Now.NotePlaced(place.Item);
    }

    public void TakeOut(CutTree owned, int node) => Now.NoteTakenOut(owned.TakeOut(node));

    /// <summary>Takes the index-th tree away with all its parts.</summary>
    public void Close(int index)
    {
        var tree = Now.Trees[index];
        foreach (ref readonly var node in tree.Nodes)
        {
            if (node.IsLeaf)
                Now.NoteTakenOut(node.Item);
        }
        Now.NoteClosed(tree.Stock);
        Now.Trees[index] = Now.Trees[^1];
        Now.Trees.RemoveAt(Now.Trees.Count - 1);
        if (tree.SavedIn != round)
            dropped.Add(tree);
    }

    /// <summary>Makes the changes since the last call of Keep or Undo final.</summary>
    public void Keep()
    {
        Release(dropped);
        made.Clear();
        NextRound();
    }

    /// <summary>Takes the changes since the last call of Keep or Undo back.</summary>
    public void Undo()
    {
        Release(made);
        dropped.Clear();
        Now.CopyFrom(old);
        NextRound();
    }

    private void NextRound()
    {
        round++;
        old.CopyFrom(Now);
    }

    private CutTree Mine(CutTree tree)
    {
        tree.SavedIn = round;
        made.Add(tree);
        return tree;
    }

    private CutTree Spare() => spare.TryPop(out var tree) ? tree : new CutTree();

    private void Release(List<CutTree> trees)
    {
        foreach (var tree in trees)
            spare.Push(tree);
        trees.Clear();
    }
}
