
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
        Stocks = [.. problem.Stocks.Select((s, i) => StockType.From(s, i, scale, TotalDemand(problem)))];
        Types = ItemTypes.From(problem, scale, Stocks);
        Pieces = Types.Sum(t => t.Demand);
        TotalArea = Types.Aggregate(0L, (sum, t) => checked(sum + t.Area * t.Demand));
        MinSide = Types.Length == 0 ? 1 : Types.Min(t => Math.Min(t.W, t.H));
        CostStep = Math.Max(1, Stocks.Aggregate(0L, (g, s) => Measures.Gcd(g, s.Cost)));
    }

    public SheetProblem Problem { get; }

    public AxisScale Scale { get; }

    public StockType[] Stocks { get; }

    public ItemType[] Types { get; }

    public int Pieces { get; }

    public long TotalArea { get; }

    /// <summary>The shortest side of any item: a free strip narrower than this is waste.</summary>
    public int MinSide { get; }

    /// <summary>Greatest common measure of all costs: every total is a multiple of it.</summary>
    public long CostStep { get; }

    public static SheetModel From(SheetProblem problem)
    {
        ProblemRules.Check(problem);
        return new SheetModel(problem, AxisScale.Of(problem));
    }

    private static int TotalDemand(SheetProblem problem) => checked((int)problem.Items.Sum(i => (long)i.Demand));
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
        return problem.Items.Any(i => i.CanTurn) ? new(Math.Max(1, both), Math.Max(1, both)) : new(Math.Max(1, x), Math.Max(1, y));
    }
}

/// <summary>One size of stock in the search's measure.</summary>
internal sealed record StockType(int Index, int W, int H, long Cost, int Limit, bool FromBin, long Area)
{
    public static StockType From(SheetStock stock, int index, AxisScale scale, int pieces)
    {
        var w = (int)(stock.Dx / scale.X);
        var h = (int)(stock.Dy / scale.Y);
        return new(index, w, h, stock.Cost, Math.Min(stock.Available ?? pieces, pieces), stock.FromBin, (long)w * h);
    }

    public bool Holds(int w, int h) => w <= W && h <= H;
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
