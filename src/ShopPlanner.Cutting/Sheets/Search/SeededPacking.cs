using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>A first packing from the layouts of an earlier plan, what is missing put in where it fits best.</summary>
internal sealed class SeededPacking(SheetModel model)
{
    private readonly Dictionary<int, int> typeOf = model.Types
        .SelectMany((type, i) => type.Members.Select(member => (member, i))).ToDictionary(pair => pair.member, pair => pair.i);

    /// <summary>The sheets that can still be cut; null where there are none.</summary>
    public Ledger? Start()
    {
        var ledger = new Ledger(model);
        foreach (var seed in model.Problem.Seed)
        {
            var stock = Array.FindIndex(model.Stocks, one => one.Index == seed.Stock);
            if (stock < 0 || Tree(model.Stocks[stock], seed.Root) is not { } tree) continue;
            for (var n = 0; n < seed.Times && ledger.Now.CanOpen(seed.Stock, long.MaxValue) && ledger.Now.LeftPieces > 0; n++) ledger.OpenAs(tree);
        }

        return ledger.Now.Trees.Count == 0 ? null : ledger;
    }

    private CutTree? Tree(StockType stock, SheetSeedNode root)
    {
        var nodes = new List<CutNode>();
        if (!Add(root, 0, nodes)) return null;
        var tree = CutTree.Of(stock, model.Types.Length, root.Item is not null || root.CutAlongX, [.. nodes]);
        return tree.Nodes[0].W <= stock.W && tree.Nodes[0].H <= stock.H ? tree : null;
    }

    private bool Add(SheetSeedNode node, int depth, List<CutNode> nodes)
    {
        if (!CutTree.CanBe(depth)) return false;
        if (node.Item is not { } item)
        {
            nodes.Add(new CutNode { Depth = depth, Item = CutNode.Cut });
            return node.Children.All(child => Add(child, depth + 1, nodes));
        }

        var wanted = model.Problem.Items[item];
        var (dx, dy) = node.Turned ? (wanted.Dy, wanted.Dx) : (wanted.Dx, wanted.Dy);
        nodes.Add(new CutNode { Depth = depth, Item = typeOf[item], W = (int)(dx / model.Scale.X), H = (int)(dy / model.Scale.Y) });
        return true;
    }
}
