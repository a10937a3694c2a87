using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Writing;

/// <summary>
/// Where to cut the free space above children of falling height off: the children from some point on, with the slack beside
/// them, may be cut off as one group first, which joins the free space above them into one rectangle.
/// </summary>
internal sealed class Staircase(SheetStock stock, bool alongX, IReadOnlyList<LayoutNode> children, long slack)
{
    private readonly double[] value = new double[children.Count + 1];
    private readonly int[] next = new int[children.Count + 1];

    /// <summary>Index of the first child of the group to cut off when the children from <paramref name="from"/> on have a
    /// height of <paramref name="height"/> to themselves; the number of children for no group.</summary>
    public int GroupAfter(int from, long height)
    {
        for (var k = children.Count - 1; k > from; k--)
            Decide(k, Height(k));
        Decide(from, height);
        return next[from];
    }

    private void Decide(int k, long height)
    {
        var plain = 0.0;
        var rest = slack;
        for (var i = k; i < children.Count; i++)
            rest += Width(i);
        (value[k], next[k]) = (double.MinValue, children.Count);
        for (var j = k; j < children.Count; j++)
        {
            if (Height(j) < height)
                Consider(k, j, plain + ValueOf(rest, height - Height(j)) + (j == k ? Tail(j) : value[j]));
            plain += ValueOf(Width(j), height - Height(j));
            rest -= Width(j);
        }
        var none = plain + ValueOf(slack, height);
        if (none >= value[k])
            (value[k], next[k]) = (none, children.Count);
    }

    private void Consider(int k, int j, double total)
    {
        if (total > value[k])
            (value[k], next[k]) = (total, j);
    }

    // Value of the children from j on with the height of the highest of them.
    private double Tail(int j)
    {
        var inner = new Staircase(stock, alongX, children, slack);
        inner.GroupAfter(j, Height(j));
        return inner.value[j];
    }

    private long Width(int i) => alongX ? children[i].Dx : children[i].Dy;

    private long Height(int i) => alongX ? children[i].Dy : children[i].Dx;

    private double ValueOf(long along, long cross) =>
        alongX ? LeftoverValue.Of(stock, along, cross) : LeftoverValue.Of(stock, cross, along);
}
