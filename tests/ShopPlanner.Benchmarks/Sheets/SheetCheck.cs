using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Benchmarks;

/// <summary>The rules of a solution, checked without the solver's code.</summary>
public static class SheetCheck
{
    public static IReadOnlyList<string> Faults(SheetProblem problem, SheetSolution solution) =>
        [
            .. solution.Layouts.SelectMany(layout => LayoutFaults(problem, layout)),
            .. DemandFaults(problem, solution),
            .. StockFaults(problem, solution),
        ];

    private static IEnumerable<string> LayoutFaults(SheetProblem problem, SheetLayout layout)
    {
        var stock = problem.Stocks[layout.Stock];
        var root = layout.Root;
        if ((root.X, root.Y, root.Dx, root.Dy) != (0, 0, stock.Dx, stock.Dy) || layout.Times < 1)
            yield return $"a layout of stock {layout.Stock} starts with {root.Dx} x {root.Dy}";
        foreach (var fault in NodeFaults(problem, root))
            yield return fault;
    }

    private static IEnumerable<string> NodeFaults(SheetProblem problem, LayoutNode node)
    {
        if (node.Dx <= 0 || node.Dy <= 0)
            return [$"an empty node {node}"];
        if (node.Item is { } item)
            return IsItem(problem.Items[item], node) ? [] : [$"item {item} lies on {node}"];
        return node.Children.Length == 0
            ? []
            : [.. ChildFaults(node), .. node.Children.SelectMany(child => NodeFaults(problem, child))];
    }

    private static bool IsItem(SheetItem item, LayoutNode node) =>
        node.Children.Length == 0
        && (node.Turned ? item.CanTurn && (item.Dy, item.Dx) == (node.Dx, node.Dy) : (item.Dx, item.Dy) == (node.Dx, node.Dy));

    private static IEnumerable<string> ChildFaults(LayoutNode node)
    {
        var (x, y) = (node.X, node.Y);
        foreach (var child in node.Children)
        {
            var across = node.AlongX ? child.Dy == node.Dy : child.Dx == node.Dx;
            if ((child.X, child.Y) != (x, y) || !across)
                yield return $"a child {child} does not follow on in {node}";
            (x, y) = node.AlongX ? (x + child.Dx, y) : (x, y + child.Dy);
        }

        if (node.Children.Length < 2 || (node.AlongX ? x != node.X + node.Dx : y != node.Y + node.Dy))
            yield return $"the children do not fill {node}";
    }

    private static IEnumerable<string> DemandFaults(SheetProblem problem, SheetSolution solution)
    {
        var placed = new long[problem.Items.Length];
        foreach (var layout in solution.Layouts)
            Count(layout.Root, layout.Times, placed);
        for (var i = 0; i < placed.Length; i++)
        {
            if (solution.Unmet[i] < 0 || placed[i] + solution.Unmet[i] != problem.Items[i].Demand)
                yield return $"item {i}: {placed[i]} placed and {solution.Unmet[i]} unmet of {problem.Items[i].Demand}";
        }
    }

    private static void Count(LayoutNode node, int times, long[] placed)
    {
        if (node.Item is { } item)
            placed[item] += times;
        foreach (var child in node.Children)
            Count(child, times, placed);
    }

    private static IEnumerable<string> StockFaults(SheetProblem problem, SheetSolution solution)
    {
        for (var stock = 0; stock < problem.Stocks.Length; stock++)
        {
            var used = solution.Layouts.Where(l => l.Stock == stock).Sum(l => (long)l.Times);
            if (used > (problem.Stocks[stock].Available ?? long.MaxValue))
                yield return $"stock {stock}: {used} used of {problem.Stocks[stock].Available}";
        }

        var cost = solution.Layouts.Sum(l => l.Times * problem.Stocks[l.Stock].Cost);
        if (cost != solution.Cost)
            yield return $"the cost is {cost}, not {solution.Cost}";
        if (solution.Complete != solution.Unmet.All(unmet => unmet == 0))
            yield return "completeness is told wrongly";
    }
}
