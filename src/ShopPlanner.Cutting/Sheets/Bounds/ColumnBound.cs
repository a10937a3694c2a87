using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Steering;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>
/// Inequalities from column generation over guillotine layouts (Gilmore and Gomory, Operations Research 13, 1965): the relaxation
/// values the types, the knapsack tells the most a sheet is worth at those values. Whatever the values are, the sheets of a plan
/// are worth no less than all its pieces, so values made whole and a knapsack in whole numbers give a <see cref="CoverRow"/> free
/// of rounding errors. When the relaxation cuts pieces more often than they are wanted, the worst such types are counted.
/// </summary>
internal sealed class ColumnBound : IDisposable
{
    // How near the values stay to the best ones at first (Wentges 1997, as for boards).
    private const double SmoothingFactor = 0.8;

    // Steps that one knapsack with counted types may take.
    private const double MostWork = 150e6;

    // Steps of the linear solver's, a guess: its own and for each number of the program.
    private const long MasterWork = 100_000;

    // Share of a price that is not worth more work.
    private const double RelativeTolerance = 1e-4;

    private readonly SheetModel model;
    private readonly CutGrid grid;
    private readonly CutKnapsack knapsack;
    private readonly ColumnMaster master;
    private readonly WorkBudget budget;
    private readonly List<(int Type, int Most)> counted = [];
    private double[] center;
    private double best;

    private ColumnBound(SheetModel model, CutGrid grid, WorkBudget budget)
    {
        (this.model, this.grid, this.budget) = (model, grid, budget);
        knapsack = new CutKnapsack(grid);
        master = new ColumnMaster(model);
        center = [.. grid.Areas.Select(a => a / grid.Area)];
    }

    /// <summary>Starts from the layouts of a complete packing.</summary>
    public static ColumnBound From(SheetModel model, CutGrid grid, Packing start, Func<bool> stop) =>
        new ColumnBound(model, grid, new WorkBudget(0, stop)) { IsRough = !grid.IsExact }.With(start);

    /// <summary>Goes on with a finer grid from the best values; layouts of the rough grid need not exist.</summary>
    public ColumnBound On(CutGrid finer, Packing start)
    {
        var bound = new ColumnBound(model, finer, budget) { center = center, best = best };
        bound.Rows.AddRange(Rows);
        return bound.With(start);
    }

    private ColumnBound With(Packing start)
    {
        foreach (var tree in start.Trees)
            master.Add(new(tree.Stock, Counts(tree)));
        return this;
    }

    /// <summary>Each stronger than the one before.</summary>
    public List<CoverRow> Rows { get; } = [];

    /// <summary>True when a finer grid might tell more; no type is counted before it did.</summary>
    public bool IsRough { get; private init; }

    /// <summary>True when no better inequality is to be had, or not with reasonable work.</summary>
    public bool IsDone { get; private set; }

    private long Bound => RoundUp(best);

    /// <summary>Goes on for so many steps, or until a bound on the price is reached.</summary>
    public void Advance(long steps, long goal)
    {
        budget.Add(steps);
        while (!IsDone && !budget.IsSpent && Bound < goal)
            Step();
    }

    private void Step()
    {
        budget.Spend(MasterWork + (10L * model.Types.Length * master.Columns.Count));
        if (master.Solve() is not { } point)
            IsDone = true;
        else if (IsSettled(point.Objective * master.Dearest) || !Price(point))
            IsDone = !budget.IsStopped && (IsRough || !CountOneMore(point));
    }

    // True when the relaxation's price leaves the bound nothing to gain, or next to nothing where prices differ little.
    private bool IsSettled(double price) =>
        RoundUp(price) <= Bound || (model.PriceStep < price * RelativeTolerance && price - best < price * RelativeTolerance);

    private long RoundUp(double price) => (long)Math.Ceiling((price / model.PriceStep) - 1e-6) * model.PriceStep;

    // False when no layout is worth more than its price: the relaxation is solved.
    private bool Price(ColumnPoint point)
    {
        for (var weight = SmoothingFactor; !budget.IsStopped; weight = weight < 0.1 ? 0 : weight / 2)
        {
            if (PriceAt(Mixed(point, weight), point))
                return true;
            if (weight == 0)
                return false;
        }
        return false;
    }

    // A type the grid cannot value is worth nothing.
    private double[] Mixed(ColumnPoint point, double weight) =>
        [.. point.Types.Select((v, t) => grid.Areas[t] > 0 ? ((1 - weight) * v) + (weight * center[t]) : 0)];

    private bool PriceAt(double[] mixed, ColumnPoint point)
    {
        var (values, scale) = Whole(mixed);
        budget.Spend(knapsack.Work);
        if (knapsack.Solve(values, () => budget.IsStopped) is not { } most)
            return false;
        Note(mixed, values, most);
        var added = false;
        foreach (var stock in model.Stocks)
        {
            var price = ((double)stock.Price / master.Dearest) + point.Surcharges[stock.Index];
            if (most[stock.Index] > price * scale * (1 - 1e-6))
                added |= AddPattern(stock, point, price);
        }
        return added;
    }

    private bool AddPattern(StockType stock, ColumnPoint point, double price)
    {
        var column = new Column(stock.Index, knapsack.Pattern(stock.Index));
        return column.Counts.Select((n, t) => n * point.Types[t]).Sum() > price + 1e-7 && master.Add(column);
    }

    // Keeps the inequality when it is the best so far.
    private void Note(double[] mixed, int[] values, long[] most)
    {
        Int128 wanted = 0;
        for (var t = 0; t < values.Length; t++)
            wanted += (Int128)values[t] * model.Types[t].Demand;
        var price = CoverCost.Fractional(model.Stocks, (double)wanted, s => most[s]);
        price *= model.Stocks.Length == 1 ? model.Stocks[0].Price : 1;
        if (price <= best)
            return;
        (best, center) = (price, mixed);
        Rows.Add(new(wanted, [.. most.Select(m => (Int128)m)]));
    }

    // Values in whole numbers, small enough for the knapsack: no layout measures more than the grid's area.
    private (int[] Values, double Scale) Whole(double[] duals)
    {
        var rate = duals.Select((v, t) => v == 0 ? 0 : v / grid.Areas[t]).Max();
        var scale = CutKnapsack.MostValue / (2 * Math.Max(rate * grid.Area, 1e-9));
        return ([.. duals.Select(v => (int)(v * scale))], scale);
    }

    // Counts the type that the relaxation's layouts hold most too many of; false when there is none or it is too much work.
    private bool CountOneMore(ColumnPoint point)
    {
        var excess = model.Types.Select((type, t) => Excess(point, t, type.Demand)).ToArray();
        foreach (var (type, _) in counted)
            excess[type] = 0;
        var worst = Array.IndexOf(excess, excess.Max());
        counted.Add((worst, model.Types[worst].Demand));
        if (excess[worst] < 1e-6 || grid.Work * CountStates.PairsFor(counted.Select(c => c.Most)) > MostWork)
            return false;
        master.Forbid(worst);
        knapsack.Count(CountStates.Of(counted));
        return true;
    }

    private double Excess(ColumnPoint point, int type, int demand) =>
        point.Times.Select((times, c) => times * Math.Max(0, master.Columns[c].Counts[type] - demand)).Sum();

    private int[] Counts(CutTree tree)
    {
        var counts = new int[model.Types.Length];
        foreach (var (type, count) in tree.PieceCounts())
            counts[type] = count;
        return counts;
    }

    public void Dispose() => master.Dispose();
}
