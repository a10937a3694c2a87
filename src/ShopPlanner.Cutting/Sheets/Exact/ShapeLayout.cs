using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Exact;

/// <summary>A set's layout as the table tells that there is one: a part, or two layouts beside each other.</summary>
internal sealed record Halves(int Type, int W, int H, bool AlongX, Halves? First, Halves? Second);

/// <summary>Finds the layout of a set on a stock again from the table, and writes it as a tree.</summary>
internal sealed class ShapeLayout(SheetModel model, ShapeTable table)
{
    /// <summary>Null when the tree would be too deep.</summary>
    public CutTree? Write(int set, StockType stock)
    {
        var root = Find(set, stock.W, stock.H);
        var nodes = new List<CutNode>();
        Write(root, 0, nodes);
        return CutTree.CanBe(nodes.Max(n => n.Depth))
            ? CutTree.Of(stock.Index, stock.W, stock.H, model.Types.Length, root.AlongX, nodes.ToArray())
            : null;
    }

    private Halves Find(int set, int w, int h)
    {
        var place = Array.IndexOf(table.Sets.Steps, set);
        if (place >= 0)
            return Part(table.Sets.Types[place], w, h);
        foreach (var part in table.Sets.Parts(set))
        {
            var (a, b) = (table[part]!, table[set - part]!);
            if (a.WidthAt(h) is { } width && width + b.WidthAt(h) <= w)
                return new(CutNode.Cut, 0, 0, true, Find(part, width, h), Find(set - part, w - width, h));
            if (a.HeightAt(w) is { } height && height + b.HeightAt(w) <= h)
                return new(CutNode.Cut, 0, 0, false, Find(part, w, height), Find(set - part, w, h - height));
        }
        throw new InvalidOperationException($"Set {set} has no layout on {w} x {h}.");
    }

    private Halves Part(int index, int w, int h)
    {
        var type = model.Types[index];
        return type.W <= w && type.H <= h
            ? new(index, type.W, type.H, false, null, null)
            : new(index, type.H, type.W, false, null, null);
    }

    private static void Write(Halves part, int depth, List<CutNode> nodes)
    {
        nodes.Add(
            new CutNode
            {
                Depth = depth,
                Item = part.Type,
                W = part.W,
                H = part.H,
            }
        );
        if (part.Type != CutNode.Cut)
            return;
        foreach (var child in Children(part, part.AlongX))
            Write(child, depth + 1, nodes);
    }

    /// <summary>Cuts of the same direction belong to one row.</summary>
    private static IEnumerable<Halves> Children(Halves part, bool alongX) =>
        part.Type == CutNode.Cut && part.AlongX == alongX
            ? Children(part.First!, alongX).Concat(Children(part.Second!, alongX))
            : [part];
}
