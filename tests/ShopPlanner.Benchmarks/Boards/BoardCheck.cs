using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Benchmarks;

/// <summary>The rules of a solution, checked without the solver's code.</summary>
public static class BoardCheck
{
    public static IReadOnlyList<string> Faults(BoardProblem problem, BoardSolution solution) =>
        [.. PatternFaults(problem, solution), .. DemandFaults(problem, solution), .. StockFaults(problem, solution)];

    private static IEnumerable<string> PatternFaults(BoardProblem problem, BoardSolution solution) =>
        from pattern in solution.Patterns
        let used = pattern.Counts.Select((count, item) => count * problem.Items[item].Size).Sum()
        where pattern.Times < 1 || pattern.Counts.Any(count => count < 0) || used > problem.Stocks[pattern.Stock].Capacity
        select $"a pattern of stock {pattern.Stock} takes {used} of {problem.Stocks[pattern.Stock].Capacity}";

    private static IEnumerable<string> DemandFaults(BoardProblem problem, BoardSolution solution) =>
        from item in Enumerable.Range(0, problem.Items.Length)
        let placed = solution.Patterns.Sum(pattern => (long)pattern.Times * pattern.Counts[item])
        where solution.Unmet[item] < 0 || placed + solution.Unmet[item] != problem.Items[item].Demand
        select $"item {item}: {placed} placed and {solution.Unmet[item]} unmet of {problem.Items[item].Demand}";

    private static IEnumerable<string> StockFaults(BoardProblem problem, BoardSolution solution)
    {
        for (var stock = 0; stock < problem.Stocks.Length; stock++)
        {
            var used = solution.Patterns.Where(p => p.Stock == stock).Sum(p => (long)p.Times);
            if (used > (problem.Stocks[stock].Available ?? long.MaxValue))
                yield return $"stock {stock}: {used} used of {problem.Stocks[stock].Available}";
        }

        var cost = solution.Patterns.Sum(p => p.Times * problem.Stocks[p.Stock].Cost);
        if (cost != solution.Cost)
            yield return $"the cost is {cost}, not {solution.Cost}";
        if (solution.Complete != solution.Unmet.All(unmet => unmet == 0))
            yield return "completeness is told wrongly";
    }
}
