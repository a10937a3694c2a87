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
    public LayoutNode Write(LayoutNode root) => Fill(root, 0, 0, stock.Dx, stock.Dy);

    /// <summary>A rectangle that holds the node.</summary>
    public LayoutNode Fill(LayoutNode node, long x, long y, long dx, long dy) =>
        node.Item is { } item ? FillPart(node, item, x, y, dx, dy) : FillCut(node, x, y, dx, dy);

    // A part alone on a larger rectangle is trimmed by the cut that leaves the more valuable remnants first.
    private LayoutNode FillPart(LayoutNode part, int item, long x, long y, long dx, long dy)
    {
        var list = new List<LayoutNode> { part };
        if (part.Dx == dx && part.Dy == dy)
            return LayoutNode.Piece(item, false, x, y, dx, dy);
        if (part.Dx == dx)
            return FillList(list, false, x, y, dx, dy);
        if (part.Dy == dy)
            return FillList(list, true, x, y, dx, dy);
        var first = LeftoverValue.Of(stock, dx - part.Dx, dy) + LeftoverValue.Of(stock, part.Dx, dy - part.Dy);
        var second = LeftoverValue.Of(stock, dx, dy - part.Dy) + LeftoverValue.Of(stock, dx - part.Dx, part.Dy);
        return FillList(list, first >= second && dy <= highest, x, y, dx, dy);
    }

    private LayoutNode FillCut(LayoutNode cut, long x, long y, long dx, long dy) =>
        FillList(CutOrder.Sorted(cut), cut.AlongX, x, y, dx, dy);

    private LayoutNode FillList(List<LayoutNode> children, bool alongX, long x, long y, long dx, long dy)
    {
        var used = children.Sum(c => alongX ? c.Dx : c.Dy);
        var slack = (alongX ? dx : dy) - used;
        var stairs = new Staircase(stock, alongX, children, slack);
        return FillFrom(new(stairs, children, alongX, slack), 0, x, y, dx, dy);
    }

    private sealed record Row(Staircase Stairs, List<LayoutNode> Children, bool AlongX, long Slack);

    // Children from this one on, and the slack, fill the rectangle.
    private LayoutNode FillFrom(Row row, int from, long x, long y, long dx, long dy)
    {
        var group = GroupAfter(row, from, dx, dy);
        if (group == from)
            return FillTrimmed(row, from, x, y, dx, dy);
        var nodes = new List<LayoutNode>();
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
            nodes.Add(LayoutNode.Remnant(px, py, restX, restY));
        return Join(nodes, row.AlongX, x, y, dx, dy);
    }

    // In a rectangle too high for crosscuts the free space above a row comes off first, and rows are ripped off one by one.
    private int GroupAfter(Row row, int from, long dx, long dy)
    {
        if (dy <= highest)
            return row.Stairs.GroupAfter(from, row.AlongX ? dy : dx);
        if (!row.AlongX)
            return from + 1;
        return row.Children[from].Dy < dy ? from : row.Children.Count;
    }

    private LayoutNode FillTrimmed(Row row, int from, long x, long y, long dx, long dy)
    {
        var height = row.AlongX ? row.Children[from].Dy : row.Children[from].Dx;
        return row.AlongX
            ? Join(
                [FillFrom(row, from, x, y, dx, height), LayoutNode.Remnant(x, y + height, dx, dy - height)],
                false,
                x,
                y,
                dx,
                dy
            )
            : Join(
                [FillFrom(row, from, x, y, height, dy), LayoutNode.Remnant(x + height, y, dx - height, dy)],
                true,
                x,
                y,
                dx,
                dy
            );
    }

    // One cut node; nodes that are cut the same way are drawn up into it.
    private static LayoutNode Join(List<LayoutNode> nodes, bool alongX, long x, long y, long dx, long dy)
    {
        if (nodes.Count == 1)
            return nodes[0];
        var flat = nodes.SelectMany(n => n.Children.Length > 0 && n.AlongX == alongX ? n.Children : [n]);
        return new LayoutNode(x, y, dx, dy, null, false, alongX, [.. flat]);
    }
}
