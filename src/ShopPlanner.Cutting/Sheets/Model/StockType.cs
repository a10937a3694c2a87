using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Sheets.Model;

/// <summary>One size of stock in the search's measure.</summary>
/// <param name="Index">Of the problem's stock.</param>
/// <param name="W">Along x.</param>
/// <param name="H">Along y.</param>
/// <param name="Cost">As in the problem.</param>
/// <param name="Price">What the search lowers: the cost first, then the area of new stock.</param>
/// <param name="Limit">How many can be cut.</param>
/// <param name="FromBin">True for an offcut.</param>
/// <param name="Area">Of one.</param>
internal sealed record StockType(int Index, int W, int H, long Cost, long Price, int Limit, bool FromBin, long Area)
{
    // Area of new stock is told apart in this many steps of the largest stock's.
    private const long AreaSteps = 1000;

    public static StockType[] All(SheetProblem problem, AxisScale scale, int pieces)
    {
        var plain = problem.Stocks.Select((s, i) => Plain(s, i, scale, pieces)).ToArray();
        if (plain.Length == 0)
            return plain;
        var step = Math.Max(1, plain.Aggregate(0L, (g, s) => Measures.Gcd(g, s.Cost)));
        var largest = plain.Max(s => s.Area);
        var weight = Weight(plain.Max(s => s.Cost) / step, pieces);
        return [.. plain.Select(s => s with { Price = (s.Cost / step * weight) + (weight > 1 ? NewArea(s, largest) : 0) })];
    }

    public bool Holds(int w, int h) => w <= W && h <= H;

    public bool Holds(ItemType type) => Holds(type.W, type.H) || (type.CanTurn && Holds(type.H, type.W));

    private static StockType Plain(SheetStock stock, int index, AxisScale scale, int pieces)
    {
        var w = (int)(stock.Dx / scale.X);
        var h = (int)(stock.Dy / scale.Y);
        return new(index, w, h, stock.Cost, 0, Math.Min(stock.Available ?? pieces, pieces), stock.FromBin, (long)w * h);
    }

    // More than all new area together can come to; 1, which leaves the area out, when figures would overflow.
    private static long Weight(long mostCost, int pieces)
    {
        var weight = (AreaSteps * pieces) + 1;
        return (Int128)mostCost * weight * pieces < long.MaxValue / 4 ? weight : 1;
    }

    private static long NewArea(StockType stock, long largest) =>
        stock.FromBin ? 0 : (long)(((Int128)stock.Area * AreaSteps + largest - 1) / largest);
}
