using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Exact;

/// <summary>Finds the layout of a set on a stock again from the table, and writes it as a tree.</summary>
internal sealed class ShapeLayout(SheetModel model, ShapeTable table)
{
    /// <summary>Null when the tree would be too deep.</summary>
    public CutTree? Write(int set, StockType stock)
    {
        var nodes = new List<CutNode>();
        var alongX = Append(new(set, stock.W, stock.H), null, 0, nodes);
        return CutTree.CanBe(nodes.Max(n => n.Depth))
            ? CutTree.Of(stock.Index, stock.W, stock.H, model.Types.Length, alongX, nodes.ToArray())
            : null;
    }

    // Nodes in preorder; a cut of the same direction as the one above belongs to its row. Returns the direction of the first cut.
    private bool Append(Rectangle whole, bool? row, int depth, List<CutNode> nodes)
    {
        var place = Array.IndexOf(table.Sets.Steps, whole.Set);
        if (place >= 0)
        {
            nodes.Add(Piece(table.Sets.Types[place], whole, depth));
            return false;
        }
        var (alongX, first, second) = Split(whole);
        if (row != alongX)
            nodes.Add(new CutNode { Depth = depth++, Item = CutNode.Cut });
        Append(first, alongX, depth, nodes);
        Append(second, alongX, depth, nodes);
        return alongX;
    }

    private (bool AlongX, Rectangle First, Rectangle Second) Split(Rectangle whole)
    {
        var (set, w, h) = whole;
        foreach (var part in table.Sets.Parts(set))
        {
            var (a, b) = (table[part]!, table[set - part]!);
            if (a.WidthAt(h) is { } width && width + b.WidthAt(h) <= w)
                return (true, new(part, width, h), new(set - part, w - width, h));
            if (a.HeightAt(w) is { } height && height + b.HeightAt(w) <= h)
                return (false, new(part, w, height), new(set - part, w, h - height));
        }
        throw new InvalidOperationException($"Set {set} has no layout on {w} x {h}.");
    }

    private CutNode Piece(int index, Rectangle room, int depth)
    {
        var type = model.Types[index];
        var straight = type.W <= room.W && type.H <= room.H;
        return new CutNode
        {
            Depth = depth,
            Item = index,
            W = straight ? type.W : type.H,
            H = straight ? type.H : type.W,
        };
    }

    // A set of pieces and what it is cut from.
    private readonly record struct Rectangle(int Set, int W, int H);
}
