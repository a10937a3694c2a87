using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Sheets.Writing;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Polishing;

/// <summary>How good a packing is among those of its price.</summary>
/// <param name="FromBin">Area of the pieces that are cut from offcuts; more is better.</param>
/// <param name="NewStocks">Sheets cut that are not from the bin; fewer are better.</param>
/// <param name="Leftovers">Of the remnants worth keeping and of the offcuts that were not touched; more is better.</param>
/// <param name="ShortRips">Rips of pieces that are short for a fence; fewer are better.</param>
/// <param name="Settings">Fence settings, counted for each sheet on its own; fewer are better.</param>
internal readonly record struct PackingObjectives(long FromBin, int NewStocks, double Leftovers, int ShortRips, int Settings)
{
    /// <summary>The bin counts first, then new stock, leftovers, short rips and settings.</summary>
    public bool IsNoWorseThan(PackingObjectives other) =>
        SavingsTo(other) is var savings and not 0
            ? savings > 0
            : (-ShortRips, -Settings).CompareTo((-other.ShortRips, -other.Settings)) >= 0;

    /// <summary>The same, however often the fence is set.</summary>
    public bool SavesNoLessThan(PackingObjectives other) =>
        SavingsTo(other) is var savings and not 0 ? savings > 0 : ShortRips <= other.ShortRips;

    private int SavingsTo(PackingObjectives other) =>
        (FromBin, -NewStocks, Leftovers).CompareTo((other.FromBin, -other.NewStocks, other.Leftovers));
}

/// <summary>Works the objectives out; what belongs to one sheet is kept with it.</summary>
internal sealed class PackingEvaluator(SheetModel model)
{
    private readonly double[] untouched = [.. model.Problem.Stocks.Select(LeftoverValue.OfUntouched)];
    private readonly HashSet<(bool, int)> settings = [];

    /// <summary>False when nothing is kept and there is no bin, so that leftovers of every packing are worth the same.</summary>
    public bool Matters => model.Problem.Stocks.Any(s => s.FromBin || !s.Keep.IsEmpty);

    public PackingObjectives Of(Packing packing)
    {
        var (fromBin, opened, leftovers, rips, count) = (0L, 0, 0.0, 0, 0);
        foreach (var tree in packing.Trees)
        {
            if (model.Stocks[tree.Stock].FromBin)
                fromBin += tree.Used;
            else
                opened++;
            leftovers += Leftovers(tree);
            rips += tree.ShortRips ??= FenceSides.ShortRips(model, tree);
            count += tree.Settings ??= CountSettings(tree);
        }
        for (var s = 0; s < untouched.Length; s++)
            leftovers += untouched[s] * (model.Stocks[s].Limit - packing.StockUsed[s]);
        return new(fromBin, opened, leftovers, rips, count);
    }

    /// <summary>Of one sheet.</summary>
    public double Leftovers(CutTree tree) => tree.LeftoverValue ??= Matters ? Of(tree) : 0;

    // Different sizes that pieces are cut to along either axis.
    private int CountSettings(CutTree tree)
    {
        settings.Clear();
        var nodes = tree.Nodes;
        for (var i = 1; i < nodes.Length; i++)
        {
            var alongX = tree.CutsAlongX(nodes[i].Depth - 1);
            settings.Add((alongX, alongX ? nodes[i].W : nodes[i].H));
        }
        return settings.Count;
    }

    private double Of(CutTree tree)
    {
        var stock = model.Problem.Stocks[tree.Stock];
        if (model.Rule is { } rule)
            return rule.Write(tree) is { } layout ? LeftoverValue.OfAll(stock, layout) : 0;
        return LeftoverValue.OfAll(stock, new LayoutWriter(stock).Write(tree.Read(model.Scale.X, model.Scale.Y)));
    }
}
