using Google.OrTools.Sat;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Steering;

namespace ShopPlanner.Cutting.Sheets.Exact;

/// <summary>What came of trying everything.</summary>
/// <param name="Packing">The better one found, or the one that was there before.</param>
/// <param name="IsProven">True when no packing is better.</param>
internal sealed record ExactAnswer(Packing Packing, bool IsProven);

/// <summary>
/// Solves jobs of few pieces for certain: of all sets that a stock holds the largest are listed, and the whole job is covered
/// with the cheapest choice of them.
/// </summary>
internal sealed class SmallJob
{
    private const int MostLayouts = 20_000;

    // Work of the covering model, about seconds as the solver counts; twice that by the clock.
    private const double MostSeconds = 2;

    private readonly SheetModel model;
    private readonly ShapeTable table;
    private readonly WorkBudget budget;
    private readonly List<(StockType Stock, int Set)> layouts;

    private SmallJob(SheetModel model, ShapeTable table, WorkBudget budget)
    {
        (this.model, this.table, this.budget) = (model, table, budget);
        layouts = [.. model.Stocks.Where(s => s.Limit > 0).SelectMany(s => Largest(s).Select(set => (s, set)))];
    }

    /// <summary>Null when there is too much to try.</summary>
    public static SmallJob? Of(SheetModel model, WorkBudget budget)
    {
        var job = ShapeTable.Of(model, budget) is { } table ? new SmallJob(model, table, budget) : null;
        return job?.layouts.Count <= MostLayouts ? job : null;
    }

    /// <summary>Lowers the price of a complete packing to the least.</summary>
    public ExactAnswer Lower(Packing best, SearchClock clock) => LowerByTable(best) ?? LowerByModel(best, clock);

    // Null when stock is short or the table is too much work.
    private ExactAnswer? LowerByTable(Packing best)
    {
        if (layouts.Exists(l => l.Stock.Limit < model.Pieces))
            return null;
        if (new LeastCover(table.Sets, [.. layouts.Select(l => (l.Stock.Price, l.Set))], budget).Choose() is not { } chosen)
            return null;
        if (chosen.Sum(l => layouts[l].Stock.Price) >= best.Price)
            return new(best, true);
        return Unpack(Enumerable.Range(0, layouts.Count).Select(l => chosen.Count(c => c == l))) is { } better
            ? new(better, true)
            : null;
    }

    private ExactAnswer LowerByModel(Packing best, SearchClock clock)
    {
        var (cover, times, _) = Model(mayLeave: false);
        var prices = layouts.Select(l => l.Stock.Price / model.PriceStep).ToArray();
        var total = LinearExpr.WeightedSum(times, prices);
        cover.Add(total <= (best.Price / model.PriceStep) - 1);
        cover.Minimize(total);
        return Solve(cover, times, clock, best);
    }

    /// <summary>Places as much area as there can be.</summary>
    public ExactAnswer PlaceMost(Packing best, SearchClock clock)
    {
        var (cover, times, left) = Model(mayLeave: true);
        var areas = table.Sets.Types.Select(t => model.Types[t].Area).ToArray();
        var total = LinearExpr.WeightedSum(left, areas);
        cover.Add(total <= best.LeftArea - 1);
        cover.Minimize(total);
        return Solve(cover, times, clock, best);
    }

    // Sets the stock holds that it does not hold with any one piece more.
    private IEnumerable<int> Largest(StockType stock) =>
        table.Known.Where(set => Fits(set, stock) && !Larger(set).Any(more => Fits(more, stock)));

    private bool Fits(int set, StockType stock) => table[set] is { } shape && shape.FitsIn(stock.W, stock.H);

    private IEnumerable<int> Larger(int set) =>
        Enumerable
            .Range(0, table.Sets.Steps.Length)
            .Where(place => table.Sets.Has(set, place) < table.Sets.Most[place])
            .Select(place => set + table.Sets.Steps[place]);

    private (CpModel Cover, IntVar[] Times, IntVar[] Left) Model(bool mayLeave)
    {
        var cover = new CpModel();
        var times = layouts.Select((l, i) => cover.NewIntVar(0, l.Stock.Limit, $"layout {i}")).ToArray();
        var left = table.Sets.Most.Select((most, i) => cover.NewIntVar(0, mayLeave ? most : 0, $"left {i}")).ToArray();
        for (var place = 0; place < left.Length; place++)
        {
            var counts = layouts.Select(l => (long)table.Sets.Has(l.Set, place));
            cover.Add(LinearExpr.WeightedSum(times, counts) + left[place] >= table.Sets.Most[place]);
        }
        foreach (var stock in model.Stocks.Where(s => s.Limit < model.Pieces))
            cover.Add(LinearExpr.Sum(times.Where((_, i) => layouts[i].Stock.Index == stock.Index)) <= stock.Limit);
        return (cover, times, left);
    }

    // What is asked for is better than the packing there is; nothing better is a proof for it.
    private ExactAnswer Solve(CpModel cover, IntVar[] times, SearchClock clock, Packing best)
    {
        var seconds = clock.SecondsLeft(2 * MostSeconds) + 0.01;
        using var solver = new CpSolver { StringParameters = CpParameters.Repeatable(MostSeconds, seconds) };
        var status = solver.Solve(cover);
        if (status == CpSolverStatus.Infeasible)
            return new(best, true);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            return new(best, false);
        return Unpack(times.Select(v => (int)solver.Value(v))) is { } better
            ? new(better, status == CpSolverStatus.Optimal)
            : new(best, false);
    }

    // Null when a layout is too deep for a tree, or breaks a limit of saw or car.
    private Packing? Unpack(IEnumerable<int> times)
    {
        var draft = new PackingDraft(model);
        var writer = new ShapeLayout(model, table);
        foreach (var ((stock, set), count) in layouts.Zip(times).Where(l => l.Second > 0))
        {
            if (writer.Write(set, stock) is not { } tree || model.Rule?.Allows(tree) == false)
                return null;
            for (var n = 0; n < count; n++)
                draft.OpenAs(tree);
        }
        draft.Keep();
        return draft.Now;
    }
}
