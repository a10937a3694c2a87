using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Writing;

/// <summary>Writes a slicing tree as the nodes of a layout, every rectangle filled exactly. Item indices are those of the
/// types; the hand-out of pieces comes later.</summary>
/// <param name="stock">What is cut.</param>
/// <param name="highest">A rectangle higher than this is not cut along x, where that can be helped: the crosscut would be too
/// long for the saw.</param>
internal sealed class LayoutWriter(SheetStock stock, long highest = long.MaxValue)
{
    public SheetNode Write(Branch root) => Fill(root, 0, 0, stock.Dx, stock.Dy);

    /// <summary>A rectangle that holds the branch.</summary>
    public SheetNode Fill(Branch branch, long x, long y, long dx, long dy) =>
        branch.Type >= 0 ? FillPart(branch, x, y, dx, dy) : FillCut(branch, x, y, dx, dy);

    /// <summary>A part alone on a larger rectangle is trimmed by the cut that leaves the more valuable remnants first.</summary>
    private SheetNode FillPart(Branch part, long x, long y, long dx, long dy)
    {
        var list = new List<Branch> { part };
        if (part.Dx == dx && part.Dy == dy)
            return new SheetNode(x, y, dx, dy, part.Type, false, false, []);
        if (part.Dx == dx)
            return FillList(list, false, x, y, dx, dy);
        if (part.Dy == dy)
            return FillList(list, true, x, y, dx, dy);
        var first = LeftoverValue.Of(stock, dx - part.Dx, dy) + LeftoverValue.Of(stock, part.Dx, dy - part.Dy);
        var second = LeftoverValue.Of(stock, dx, dy - part.Dy) + LeftoverValue.Of(stock, dx - part.Dx, part.Dy);
        return FillList(list, first >= second && dy <= highest, x, y, dx, dy);
    }

    private SheetNode FillCut(Branch cut, long x, long y, long dx, long dy) =>
        FillList(CutOrder.Sorted(cut), cut.AlongX, x, y, dx, dy);

    private SheetNode FillList(List<Branch> children, bool alongX, long x, long y, long dx, long dy)
    {
        var used = children.Sum(c => alongX ? c.Dx : c.Dy);
        var slack = (alongX ? dx : dy) - used;
        var stairs = new Staircase(stock, alongX, children, slack);
        return FillFrom(new(stairs, children, alongX, slack), 0, x, y, dx, dy);
    }

    private sealed record Row(Staircase Stairs, List<Branch> Children, bool AlongX, long Slack);

    /// <summary>Children from <paramref name="from"/> on, and the slack, fill the rectangle.</summary>
    private SheetNode FillFrom(Row row, int from, long x, long y, long dx, long dy)
    {
        var group = GroupAfter(row, from, dx, dy);
        if (group == from)
            return FillTrimmed(row, from, x, y, dx, dy);
        var nodes = new List<SheetNode>();
        var (px, py) = (x, y);
        for (var i = from; i < group; i++)
        {
            var child = row.Children[i];
            nodes.Add(row.AlongX ? Fill(child, px, py, child.Dx, dy) : Fill(child, px, py, dx, child.Dy));
            (px, py) = row.AlongX ? (px + child.Dx, py) : (px, py + child.Dy);
        }
        var (restX, restY) = row.AlongX ? (x + dx - px, dy) : (dx, y + dy - py);
        if (group < row.Children.Count)
            nodes.Add(FillFrom(row, group, px, py, restX, restY));
        else if (restX > 0 && restY > 0)
            nodes.Add(Remnant(px, py, restX, restY));
        return Join(nodes, row.AlongX, x, y, dx, dy);
    }

    /// <summary>In a rectangle too high for crosscuts the free space above a row comes off first, and rows are ripped off one by
    /// one.</summary>
    private int GroupAfter(Row row, int from, long dx, long dy)
    {
        if (dy <= highest)
            return row.Stairs.GroupAfter(from, row.AlongX ? dy : dx);
        if (!row.AlongX)
            return from + 1;
        return row.Children[from].Dy < dy ? from : row.Children.Count;
    }

    private SheetNode FillTrimmed(Row row, int from, long x, long y, long dx, long dy)
    {
        var height = row.AlongX ? row.Children[from].Dy : row.Children[from].Dx;
        return row.AlongX
            ? Join([FillFrom(row, from, x, y, dx, height), Remnant(x, y + height, dx, dy - height)], false, x, y, dx, dy)
            : Join([FillFrom(row, from, x, y, height, dy), Remnant(x + height, y, dx - height, dy)], true, x, y, dx, dy);
    }

    private static SheetNode Remnant(long x, long y, long dx, long dy) => new(x, y, dx, dy, null, false, false, []);

    /// <summary>One cut node; nodes that are cut the same way are drawn up into it.</summary>
    private static SheetNode Join(List<SheetNode> nodes, bool alongX, long x, long y, long dx, long dy)
    {
        if (nodes.Count == 1)
            return nodes[0];
        var flat = nodes.SelectMany(n => n.Children.Length > 0 && n.CutAlongX == alongX ? n.Children : [n]);
        return new SheetNode(x, y, dx, dy, null, false, alongX, [.. flat]);
    }
}
