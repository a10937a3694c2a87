using ShopPlanner.Cutting.Boards;

namespace ShopPlanner.Cutting.Tests.Boards;

public class ExactnessTests
{
    [Fact]
    public void Tiny_problems_are_solved_to_what_trying_everything_finds()
    {
        var random = new Random(20);
        for (var n = 0; n < 300; n++)
        {
            var problem = Some.Random(random, 4, 3, n % 2 == 0);
            var solution = Some.Solve(problem);
            var best = Exhaustive.Best(problem);
            Assert.Equal(best, (solution.Unmet.Sum(), solution.Cost));
            Assert.True(solution.Proven, $"problem {n} is not proven");
        }
    }

    [Fact]
    public void Nothing_but_too_short_stock_leaves_everything_unmet_and_says_so()
    {
        var solution = Some.Solve(Some.Problem([Some.Stock(10, 5)], (11, 2)));
        Assert.Empty(solution.Patterns);
        Assert.Equal(2, solution.Unmet[0]);
        Assert.True(solution is { Complete: false, Proven: true, Cost: 0 });
    }

    [Fact]
    public void Limited_stock_takes_as_many_pieces_as_it_can()
    {
        // Two boards of 10 take two pieces of 6, or one of 6 and two of 5, or four of 5.
        var solution = Some.Solve(Some.Problem([Some.Stock(10, 5, 2)], (6, 2), (5, 3)));
        Assert.Equal(2, solution.Unmet.Sum());
        Assert.True(solution is { Complete: false, Proven: true });
    }

    [Fact]
    public void Nothing_wanted_costs_nothing()
    {
        var solution = Some.Solve(Some.Problem([Some.Stock(10, 5)]));
        Assert.True(solution is { Complete: true, Proven: true, Cost: 0, Bound: 0 });
    }

    [Fact]
    public void No_stock_at_all_is_an_answer_too()
    {
        var solution = Some.Solve(Some.Problem([], (5, 1)));
        Assert.True(solution is { Complete: false, Proven: true, Cost: 0 });
    }

    [Fact]
    public void Free_offcuts_are_used_before_boards_are_bought()
    {
        var solution = Some.Solve(
            Some.Problem([Some.Stock(96, 648), Some.Offcut(40), Some.Offcut(25)], (38, 1), (24, 1), (90, 1))
        );
        Assert.Equal(648, solution.Cost);
        Assert.Equal([1, 1, 1], Enumerable.Range(0, 3).Select(stock => Rules.Used(solution, stock)));
    }
}
