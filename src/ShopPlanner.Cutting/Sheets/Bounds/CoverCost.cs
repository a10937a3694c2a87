using Google.OrTools.Sat;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Steering;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>The least cost of stock that satisfies inequalities.</summary>
internal static class CoverCost
{
    // Coefficients beyond this are shortened, in the safe direction.
    private const long MostCoefficient = 1L << 40;

    /// <summary>With stock cut in fractions: cheapest measure first.</summary>
    public static double Fractional(StockType[] stocks, double wanted, Func<int, double> measure)
    {
        if (stocks.Length == 1)
            return measure(0) > 0 ? wanted / measure(0) : 0;
        var cost = 0.0;
        foreach (var stock in stocks.Where(s => measure(s.Index) > 0).OrderBy(s => s.Price / measure(s.Index)))
        {
            var used = Math.Min(wanted, measure(stock.Index) * stock.Limit);
            cost += used / measure(stock.Index) * stock.Price;
            wanted -= used;
        }
        return cost;
    }

    /// <summary>With whole stocks, a proven lower bound.</summary>
    /// <param name="model">The problem.</param>
    /// <param name="rows">What must hold.</param>
    /// <param name="costs">Of one of each stock.</param>
    public static long Whole(SheetModel model, IReadOnlyList<CoverRow> rows, long[] costs) =>
        model.Stocks.Length == 1 ? costs[0] * rows.Max(Sheets) : Solve(model, rows, costs);

    private static long Sheets(CoverRow row) =>
        row.PerStock[0] == 0 ? 0 : (long)((row.Wanted + row.PerStock[0] - 1) / row.PerStock[0]);

    private static long Solve(SheetModel model, IReadOnlyList<CoverRow> rows, long[] costs)
    {
        var cover = new CpModel();
        var counts = model.Stocks.Select(s => cover.NewIntVar(0, s.Limit, $"stock {s.Index}")).ToArray();
        foreach (var row in rows)
            AddRow(cover, counts, row);
        cover.Minimize(LinearExpr.WeightedSum(counts, costs));
        using var solver = new CpSolver
        {
            StringParameters = CpParameters.KeepsInterrupt + ",num_workers:1,max_deterministic_time:0.5,relative_gap_limit:0",
        };
        var status = solver.Solve(cover);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? RoundUp(solver.BestObjectiveBound, costs) : 0;
    }

    // To the next total that the costs can come to. The solver counts in whole numbers; the allowance is for its telling them in
    // floating point.
    private static long RoundUp(double bound, long[] costs)
    {
        var step = Math.Max(1, costs.Aggregate(0L, Measures.Gcd));
        return Measures.DivideUp((long)Math.Ceiling(bound - 1e-6 - (Math.Abs(bound) * 1e-12)), step) * step;
    }

    private static void AddRow(CpModel cover, IntVar[] counts, CoverRow row)
    {
        var largest = Int128.Max(row.Wanted, row.PerStock.Max());
        var divisor = (largest / MostCoefficient) + 1;
        var coefficients = row.PerStock.Select(c => (long)((c + divisor - 1) / divisor)).ToArray();
        cover.Add(LinearExpr.WeightedSum(counts, coefficients) >= (long)(row.Wanted / divisor));
    }
}
