using System.Collections.Concurrent;
using System.Diagnostics;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>When the planner stops, what it tells, and that chance can be repeated.</summary>
public sealed class SteeringTests
{
    // Eleven kinds of panel that do not fit neatly: nothing here is proven quickly.
    private static readonly CutRequest Hard = Some.Request(
        [Some.Board(), Some.Sheet()],
        [Some.Stock("b", "96", price: 6), Some.Stock("s", "96", "48", 60, material: "ply")],
        [
            Some.Part("L", "31 3/8", 7),
            .. Enumerable
                .Range(0, 11)
                .Select(i => Some.Part($"P{i}", $"{17 + (3 * i)}", 2 + (i % 3), $"{9 + (2 * (i % 7))}", Grain.Any, "ply")),
        ]
    );

    [Fact]
    public void A_proven_plan_is_not_searched_on()
    {
        var plan = Some.Planned(
            Some.Request([Some.Board()], [Some.Stock("s", "96", price: 6)], [Some.Part("A", "40", 4)]),
            new SearchControl { Time = TimeSpan.FromMinutes(5) }
        );
        Assert.Equal(PlanStatus.Proven, plan.Status);
        Assert.True(plan.Seconds < 60);
    }

    [Fact]
    public void The_requests_own_seconds_are_the_limit_where_no_other_is_given()
    {
        var watch = Stopwatch.StartNew();
        Some.Planned(Hard with { Limits = new(0.5) }, new SearchControl());
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(10), $"took {watch.Elapsed}");
    }

    [Fact]
    public void A_search_cancelled_before_it_begins_still_gives_a_whole_plan()
    {
        var plan = Some.Planned(Hard, new SearchControl { Time = TimeSpan.FromMinutes(5), Cancel = new(canceled: true) });
        Assert.Empty(plan.Unplaced);
        Assert.True(plan.Seconds < 60);
    }

    [Fact]
    public async Task A_search_cancelled_midway_gives_the_best_so_far()
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        stop.CancelAfter(TimeSpan.FromSeconds(1));
        var plan = await Task.Run(
            () => Some.Planned(Hard, new SearchControl { Time = TimeSpan.FromMinutes(5), Cancel = stop.Token }),
            TestContext.Current.CancellationToken
        );
        Assert.Empty(plan.Unplaced);
        Assert.True(plan.Seconds < 60);
    }

    [Fact]
    public void The_same_seed_and_rounds_give_the_same_plan()
    {
        var control = new SearchControl
        {
            Iterations = 3000,
            Seed = 7,
            Workers = 1,
        };
        var (one, other) = (Some.Planned(Hard, control), Some.Planned(Hard, control));
        Assert.Equal(Drawn(one), Drawn(other));
    }

    [Fact]
    public void Progress_tells_of_the_whole_plan_and_ends_with_its_cost()
    {
        var told = new ConcurrentQueue<SearchProgress>();
        var plan = Some.Planned(Hard, new SearchControl { Time = TimeSpan.FromSeconds(1), Progress = told.Enqueue });
        Assert.NotEmpty(told);
        Assert.All(told, progress => Assert.True(progress.Cost is null || progress.Bound <= progress.Cost));
        Assert.Equal((plan.Cost, plan.CostLowerBound), (told.Last().Cost!.Value, told.Last().Bound));
    }

    // Free offcuts cost nothing however badly they are cut, so a cost that meets its bound does not end the search for more room at
    // the first look, which takes some 12 ms for each material.
    [Fact]
    public void Free_offcuts_that_seem_too_few_are_searched_beyond_the_first_look()
    {
        var request = Hard with { Stock = [Some.Stock("b", "96", price: 6), Some.Stock("s", "96", "48", 0, 1, true, "ply")] };
        var told = new ConcurrentQueue<SearchProgress>();
        var plan = Some.Planned(request, new SearchControl { Time = TimeSpan.FromSeconds(1), Progress = told.Enqueue });
        Assert.Equal(PlanStatus.Incomplete, plan.Status);
        Assert.InRange(plan.Seconds, 0.3, 30);
        Assert.NotEmpty(told);
        Assert.All(told, progress => Assert.Null(progress.Cost));
    }

    private static IEnumerable<string> Drawn(CutPlan plan) =>
        plan.Layouts.Select(layout =>
            $"{layout.Stock} {layout.Copies}: {string.Join(' ', layout.Pieces)} {string.Join(' ', layout.Cuts)}"
        );
}
