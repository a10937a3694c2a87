using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Sheets.Model;

/// <summary>
/// A problem made ready for the search: equal items joined into types, sizes divided by their greatest common measure per
/// axis (stocks rounded down: sums of item sides are multiples of it), items that cannot lie otherwise marked as such.
/// </summary>
internal sealed class SheetModel
{
    /// <summary>Largest side after division: keeps every area of a whole job inside 64 bits.</summary>
    public const long MaxSide = 1 << 26;

    private SheetModel(SheetProblem problem, AxisScale scale)
    {
        Problem = problem;
        Scale = scale;
        var pieces = checked((int)problem.Items.Sum(i => (long)i.Demand));
        Stocks = StockType.All(problem, scale, pieces);
        Types = ItemTypes.From(problem, scale, Stocks);
        CostStep = Math.Max(1, Stocks.Aggregate(0L, (g, s) => Measures.Gcd(g, s.Cost)));
        PriceStep = Math.Max(1, Stocks.Aggregate(0L, (g, s) => Measures.Gcd(g, s.Price)));
        Rule = problem.Rule is { } rule ? new TreeRule(this, rule) : null;
        Sum();
    }

    private SheetModel(SheetModel model, IReadOnlyList<int> demand)
    {
        (Problem, Scale, Stocks, CostStep, PriceStep) = (
            model.Problem,
            model.Scale,
            model.Stocks,
            model.CostStep,
            model.PriceStep
        );
        Rule = model.Rule;
        Types = [.. model.Types.Select((t, i) => t with { Demand = demand[i] })];
        Sum();
    }

    public SheetProblem Problem { get; }

    public AxisScale Scale { get; }

    public StockType[] Stocks { get; }

    public ItemType[] Types { get; }

    /// <summary>Which trees can be cut; null for all of them.</summary>
    public TreeRule? Rule { get; }

    public int Pieces { get; private set; }

    public long TotalArea { get; private set; }

    /// <summary>The shortest side of any item: a free strip narrower than this is waste.</summary>
    public int MinSide { get; private set; }

    /// <summary>Greatest common measure of all costs: every total is a multiple of it.</summary>
    public long CostStep { get; }

    /// <summary>Greatest common measure of all prices of the search.</summary>
    public long PriceStep { get; }

    public static SheetModel From(SheetProblem problem)
    {
        ProblemRules.Check(problem);
        return new SheetModel(problem, AxisScale.Of(problem));
    }

    /// <summary>The same with other demands: types keep their places, zero is allowed.</summary>
    public SheetModel WithDemand(IReadOnlyList<int> demand) => new(this, demand);

    private void Sum()
    {
        Pieces = Types.Sum(t => t.Demand);
        TotalArea = Types.Aggregate(0L, (sum, t) => checked(sum + (t.Area * t.Demand)));
        var wanted = Types.Where(t => t.Demand > 0).ToList();
        MinSide = wanted.Count == 0 ? 1 : wanted.Min(t => t.Short);
    }
}

/// <summary>What the sides along each axis are divided by.</summary>
internal readonly record struct AxisScale(long X, long Y)
{
    public static AxisScale Of(SheetProblem problem)
    {
        var x = 0L;
        var y = 0L;
        foreach (var item in problem.Items)
        {
            x = Measures.Gcd(x, item.Dx);
            y = Measures.Gcd(y, item.Dy);
        }
        var both = Measures.Gcd(x, y);
        return problem.Items.Any(i => i.CanTurn)
            ? new(Math.Max(1, both), Math.Max(1, both))
            : new(Math.Max(1, x), Math.Max(1, y));
    }
}

internal static class Measures
{
    public static long Gcd(long a, long b)
    {
        while (b != 0)
            (a, b) = (b, a % b);
        return a;
    }

    public static long DivideUp(long a, long b) => (a + b - 1) / b;
}
