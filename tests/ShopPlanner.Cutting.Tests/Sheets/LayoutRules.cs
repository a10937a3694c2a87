using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Tests.Sheets;

/// <summary>What every solution keeps, checked from the contract alone.</summary>
internal static class LayoutRules
{
    public static void Check(SheetProblem problem, SheetSolution solution)
    {
        var placed = new int[problem.Items.Length];
        var cut = new int[problem.Stocks.Length];
        foreach (var layout in solution.Layouts)
        {
            var stock = problem.Stocks[layout.Stock];
            Assert.True(layout.Times > 0);
            Assert.Equal((0, 0, stock.Dx, stock.Dy), (layout.Root.X, layout.Root.Y, layout.Root.Dx, layout.Root.Dy));
            cut[layout.Stock] += layout.Times;
            CheckNode(problem, layout.Root, layout.Times, placed);
        }
        CheckTotals(problem, solution, placed, cut);
    }

    private static void CheckTotals(SheetProblem problem, SheetSolution solution, int[] placed, int[] cut)
    {
        for (var s = 0; s < cut.Length; s++)
            Assert.True(cut[s] <= (problem.Stocks[s].Available ?? int.MaxValue), $"stock {s} is cut {cut[s]} times");
        for (var i = 0; i < placed.Length; i++)
        {
            Assert.True(solution.Unmet[i] >= 0);
            Assert.Equal(problem.Items[i].Demand, placed[i] + solution.Unmet[i]);
        }
        Assert.Equal(cut.Select((n, s) => n * problem.Stocks[s].Cost).Sum(), solution.Cost);
        Assert.True(solution.Bound <= solution.Cost, $"bound {solution.Bound} above cost {solution.Cost}");
        Assert.Equal(solution.Unmet.All(u => u == 0), solution.Complete);
        Assert.Equal(solution.Bound == solution.Cost, solution.Proven);
    }

    private static void CheckNode(SheetProblem problem, LayoutNode node, int times, int[] placed)
    {
        Assert.True(node.Dx > 0 && node.Dy > 0);
        if (node.Item is { } index)
        {
            var item = problem.Items[index];
            Assert.True(node.Children.IsEmpty);
            Assert.True(item.CanTurn || !node.Turned);
            Assert.Equal(node.Turned ? (item.Dy, item.Dx) : (item.Dx, item.Dy), (node.Dx, node.Dy));
            placed[index] += times;
            return;
        }
        if (!node.Children.IsEmpty)
            CheckRow(node);
        foreach (var child in node.Children)
            CheckNode(problem, child, times, placed);
    }

    private static void CheckRow(LayoutNode node)
    {
        Assert.True(node.Children.Length > 1);
        var (x, y) = (node.X, node.Y);
        foreach (var child in node.Children)
        {
            Assert.Equal((x, y), (child.X, child.Y));
            Assert.Equal(node.AlongX ? node.Dy : node.Dx, node.AlongX ? child.Dy : child.Dx);
            (x, y) = node.AlongX ? (x + child.Dx, y) : (x, y + child.Dy);
        }
        Assert.Equal(node.AlongX ? node.X + node.Dx : node.Y + node.Dy, node.AlongX ? x : y);
    }
}
