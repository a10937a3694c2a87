using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Search;
using ShopPlanner.Cutting.Sheets.Trees;

namespace ShopPlanner.Cutting.Sheets.Finish;

/// <summary>What a packing leaves: the remnants worth keeping, and the offcuts that were not touched.</summary>
internal sealed class PackingWorth(SheetModel model)
{
    private readonly double[] untouched = [.. model.Problem.Stocks.Select(LeftoverValue.OfUntouched)];

    /// <summary>False when nothing is kept and there is no bin, so that every packing is worth the same.</summary>
    public bool Matters => model.Problem.Stocks.Any(s => s.FromBin || (s.KeepDx is not null && s.KeepDy is not null));

    public double Of(Packing packing)
    {
        var total = 0.0;
        foreach (var tree in packing.Trees)
            total += tree.Worth ??= Of(tree);
        for (var s = 0; s < untouched.Length; s++)
            total += untouched[s] * (model.Stocks[s].Limit - packing.StockUsed[s]);
        return total;
    }

    private double Of(CutTree tree)
    {
        var stock = model.Problem.Stocks[tree.Stock];
        return Remnants(stock, new LayoutWriter(stock).Write(Branch.From(tree, model.Scale)));
    }

    private static double Remnants(SheetStock stock, SheetNode node)
    {
        if (node.Item is not null)
            return 0;
        return node.Children.IsEmpty
            ? LeftoverValue.Of(stock, node.Dx, node.Dy)
            : node.Children.Sum(child => Remnants(stock, child));
    }
}
