using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;
using ShopPlanner.Cutting.Trees;
using static ShopPlanner.Cutting.Tests.Sheets.Problems;

namespace ShopPlanner.Cutting.Tests.Sheets;

public class SheetSolverLeftoverTests
{
    private static readonly SearchControl Control = Rounds(6000);

    [Fact]
    public void Free_space_is_left_as_one_large_rectangle()
    {
        var stock = new SheetStock(100, 60, 1, null, false) { Keep = [new(20, 20)] };
        var problem = new SheetProblem([stock], [new(30, 20, true, 4), new(25, 10, true, 4)]);
        var solution = Solved(problem, Control);
        var largest = Remnants(solution).Max(r => r.Dx * r.Dy);
        Assert.True(largest >= 2400, $"largest leftover {largest} of {6000 - 2400 - 1000} free");
    }

    [Fact]
    public void Offcuts_are_used_before_new_stock_of_the_same_price()
    {
        var problem = new SheetProblem([new(100, 50, 10, null, false), new(100, 50, 10, 1, true)], [new(100, 25, false, 3)]);
        var solution = Solved(problem, Control);
        Assert.Equal([0, 1], solution.Layouts.Select(l => l.Stock).Order());
    }

    [Fact]
    public void At_equal_cost_less_new_stock_is_opened()
    {
        var problem = new SheetProblem([Sheet(100, 100, 10), Sheet(60, 60, 10)], [new(50, 30, false, 1), new(20, 20, false, 1)]);
        var solution = Solved(problem, Control);
        Assert.Equal(1, Assert.Single(solution.Layouts).Stock);
    }

    [Fact]
    public void A_small_part_comes_from_the_small_offcut()
    {
        var problem = new SheetProblem(
            [new(100, 100, 0, 1, true) { Keep = [new(20, 20)] }, new(30, 30, 0, 1, true) { Keep = [new(20, 20)] }],
            [new(25, 25, false, 1)]
        );
        var solution = Solved(problem, Control);
        Assert.Equal(1, Assert.Single(solution.Layouts).Stock);
    }

    [Fact]
    public void Pieces_that_fit_no_stock_still_there_are_told_and_the_rest_is_cut_cheaply()
    {
        var problem = new SheetProblem(
            [Sheet(100, 100, 50, 0), Sheet(60, 60, 10), Sheet(60, 60, 12)],
            [new(90, 90, false, 2), new(30, 30, false, 4)]
        );
        var solution = Solved(problem, Control);
        Assert.Equal([2, 0], solution.Unmet);
        Assert.Equal((10L, true, false), (solution.Cost, solution.Proven, solution.Complete));
    }

    // A 1x3 of 8 ft (3/4 x 2 1/2 in), trimmed to 93.475 in, in thousandths of an inch with a kerf of 1/8 in added: full-width
    // parts and two strips of half the width side by side. Two boards hold 93.6 in each: 46.8 + 46.8, and 31.2 x 3 beside.
    [Theory]
    [InlineData(2625, 1312)]
    [InlineData(2625, 1200)]
    public void A_narrow_board_is_ripped_where_parts_are_half_as_wide(long full, long half)
    {
        var problem = new SheetProblem([Sheet(93_600, 2_625)], [new(46_800, full, false, 2), new(31_200, half, false, 6)]);
        var solution = Solved(problem, Control);
        Assert.Equal((2L, true), (solution.Cost, solution.Proven));
    }

    [Fact]
    public void Sheets_are_cut_alike_where_they_can_be()
    {
        var problem = new SheetProblem(
            [Sheet(100, 60)],
            [new(60, 30, false, 20), new(40, 30, false, 20), new(100, 40, false, 1)]
        );
        var solution = Solved(problem, Control);
        Assert.Equal(11, solution.Cost);
        Assert.Equal(2, solution.Layouts.Length);
    }

    [Fact]
    public void Short_stock_is_cut_alike_too()
    {
        var problem = new SheetProblem(
            [Sheet(100, 60, 7, 4), Sheet(200, 60, 9, 0)],
            [new(60, 30, false, 8), new(40, 30, false, 8), new(150, 40, false, 1)]
        );
        var solution = Solved(problem, Control);
        Assert.Equal([0, 0, 1], solution.Unmet);
        Assert.Equal(4, Assert.Single(solution.Layouts).Times);
    }

    private static IEnumerable<LayoutNode> Remnants(SheetSolution solution) => solution.Layouts.SelectMany(l => Remnants(l.Root));

    private static IEnumerable<LayoutNode> Remnants(LayoutNode node) =>
        node.Item is null && node.Children.IsEmpty ? [node] : node.Children.SelectMany(Remnants);
}
