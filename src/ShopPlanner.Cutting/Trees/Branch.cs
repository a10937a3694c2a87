namespace ShopPlanner.Cutting.Trees;

/// <summary>A node of a finished slicing tree in the problem's own measure.</summary>
/// <param name="Type">Index of the item type; less than zero for a cut.</param>
/// <param name="Dx">Least extent along x.</param>
/// <param name="Dy">Least extent along y.</param>
/// <param name="AlongX">True when the children lie side by side along x.</param>
/// <param name="Children">None for a part.</param>
internal sealed record Branch(int Type, long Dx, long Dy, bool AlongX, List<Branch> Children)
{
    public static Branch From(CutTree tree, long scaleX, long scaleY)
    {
        var at = 0;
        return Read(tree, scaleX, scaleY, ref at);
    }

    private static Branch Read(CutTree tree, long scaleX, long scaleY, ref int at)
    {
        var node = tree.Nodes[at];
        var end = tree.EndOf(at++);
        var children = new List<Branch>();
        while (at < end)
            children.Add(Read(tree, scaleX, scaleY, ref at));
        return new(node.Item, node.W * scaleX, node.H * scaleY, tree.CutsAlongX(node.Depth), children);
    }
}
