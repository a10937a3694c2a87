using System.Globalization;
using Google.OrTools.Sat;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>
/// Chooses layouts of a pool so that, within the price allowed, the least area has no place: a set covering model, where what
/// is covered too often is taken out again.
/// </summary>
internal sealed class CoverSearch(SheetModel model, Effort effort)
{
    /// <summary>Time of the solver on a quiet machine, as it counts it; twice that by the clock.</summary>
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
            StringParameters = Parameters(MostSeconds, effort.Clock.SecondsLeft(2 * MostSeconds) + 0.01),
        };
        var status = solver.Solve(cover);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? Unpack(trees, [.. times.Select(v => (int)solver.Value(v))])
            : null;
    }

    /// <summary>Left to itself the solver takes the program's answer to Ctrl-C away for good.</summary>
    public const string KeepsInterrupt = "catch_sigint_signal:false";

    /// <summary>A repeatable search: one worker, so much work, and a clock for a loaded machine.</summary>
    public static string Parameters(double work, double seconds) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{KeepsInterrupt},num_workers:1,random_seed:1,relative_gap_limit:0,max_deterministic_time:{work:0.###},max_time_in_seconds:{seconds:0.###}"
        );

    private int MostTimes(CutTree tree)
    {
        var most = model.Stocks[tree.Stock].Limit;
        foreach (var (type, count) in Counts(tree))
            most = Math.Min(most, Math.Max(1, (model.Types[type].Demand + count - 1) / count));
        return most;
    }

    /// <summary>Pieces of each type on a sheet.</summary>
    public static Dictionary<int, int> Counts(CutTree tree)
    {
        var counts = new Dictionary<int, int>();
        foreach (ref readonly var node in tree.Nodes)
        {
            if (node.IsLeaf)
                counts[node.Item] = counts.GetValueOrDefault(node.Item) + 1;
        }
        return counts;
    }

    private void AddDemands(CpModel cover, CutTree[] trees, IntVar[] times, IntVar[] left)
    {
        var rows = left.Select(v => new List<(IntVar, long)> { (v, 1) }).ToArray();
        for (var i = 0; i < trees.Length; i++)
        {
            foreach (var (type, count) in Counts(trees[i]))
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
        var wanted = hint.Trees.GroupBy(Text).ToDictionary(g => g.Key, g => g.Count());
        for (var i = 0; i < trees.Length; i++)
            cover.AddHint(times[i], wanted.Remove(Text(trees[i]), out var count) ? count : 0);
    }

    /// <summary>Stock and pieces, the same for all layouts that hold the same.</summary>
    public static string Text(CutTree tree) =>
        $"{tree.Stock}:{string.Join(' ', Counts(tree).OrderBy(c => c.Key).Select(c => $"{c.Key}x{c.Value}"))}";

    /// <summary>The sheets chosen, without the pieces that are covered too often.</summary>
    private Packing Unpack(CutTree[] trees, int[] times)
    {
        var ledger = new Ledger(model);
        for (var i = 0; i < trees.Length; i++)
        {
            for (var n = 0; n < times[i]; n++)
                ledger.OpenAs(trees[i]);
        }
        return ledger.Now;
    }
}
