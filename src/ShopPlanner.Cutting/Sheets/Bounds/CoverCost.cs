using Google.OrTools.Sat;
using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>The least cost of stock that satisfies inequalities.</summary>
internal static class CoverCost
{
    /// <summary>Coefficients beyond this are shortened, in the safe direction.</summary>
    private const long MostCoefficient = 1L << 40;

    /// <summary>With stock cut in fractions: cheapest measure first.</summary>
    public static double Fractional(StockType[] stocks, double wanted, Func<int, double> measure)
    {
        if (stocks.Length == 1)
            return wanted / Math.Max(measure(0), 1e-300) * stocks[0].Cost;
        var cost = 0.0;
        foreach (var stock in stocks.Where(s => measure(s.Index) > 0).OrderBy(s => s.Cost / measure(s.Index)))
        {
            var used = Math.Min(wanted, measure(stock.Index) * stock.Limit);
            cost += used / measure(stock.Index) * stock.Cost;
            wanted -= used;
        }
        return cost;
    }

    /// <summary>With whole stocks, a proven lower bound.</summary>
    public static long Whole(SheetModel model, IReadOnlyList<CoverRow> rows) =>
        model.Stocks.Length == 1 ? model.Stocks[0].Cost * rows.Max(r => Sheets(r)) : Solve(model, rows);

    private static long Sheets(CoverRow row) =>
        row.PerStock[0] == 0 ? 0 : (long)((row.Wanted + row.PerStock[0] - 1) / row.PerStock[0]);

    private static long Solve(SheetModel model, IReadOnlyList<CoverRow> rows)
    {
        var cover = new CpModel();
        var counts = model.Stocks.Select(s => cover.NewIntVar(0, s.Limit, $"stock {s.Index}")).ToArray();
        foreach (var row in rows)
            AddRow(cover, counts, row);
        cover.Minimize(LinearExpr.WeightedSum(counts, model.Stocks.Select(s => s.Cost).ToArray()));
        using var solver = new CpSolver { StringParameters = "num_workers:1,max_deterministic_time:0.5,relative_gap_limit:0" };
        var status = solver.Solve(cover);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? Measures.DivideUp((long)Math.Ceiling(solver.BestObjectiveBound - 1e-6), model.CostStep) * model.CostStep
            : 0;
    }

    private static void AddRow(CpModel cover, IntVar[] counts, CoverRow row)
    {
        var largest = Int128.Max(row.Wanted, row.PerStock.Max());
        var divisor = (largest / MostCoefficient) + 1;
        var coefficients = row.PerStock.Select(c => (long)((c + divisor - 1) / divisor)).ToArray();
        cover.Add(LinearExpr.WeightedSum(counts, coefficients) >= (long)(row.Wanted / divisor));
    }
}
