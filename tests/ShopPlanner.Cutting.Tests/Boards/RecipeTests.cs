using ShopPlanner.Cutting.Boards;

namespace ShopPlanner.Cutting.Tests.Boards;

/// <summary>Instances made by published recipes.</summary>
public class RecipeTests
{
    [Theory] // Falkenauer, Journal of Heuristics 2 (1996): triplets that fill a bin of 1000 exactly, so the optimum is n/3.
    [InlineData(60, 1)]
    [InlineData(120, 2)]
    [InlineData(249, 3)]
    public void Triplets_fill_every_bin(int pieces, int seed)
    {
        var solution = Some.Solve(Some.Bins(1000, Triplets(pieces, new Random(seed))));
        Assert.Equal(pieces / 3, solution.Cost);
        Assert.True(solution.Proven);
    }

    [Theory] // Scholl, Klein, Jürgens, Computers & Operations Research 24 (1997): uniform sizes; set 1 from [1, 100] for c = 100 …
    [InlineData(100, 1, 100, 100, 4)]
    [InlineData(150, 20, 100, 200, 5)]
    [InlineData(120, 30, 100, 200, 6)]
    public void Uniform_sizes_are_proven(int capacity, int from, int to, int pieces, int seed)
    {
        var random = new Random(seed);
        var sizes = Enumerable.Range(0, pieces).Select(_ => (long)random.Next(from, to + 1));
        Assert.True(Some.Solve(Some.Bins(capacity, Counted(sizes))).Proven);
    }

    [Fact]
    public void Ten_thousand_pieces_of_two_hundred_sizes_are_done_in_time()
    {
        var random = new Random(7);
        var items = Enumerable.Range(0, 200).Select(i => (200L + (i * 37) + random.Next(30), 50)).ToArray();
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var solution = Some.Solve(
            Some.Problem([Some.Stock(16_000, 900), Some.Stock(12_000, 700), Some.Stock(8_000, 500)], items),
            9
        );
        Assert.True(solution.Complete);
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 10);
        Assert.InRange(solution.Cost - solution.Bound, 0, solution.Cost / 1000);
    }

    [Fact]
    public void A_hundred_thousand_pieces_of_one_size_are_no_work()
    {
        var solution = Some.Solve(Some.Problem([Some.Stock(96, 648), Some.Stock(120, 800)], (7, 100_000)), 5);
        Assert.True(solution is { Complete: true, Proven: true });
    }

    [Fact]
    public void Lengths_without_a_common_measure_are_no_trouble()
    {
        // Mixed inches and millimetres in ticks of 3.125 µm: capacities near two million, greatest common measure 1.
        var random = new Random(9);
        var items = Enumerable.Range(0, 30).Select(_ => (100_000L + random.Next(600_000), 1 + random.Next(3))).ToArray();
        var solution = Some.Solve(Some.Problem([Some.Stock(1_950_721, 648), Some.Stock(1_560_577, 540)], items), 8);
        Assert.True(solution.Complete);
        Assert.InRange(solution.Bound, solution.Cost * 0.97, solution.Cost);
    }

    private static (long, int)[] Triplets(int pieces, Random random)
    {
        var sizes = new List<long>();
        while (sizes.Count < pieces)
        {
            var first = random.Next(380, 491);
            var second = random.Next(250, ((1000 - first) / 2) + 1);
            sizes.AddRange([first, second, 1000 - first - second]);
        }

        return Counted(sizes);
    }

    private static (long, int)[] Counted(IEnumerable<long> sizes) =>
        [.. sizes.GroupBy(size => size).Select(alike => (alike.Key, alike.Count()))];
}
