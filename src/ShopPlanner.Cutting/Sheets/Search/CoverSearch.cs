using Google.OrTools.Sat;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Steering;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>
/// Chooses layouts of a pool so that, within the price allowed, the least area has no place: a set covering model, where what
/// is covered too often is taken out again.
/// </summary>
internal sealed class CoverSearch(SheetModel model, SearchLimits limits)
{
    // Time of the solver on a quiet machine, as it counts it; twice that by the clock.
    private const double MostSeconds = 1;

    /// <summary>The packing chosen; null when the solver found none in its time.</summary>
    public Packing? Run(PatternPool pool, Packing hint, long mostPrice)
    {
        var trees = pool.Trees.ToArray();
        var cover = new CpModel();
        var times = trees.Select((_, i) => cover.NewIntVar(0, MostTimes(trees[i]), $"layout {i}")).ToArray();
        var left = model.Types.Select((t, i) => cover.NewIntVar(0, t.Demand, $"left {i}")).ToArray();
        AddDemands(cover, trees, times, left);
        AddStocks(cover, trees, times, mostPrice);
        cover.Minimize(LinearExpr.WeightedSum(left, model.Types.Select(t => t.Area).ToArray()));
        AddHint(cover, trees, times, hint);
        using var solver = new CpSolver
        {
            StringParameters = CpParameters.Repeatable(MostSeconds, limits.Clock.SecondsLeft(2 * MostSeconds) + 0.01),
        };
        var status = solver.Solve(cover);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? Unpack(trees, [.. times.Select(v => (int)solver.Value(v))])
            : null;
    }

    private int MostTimes(CutTree tree)
    {
        var most = model.Stocks[tree.Stock].Limit;
        foreach (var (type, count) in tree.PieceCounts())
            most = Math.Min(most, Math.Max(1, (model.Types[type].Demand + count - 1) / count));
        return most;
    }

    private void AddDemands(CpModel cover, CutTree[] trees, IntVar[] times, IntVar[] left)
    {
        var rows = left.Select(v => new List<(IntVar, long)> { (v, 1) }).ToArray();
        for (var i = 0; i < trees.Length; i++)
        {
            foreach (var (type, count) in trees[i].PieceCounts())
                rows[type].Add((times[i], count));
        }
        for (var t = 0; t < rows.Length; t++)
            cover.Add(
                LinearExpr.WeightedSum(rows[t].Select(r => r.Item1), rows[t].Select(r => r.Item2)) >= model.Types[t].Demand
            );
    }

    private void AddStocks(CpModel cover, CutTree[] trees, IntVar[] times, long mostPrice)
    {
        cover.Add(LinearExpr.WeightedSum(times, trees.Select(t => model.Stocks[t.Stock].Price)) <= mostPrice);
        foreach (var stock in model.Stocks)
        {
            if (stock.Limit < model.Pieces)
                cover.Add(LinearExpr.Sum(times.Where((_, i) => trees[i].Stock == stock.Index)) <= stock.Limit);
        }
    }

    private static void AddHint(CpModel cover, CutTree[] trees, IntVar[] times, Packing hint)
    {
        var wanted = hint.Trees.GroupBy(tree => tree.ContentKey()).ToDictionary(g => g.Key, g => g.Count());
        for (var i = 0; i < trees.Length; i++)
            cover.AddHint(times[i], wanted.Remove(trees[i].ContentKey(), out var count) ? count : 0);
    }

    // The sheets chosen, without the pieces that are covered too often.
    private Packing Unpack(CutTree[] trees, int[] times)
    {
        var draft = new PackingDraft(model);
        for (var i = 0; i < trees.Length; i++)
        {
            for (var n = 0; n < times[i]; n++)
                draft.OpenAs(trees[i]);
        }
        return draft.Now;
    }
}
