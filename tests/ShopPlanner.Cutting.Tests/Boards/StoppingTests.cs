using System.Diagnostics;
using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Tests.Boards;

public class StoppingTests
{
    private static readonly BoardProblem Hard = Hardest();

    [Fact]
    public void The_deadline_is_kept_and_the_best_so_far_returned()
    {
        var clock = Stopwatch.StartNew();
        Assert.True(Some.Solve(Hard, 1).Complete);
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 3);
    }

    [Fact]
    public void Cancelling_returns_the_best_so_far()
    {
        using var cancel = new CancellationTokenSource(TimeSpan.FromSeconds(0.3));
        var clock = Stopwatch.StartNew();
        var solution = Some.Solve(Hard, new SearchControl { Time = TimeSpan.FromSeconds(30), Cancel = cancel.Token });
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 5);
    }

    [Fact]
    public void Cancelled_before_it_begins_it_still_has_a_plan()
    {
        var solution = Some.Solve(Hard, new SearchControl { Cancel = new CancellationToken(true) });
        Assert.True(solution.Complete);
    }

    [Fact]
    public void Progress_only_ever_gets_better()
    {
        var told = new List<SearchProgress>();
        Some.Solve(Hard, new SearchControl { Time = TimeSpan.FromSeconds(1), Progress = told.Add });
        Assert.NotEmpty(told);
        Assert.Equal(told.Select(p => p.Cost!.Value.Count).OrderDescending(), told.Select(p => p.Cost!.Value.Count));
        Assert.NotEmpty(told);
        Assert.All(told, p => Assert.True(p.Bound <= p.Cost));
        Assert.InRange(told[0].Elapsed.TotalSeconds, 0, 0.5);
    }

    [Fact]
    public void The_same_seed_and_iterations_give_the_same_plan()
    {
        var control = new SearchControl
        {
            Iterations = 4,
            Seed = 5,
            Cancel = TestContext.Current.CancellationToken,
        };
        var (one, other) = (Some.Solve(Small(), control), Some.Solve(Small(), control));
        Assert.Equal(one.Patterns.Select(Told), other.Patterns.Select(Told));
    }

    [Fact]
    public void Without_a_clock_steps_limit_the_integer_programs()
    {
        // Relaxation 259/132, optimum 3 (Fieldhouse, see the textbook tests): only an integer program shows it.
        var control = new SearchControl { Iterations = 4, Cancel = TestContext.Current.CancellationToken };
        var solution = Some.Solve(Some.Bins(132, (44, 2), (33, 3), (12, 6)), control);
        Assert.True(solution is { Cost: 3, Proven: true });
    }

    private static string Told(BoardPattern pattern) => $"{pattern.Stock} {pattern.Times} {string.Join(',', pattern.Counts)}";

    private static BoardProblem Small()
    {
        var random = new Random(3);
        return Some.Bins(1000, [.. Enumerable.Range(0, 40).Select(_ => ((long)random.Next(150, 500), random.Next(1, 4)))]);
    }

    // Sizes close to a third and few alike: too much for a second.
    private static BoardProblem Hardest()
    {
        var random = new Random(2);
        return Some.Bins(100_000, [.. Enumerable.Range(0, 900).Select(_ => ((long)random.Next(20_000, 47_000), 1))]);
    }
}
