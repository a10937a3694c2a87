using Google.OrTools.Sat;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Steering;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Polishing;

/// <summary>
/// Fewest different layouts, chosen from those the search came by, at no higher price and with leftovers worth no less: a
/// sheet that is cut like the one before needs no new settings.
/// </summary>
internal sealed class Repeats(SheetModel model, SearchLimits limits)
{
    private const int MostLayouts = 1500;
    private const double MostSeconds = 0.5;

    // Worth is counted in so many parts of the packing's own.
    private const double WorthParts = 1e6;

    private readonly PackingEvaluator evaluator = new(model);

    public Packing Run(Packing packing, PatternPool pool)
    {
        var seconds = limits.Clock.SecondsLeft(MostSeconds);
        if (packing.Trees.Count < 2 || seconds < 0.02 || model.Types.All(t => t.Demand < 2))
            return packing;
        var trees = Candidates(packing, pool);
        var times = Choose(packing, trees, seconds);
        if (times is null || times.Count(n => n > 0) >= packing.Trees.Select(tree => tree.ShapeKey()).Distinct().Count())
            return packing;
        var chosen = Unpack(trees, times);
        return IsNoWorse(chosen, packing) ? chosen : packing;
    }

    // The packing's own layouts first, then the fullest of the pool that could be cut twice.
    private List<CutTree> Candidates(Packing packing, PatternPool pool)
    {
        var own = packing.Trees.DistinctBy(Key).ToList();
        var keys = own.Select(Key).ToHashSet();
        var others = pool.Trees.Where(t => MostTimes(t) > 1 && keys.Add(Key(t))).OrderBy(t => (double)t.Free / t.Area);
        return [.. own, .. others.Take(MostLayouts)];
    }

    private int MostTimes(CutTree tree) =>
        tree.PieceCounts().Select(c => model.Types[c.Key].Demand / c.Value).Append(model.Stocks[tree.Stock].Limit).Min();

    private int[]? Choose(Packing packing, List<CutTree> trees, double seconds)
    {
        var cover = new CpModel();
        var times = trees.Select((t, i) => cover.NewIntVar(0, MostTimes(t), $"layout {i}")).ToArray();
        var used = trees.Select((_, i) => cover.NewBoolVar($"used {i}")).ToArray();
        for (var i = 0; i < times.Length; i++)
            cover.Add(times[i] == 0).OnlyEnforceIf(used[i].Not());
        AddDemands(cover, trees, times);
        AddStocks(cover, trees, times, packing);
        AddWorth(cover, trees, times, packing);
        AddHint(cover, trees, times, packing);
        cover.Minimize(LinearExpr.Sum(used));
        using var solver = new CpSolver { StringParameters = CpParameters.Repeatable(MostSeconds, seconds) };
        var status = solver.Solve(cover);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? [.. times.Select(v => (int)solver.Value(v))] : null;
    }

    private void AddDemands(CpModel cover, List<CutTree> trees, IntVar[] times)
    {
        var rows = model.Types.Select(_ => new List<(IntVar Times, long Count)>()).ToArray();
        for (var i = 0; i < times.Length; i++)
        {
            foreach (var (type, count) in trees[i].PieceCounts())
                rows[type].Add((times[i], count));
        }
        for (var t = 0; t < rows.Length; t++)
            cover.Add(
                LinearExpr.WeightedSum(rows[t].Select(r => r.Times), rows[t].Select(r => r.Count)) == model.Types[t].Demand
            );
    }

    private void AddStocks(CpModel cover, List<CutTree> trees, IntVar[] times, Packing packing)
    {
        cover.Add(LinearExpr.WeightedSum(times, trees.Select(t => model.Stocks[t.Stock].Price)) <= packing.Price);
        foreach (var stock in model.Stocks)
            cover.Add(LinearExpr.Sum(times.Where((_, i) => trees[i].Stock == stock.Index)) <= stock.Limit);
        if (model.Stocks.Any(stock => stock.FromBin))
            cover.Add(LinearExpr.WeightedSum(times, trees.Select(FromBin)) >= packing.Trees.Sum(FromBin));
    }

    private long FromBin(CutTree tree) => model.Stocks[tree.Stock].FromBin ? tree.Used : 0;

    // In rounded parts; the exact comparison comes after.
    private void AddWorth(CpModel cover, List<CutTree> trees, IntVar[] times, Packing packing)
    {
        var unit = packing.Trees.Sum(evaluator.Leftovers) / WorthParts;
        if (unit > 0)
            cover.Add(
                LinearExpr.WeightedSum(times, trees.Select(t => (long)(evaluator.Leftovers(t) / unit)))
                    >= (long)(0.999 * WorthParts)
            );
    }

    private static void AddHint(CpModel cover, List<CutTree> trees, IntVar[] times, Packing packing)
    {
        var wanted = packing.Trees.GroupBy(Key).ToDictionary(g => g.Key, g => g.Count());
        for (var i = 0; i < times.Length; i++)
            cover.AddHint(times[i], wanted.GetValueOrDefault(Key(trees[i])));
    }

    private Packing Unpack(List<CutTree> trees, int[] times)
    {
        var draft = new PackingDraft(model);
        for (var i = 0; i < times.Length; i++)
        {
            for (var n = 0; n < times[i]; n++)
                draft.OpenAs(trees[i]);
        }
        return draft.Now;
    }

    private bool IsNoWorse(Packing chosen, Packing packing) =>
        chosen.IsComplete && chosen.Price <= packing.Price && evaluator.Of(chosen).SavesNoLessThan(evaluator.Of(packing));

    private static string Key(CutTree tree) => tree.ContentKey();
}
