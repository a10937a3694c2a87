using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Steering;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Packings;

/// <summary>Layouts that searches came by, one for each set of pieces and stock, for the covering model to choose from.</summary>
internal sealed class PatternPool
{
    private const int Most = 16_000;

    private readonly Dictionary<ulong, CutTree> trees = [];
    private readonly ulong[] marks;

    public PatternPool(SheetModel model)
    {
        var random = new RandomSource(7);
        marks = [.. Enumerable.Range(0, model.Types.Length + model.Stocks.Length).Select(_ => random.Next())];
    }

    /// <summary>In the order they were first met.</summary>
    public IEnumerable<CutTree> Trees => trees.Values;

    public int Count => trees.Count;

    /// <summary>Adds a layout. A sheet that a search has just emptied is none.</summary>
    public void Add(CutTree tree)
    {
        if (tree.Count == 0)
            return;
        var key = Key(tree);
        if (trees.ContainsKey(key))
            return;
        if (trees.Count >= Most)
            Thin();
        var own = new CutTree();
        own.CopyFrom(tree);
        trees.Add(key, own);
    }

    /// <summary>Adds what another pool holds.</summary>
    public void AddAll(PatternPool other)
    {
        foreach (var (key, tree) in other.trees)
            trees.TryAdd(key, tree);
        if (trees.Count >= Most)
            Thin();
    }

    // Sum of marks, so that the order of the pieces does not matter.
    private ulong Key(CutTree tree)
    {
        var key = marks[^(tree.Stock + 1)];
        foreach (ref readonly var node in tree.Nodes)
        {
            if (node.IsLeaf)
                key += marks[node.Item];
        }
        return key;
    }

    // Drops the emptier half.
    private void Thin()
    {
        var dropped = trees
            .OrderByDescending(t => (double)t.Value.Free / t.Value.Area)
            .Take(trees.Count / 2)
            .Select(t => t.Key)
            .ToList();
        foreach (var key in dropped)
            trees.Remove(key);
    }
}
