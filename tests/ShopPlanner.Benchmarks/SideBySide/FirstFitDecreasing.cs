using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// The rule of thumb: pieces from longest to shortest, each from the first board that has room for it, else from a new one; in
/// the end every board is exchanged for the cheapest that holds the same pieces. With several stocks each is tried in turn as the
/// one to take first, and the cheapest outcome stands.
/// </summary>
public static class FirstFitDecreasing
{
    /// <summary>Knows no bound: zero, never proven. Pieces are unmet where the stock taken so far ran out.</summary>
    public static BoardSolution Solve(BoardProblem problem) =>
        Enumerable
            .Range(0, problem.Stocks.Length)
            .Select(first => Fill(problem, first))
            .MinBy(solution => (solution.Unmet.Sum(count => (long)count), solution.Cost))!;

    private static BoardSolution Fill(BoardProblem problem, int first)
    {
        var order = Enumerable
            .Range(0, problem.Stocks.Length)
            .OrderBy(stock => stock == first ? 0 : 1)
            .ThenBy(stock => (double)problem.Stocks[stock].Cost / problem.Stocks[stock].Capacity)
            .ToList();
        var left = problem.Stocks.Select(stock => stock.Available ?? int.MaxValue).ToArray();
        var bins = new List<Bin>();
        foreach (var item in Enumerable.Range(0, problem.Items.Length).OrderByDescending(item => problem.Items[item].Size))
        {
            for (var n = 0; n < problem.Items[item].Demand; n++)
                (Open(problem, bins, item) ?? New(problem, bins, item, order, left))?.Add(item, problem.Items[item].Size);
        }

        foreach (var bin in bins.OrderByDescending(bin => bin.Load))
            Exchange(problem, bin, left);
        return BinSolution.Of(problem, bins, 0, false);
    }

    private static Bin? Open(BoardProblem problem, List<Bin> bins, int item) =>
        bins.Find(bin => bin.Load + problem.Items[item].Size <= problem.Stocks[bin.Stock].Capacity);

    private static Bin? New(BoardProblem problem, List<Bin> bins, int item, List<int> order, int[] left)
    {
        var at = order.FindIndex(stock => left[stock] > 0 && problem.Stocks[stock].Capacity >= problem.Items[item].Size);
        if (at < 0)
            return null;
        left[order[at]]--;
        var bin = new Bin(order[at], problem.Items.Length);
        bins.Add(bin);
        return bin;
    }

    private static void Exchange(BoardProblem problem, Bin bin, int[] left)
    {
        left[bin.Stock]++;
        bin.Stock = Enumerable
            .Range(0, left.Length)
            .Where(stock => left[stock] > 0 && problem.Stocks[stock].Capacity >= bin.Load)
            .MinBy(stock => problem.Stocks[stock].Cost);
        left[bin.Stock]--;
    }
}
