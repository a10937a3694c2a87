using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Tests.Boards;

/// <summary>What every solution must obey, told without the solver's code.</summary>
internal static class Rules
{
    public static List<string> Broken(BoardProblem problem, BoardSolution solution)
    {
        var broken = new List<string>();
        foreach (var pattern in solution.Patterns)
        {
            var used = pattern.Counts.Select((count, item) => count * problem.Items[item].Size).Sum();
            if (pattern.Times < 1 || used < 1 || used > problem.Stocks[pattern.Stock].Capacity || pattern.Counts.Min() < 0)
                broken.Add($"pattern of {used} on stock {pattern.Stock}");
        }

        for (var item = 0; item < problem.Items.Length; item++)
        {
            var placed = solution.Patterns.Sum(pattern => pattern.Times * pattern.Counts[item]);
            if (solution.Unmet[item] < 0 || placed + solution.Unmet[item] != problem.Items[item].Demand)
                broken.Add($"item {item}: {placed} placed, {solution.Unmet[item]} unmet");
        }

        for (var stock = 0; stock < problem.Stocks.Length; stock++)
            if (Used(solution, stock) > (problem.Stocks[stock].Available ?? int.MaxValue))
                broken.Add($"stock {stock} overdrawn");
        if (solution.Cost != solution.Patterns.Sum(pattern => pattern.Times * problem.Stocks[pattern.Stock].Cost))
            broken.Add("cost");
        if (solution.Bound > solution.Cost || (solution.Proven && solution.Bound != solution.Cost))
            broken.Add("bound");
        if (solution.Complete != solution.Unmet.All(unmet => unmet == 0))
            broken.Add("completeness");
        return broken;
    }

    public static int Used(BoardSolution solution, int stock) =>
        solution.Patterns.Where(pattern => pattern.Stock == stock).Sum(pattern => pattern.Times);
}
