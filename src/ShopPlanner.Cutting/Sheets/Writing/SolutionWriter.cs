using System.Collections.Immutable;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Writing;

/// <summary>Writes a packing as a solution: equal layouts joined, pieces of a type handed out to the items it stands
/// for.</summary>
internal sealed class SolutionWriter(SheetModel model)
{
    private readonly SheetProblem problem = model.Problem;

    public SheetSolution Write(Packing packing, long bound)
    {
        var handOut = new HandOut(model);
        var layouts = packing
            .Trees.GroupBy(tree => tree.ShapeKey())
            .Select(g => (g.First().Stock, Times: g.Count(), Root: Root(g.First())))
            .OrderByDescending(l => l.Times)
            .ThenBy(l => l.Stock)
            .SelectMany(l => handOut.Split(l.Stock, l.Times, l.Root));
        ImmutableArray<SheetLayout> written = [.. layouts];
        var unmet = handOut.Rest();
        return new SheetSolution(written, unmet, packing.Cost, bound, unmet.All(u => u == 0), packing.Cost == bound);
    }

    private LayoutNode Root(CutTree tree) =>
        model.Rule is { } rule
            ? rule.Write(tree) ?? throw new InvalidOperationException("A layout was kept that cannot be cut within the limits.")
            : new LayoutWriter(problem.Stocks[tree.Stock]).Write(tree.Read(model.Scale.X, model.Scale.Y));
}
