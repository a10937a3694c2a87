namespace ShopPlanner.Cutting.Trees;

internal sealed partial class CutTree
{
    /// <summary>Pieces of each type on the sheet.</summary>
    public Dictionary<int, int> PieceCounts()
    {
        var counts = new Dictionary<int, int>();
        foreach (ref readonly var node in Nodes)
        {
            if (node.IsLeaf)
                counts[node.Item] = counts.GetValueOrDefault(node.Item) + 1;
        }
        return counts;
    }

    /// <summary>Stock and pieces, the same for all sheets that hold the same.</summary>
    public string ContentKey() =>
        $"{Stock}:{string.Join(' ', PieceCounts().OrderBy(c => c.Key).Select(c => $"{c.Key}x{c.Value}"))}";

    /// <summary>Stock, pieces and cuts, the same for sheets that are cut alike.</summary>
    public string ShapeKey()
    {
        var parts = Nodes.ToArray().Select(n => $"{n.Depth}:{n.Item}:{n.W}x{n.H}");
        return $"{Stock} {RootAlongX} {string.Join(' ', parts)}";
    }
}
