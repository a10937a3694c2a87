using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>A first packing from the layouts of an earlier plan, what is missing put in where it fits best.</summary>
internal sealed class SeededPacking(SheetModel model)
{
    private readonly Dictionary<int, int> typeOf = model
        .Types.SelectMany((type, i) => type.Members.Select(member => (member, i)))
        .ToDictionary(pair => pair.member, pair => pair.i);

    /// <summary>The sheets that can still be cut; null where there are none.</summary>
    public PackingDraft? Start()
    {
        var draft = new PackingDraft(model);
        foreach (var seed in model.Problem.Seed)
        {
            var stock = Array.FindIndex(model.Stocks, one => one.Index == seed.Stock);
            if (stock < 0 || Tree(model.Stocks[stock], seed.Root) is not { } tree)
                continue;
            for (var n = 0; n < seed.Times && draft.Now.CanOpen(seed.Stock, long.MaxValue) && draft.Now.LeftPieces > 0; n++)
                draft.OpenAs(tree);
        }

        return draft.Now.Trees.Count == 0 ? null : draft;
    }

    private CutTree? Tree(StockType stock, LayoutNode seed)
    {
        if (Read(seed) is not { } whole || SeedTrimming.Within(whole, stock.W, stock.H) is not { } root)
            return null;
        CutNode[] nodes = [.. SeedTrimming.Preorder(root)];
        return Array.TrueForAll(nodes, node => CutTree.CanBe(node.Depth))
            ? CutTree.Of(stock.Index, stock.W, stock.H, model.Types.Length, root.AlongX, nodes)
            : null;
    }

    // A part that can lie one way only is left out where it lies the other way.
    private LayoutNode? Read(LayoutNode node)
    {
        if (node.Item is not { } item)
            return SeedTrimming.Join(node.AlongX, node.Children.Select(Read));
        var (type, wanted) = (model.Types[typeOf[item]], model.Problem.Items[item]);
        var (w, h) = (wanted.Dx / model.Scale.X, wanted.Dy / model.Scale.Y);
        if (node.Turned)
            (w, h) = (h, w);
        return (w == type.W && h == type.H) || (type.CanTurn && w == type.H && h == type.W)
            ? LayoutNode.Piece(typeOf[item], false, 0, 0, w, h)
            : null;
    }
}
