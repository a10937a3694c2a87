using CsCheck;
using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Tests.Boards;

/// <summary>What must hold for any problem.</summary>
public class PropertyTests
{
    private static readonly Gen<BoardProblem> Problems = Gen.Int[0, 1_000_000]
        .Select(seed => Some.Random(new Random(seed), 8, 6, true));

    [Fact]
    public void Every_plan_obeys_the_rules_and_its_bound() =>
        Problems.Sample(problem => Some.Solve(problem).Proven, iter: 60, threads: 1);

    [Fact]
    public void More_stock_never_costs_more() =>
        Problems.Sample(
            problem =>
            {
                var more = problem with { Stocks = problem.Stocks.Add(Some.Stock(17, 4, 2)) };
                return Some.Solve(more).Cost <= Some.Solve(problem).Cost;
            },
            iter: 40,
            threads: 1
        );

    [Fact]
    public void Seven_times_the_size_changes_nothing() =>
        Problems.Sample(problem => Some.Solve(Scaled(problem, 7)).Cost == Some.Solve(problem).Cost, iter: 40, threads: 1);

    [Fact]
    public void The_order_of_items_and_stocks_changes_no_cost() =>
        Problems.Sample(
            problem =>
            {
                var turned = new BoardProblem([.. problem.Stocks.Reverse()], [.. problem.Items.Reverse()]);
                return Some.Solve(turned).Cost == Some.Solve(problem).Cost;
            },
            iter: 40,
            threads: 1
        );

    private static BoardProblem Scaled(BoardProblem problem, long by) =>
        new(
            [.. problem.Stocks.Select(stock => stock with { Capacity = stock.Capacity * by })],
            [.. problem.Items.Select(item => item with { Size = item.Size * by })]
        );
}
