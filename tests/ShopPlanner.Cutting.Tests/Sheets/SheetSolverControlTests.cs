using System.Diagnostics;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;
using ShopPlanner.Cutting.Trees;
using static ShopPlanner.Cutting.Tests.Sheets.Problems;

namespace ShopPlanner.Cutting.Tests.Sheets;

public class SheetSolverControlTests
{
    // Sizes from a small recurrence; four pieces or so to a sheet, so no bound proves the first plan.
    private static readonly SheetProblem Hard = new(
        [Sheet(100, 100)],
        [.. Enumerable.Range(1, 60).Select(i => new SheetItem(20 + (i * 37 % 61), 18 + (i * 53 % 59), i % 3 == 0, 1))]
    );

    [Fact]
    public void The_deadline_is_kept()
    {
        var clock = Stopwatch.StartNew();
        var solution = Solved(Hard, new SearchControl { Time = TimeSpan.FromMilliseconds(300) });
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(3), $"took {clock.Elapsed}");
    }

    [Fact]
    public void A_search_that_is_cancelled_returns_its_best()
    {
        using var cancel = new CancellationTokenSource();
        var control = new SearchControl { Cancel = cancel.Token, Progress = _ => cancel.Cancel() };
        var solution = Solved(Hard, control);
        Assert.True(solution.Complete);
    }

    [Fact]
    public void Progress_tells_falling_costs_and_the_bound()
    {
        var told = new List<SearchProgress>();
        var control = Rounds(4000) with { Progress = told.Add };
        var solution = Solved(Hard, control);
        Assert.NotEmpty(told);
        Assert.Equal(told.Select(p => p.Cost?.Count).OrderDescending(), told.Select(p => p.Cost?.Count));
        Assert.Equal((solution.Cost, solution.Bound), (told[^1].Cost?.Count, told[^1].Bound.Count));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void The_same_seed_and_rounds_give_the_same_plan(int workers)
    {
        var control = Rounds(6000, workers) with { Seed = 7 };
        var one = Solved(Hard, control);
        var other = Solved(Hard, control);
        Assert.Equal(Text(one), Text(other));
    }

    [Fact]
    public void Limited_stock_places_what_it_can_and_tells_the_rest()
    {
        var problem = new SheetProblem([Sheet(10, 10, 5, 2)], [new(10, 6, false, 2), new(10, 4, false, 2), new(10, 5, false, 1)]);
        var solution = Solved(problem, Rounds(2000));
        Assert.False(solution.Complete);
        Assert.Equal([0, 0, 1], solution.Unmet);
        Assert.Equal((10L, 10L), (solution.Cost, solution.Bound));
    }

    [Fact]
    public void An_item_that_fits_no_stock_is_refused_by_name()
    {
        var problem = new SheetProblem([Sheet(10, 10)], [new(4, 4, false, 1), new(11, 2, true, 1)]);
        var refused = Assert.Throws<ArgumentException>(() => Solved(problem, Rounds(1)));
        Assert.Contains("Item 1", refused.Message, StringComparison.Ordinal);
    }

    private static string Text(SheetSolution solution) =>
        string.Join('\n', solution.Layouts.Select(l => $"{l.Stock} x{l.Times} {Text(l.Root)}"));

    private static string Text(LayoutNode node) =>
        $"({node.X} {node.Y} {node.Dx} {node.Dy} {node.Item} {node.Turned} {string.Concat(node.Children.Select(Text))})";
}
