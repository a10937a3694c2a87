using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Model;

/// <summary>A <see cref="ILayoutRule"/> for the trees of a search; what was found out is kept with them.</summary>
internal sealed class TreeRule(SheetModel model, ILayoutRule rule)
{
    // By stock and type, 0 while not known: two threads may find the same out, and then write the same.
    private readonly sbyte[] takes = new sbyte[model.Stocks.Length * model.Types.Length];

    /// <summary>False for a stock of which every layout can be cut.</summary>
    public bool Binds(int stock) => rule.Binds(stock);

    /// <summary>True when the tree can be cut; an empty one can.</summary>
    public bool Allows(CutTree tree) =>
        tree.IsEmpty || !rule.Binds(tree.Stock) || (tree.CanBeCut ??= rule.Allows(tree.Stock, Read(tree)));

    /// <summary>The layout of a tree that can be cut; null for another.</summary>
    public LayoutNode? Write(CutTree tree) => rule.Write(tree.Stock, Read(tree));

    private LayoutNode Read(CutTree tree) => tree.Read(model.Scale.X, model.Scale.Y);

    /// <summary>True when a piece of the type alone can be cut from the stock.</summary>
    public bool Takes(StockType stock, int type)
    {
        if (!rule.Binds(stock.Index))
            return stock.Holds(model.Types[type]);
        ref var known = ref takes[(stock.Index * model.Types.Length) + type];
        if (known == 0)
            known = (sbyte)(Alone(stock, model.Types[type]) ? 1 : -1);
        return known > 0;
    }

    private bool Alone(StockType stock, ItemType type) =>
        Alone(stock, type.W, type.H) || (type.CanTurn && Alone(stock, type.H, type.W));

    private bool Alone(StockType stock, int w, int h) =>
        stock.Holds(w, h) && rule.Allows(stock.Index, LayoutNode.Piece(0, false, 0, 0, w * model.Scale.X, h * model.Scale.Y));
}
