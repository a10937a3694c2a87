using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Benchmarks;

/// <summary>One board while it is filled.</summary>
internal sealed class Bin(int stock, int items)
{
    /// <summary>Which kind of stock it is cut from.</summary>
    public int Stock { get; set; } = stock;

    /// <summary>Sizes of all pieces in it.</summary>
    public long Load { get; private set; }

    /// <summary>Pieces of each item.</summary>
    public int[] Counts { get; } = new int[items];

    public void Add(int item, long size)
    {
        Counts[item]++;
        Load += size;
    }
}

/// <summary>Boards as a solution that can be checked and compared.</summary>
internal static class BinSolution
{
    /// <summary>Empty boards are left out; pieces that lie in none are unmet.</summary>
    public static BoardSolution Of(BoardProblem problem, IEnumerable<Bin> bins, long bound, bool proven)
    {
        var used = bins.Where(bin => bin.Load > 0).ToList();
        var unmet = problem.Items.Select((item, i) => item.Demand - used.Sum(bin => bin.Counts[i])).ToList();
        return new(
            [.. used.Select(bin => new BoardPattern(bin.Stock, 1, [.. bin.Counts]))],
            [.. unmet],
            used.Sum(bin => problem.Stocks[bin.Stock].Cost),
            bound,
            unmet.TrueForAll(count => count == 0),
            proven
        );
    }
}
