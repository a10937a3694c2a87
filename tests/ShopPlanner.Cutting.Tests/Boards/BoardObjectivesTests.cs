using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Tests.Boards;

public class BoardObjectivesTests
{
    private static BoardStock Board(long capacity, long cost) => new(capacity, cost, null, false, 100);

    [Fact]
    public void One_long_leftover_is_kept_rather_than_two_short_ones()
    {
        // Two boards are needed whatever is done; the pieces of 300 fit both on one.
        var solution = Some.Solve(Some.Problem([Board(1000, 10)], (400, 2), (300, 2), (200, 1)));
        Assert.Equal(20, solution.Cost);
        Assert.Equal([400], Leftovers(solution, [400, 300, 200], 1000));
    }

    [Fact]
    public void The_shorter_offcut_serves_the_small_part()
    {
        var solution = Some.Solve(Some.Problem([Board(2000, 10), Some.Offcut(1500, 100), Some.Offcut(420, 100)], (300, 1)));
        Assert.Equal(0, solution.Cost);
        Assert.Equal(1, Rules.Used(solution, 2));
    }

    [Fact]
    public void The_bin_is_used_even_where_a_board_has_room()
    {
        var solution = Some.Solve(Some.Problem([Board(2000, 10), Some.Offcut(500, 100)], (1000, 1), (480, 1)));
        Assert.Equal(10, solution.Cost);
        Assert.Equal(1, Rules.Used(solution, 1));
    }

    [Fact]
    public void Fewer_settings_at_equal_cost()
    {
        var solution = Some.Solve(Some.Problem([Some.Stock(100, 10)], (50, 4), (30, 4), (20, 4)));
        Assert.Equal(40, solution.Cost);
        Assert.Single(solution.Patterns);
    }

    [Fact]
    public void Merit_never_costs_money()
    {
        var random = new Random(77);
        for (var n = 0; n < 60; n++)
        {
            var plain = Some.Random(random, 5, 3, true);
            var shop = plain with
            {
                Stocks = [.. plain.Stocks.Select(s => s with { FromBin = s.Available > 0, KeepAtLeast = 4 })],
            };
            var (cheap, merited) = (Some.Solve(plain), Some.Solve(shop));
            Assert.Equal(cheap.Cost, merited.Cost);
            Assert.True(BoardObjectives.Of(shop, merited) >= BoardObjectives.Of(shop, cheap), $"problem {n}");
        }
    }

    [Fact]
    public void A_long_leftover_is_worth_more_than_its_halves()
    {
        var problem = Some.Problem([Board(1000, 10)], (200, 2));
        var together = new BoardSolution([new(0, 1, [2]), new(0, 1, [0])], [0], 20, 0, true, false);
        var apart = new BoardSolution([new(0, 2, [1])], [0], 20, 0, true, false);
        Assert.True(BoardObjectives.Of(problem, together).Leftovers > BoardObjectives.Of(problem, apart).Leftovers);
    }

    private static IEnumerable<long> Leftovers(BoardSolution solution, long[] sizes, long capacity) =>
        solution
            .Patterns.SelectMany(p => Enumerable.Repeat(capacity - p.Counts.Select((c, i) => c * sizes[i]).Sum(), p.Times))
            .Where(left => left > 0);
}
