using CsCheck;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;
using static ShopPlanner.Cutting.Tests.Sheets.Problems;

namespace ShopPlanner.Cutting.Tests.Sheets;

public class SheetSolverPropertyTests
{
    private const int Samples = 60;
    private const long Enough = 2000;

    [Fact]
    public void Every_solution_keeps_the_rules() => Small.Sample(p => Solved(p, Rounds(500)), iter: 200, print: Text);

    [Fact]
    public void More_stock_never_costs_more_when_proven() =>
        Small.Sample(
            problem =>
            {
                var solution = Solved(problem, Rounds(Enough));
                var more = Solved(problem with { Stocks = problem.Stocks.Add(Sheet(20, 20, 4)) }, Rounds(Enough));
                Assert.True(more.Complete);
                if (solution.Complete)
                    Assert.True(more.Bound <= solution.Cost);
                if (solution.Complete && more.Proven)
                    Assert.True(more.Cost <= solution.Cost);
            },
            iter: Samples,
            print: Text
        );

    [Fact]
    public void Seven_times_the_size_changes_nothing() =>
        Small.Sample(
            problem =>
            {
                var one = Solved(problem, Rounds(Enough));
                var seven = Solved(Scaled(problem, 7), Rounds(Enough));
                Assert.Equal((one.Cost, one.Bound, one.Complete), (seven.Cost, seven.Bound, seven.Complete));
            },
            iter: Samples,
            print: Text
        );

    [Fact]
    public void The_order_of_the_items_does_not_matter_when_proven() =>
        Small.Sample(
            problem =>
            {
                var one = Solved(problem, Rounds(Enough));
                var other = Solved(problem with { Items = [.. problem.Items.Reverse()] }, Rounds(Enough));
                if (one.Complete && one.Proven && other.Proven)
                    Assert.Equal(one.Cost, other.Cost);
            },
            iter: Samples,
            print: Text
        );

    private static SheetProblem Scaled(SheetProblem problem, long factor) =>
        new(
            [.. problem.Stocks.Select(s => s with { Dx = s.Dx * factor, Dy = s.Dy * factor })],
            [.. problem.Items.Select(i => i with { Dx = i.Dx * factor, Dy = i.Dy * factor })]
        );
}
