using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;

namespace ShopPlanner.Services.Tests.Plans;

public sealed class ServerStopTests : IDisposable
{
    private readonly string folder = TestShop.NewFolder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_run_cut_short_by_the_programs_end_stores_the_best_so_far()
    {
        Guid job;
        await using (var given = await PlannedShop.OpenAsync(folder))
            job = await BeginAsync(given, UntilStopped);

        await using var again = await TestShop.OpenAsync(folder: folder);
        var end = again.Plans.FindJob(job)!;
        Assert.Equal((PlanJobState.Done, 0), (end.State, end.Faults.Length));
        var plan = await again.Plans.GetAsync(end.PlanId!.Value, TestShop.Cancel);
        Assert.NotEmpty(plan!.Plan.Layouts);
    }

    [Fact]
    public async Task A_run_that_has_no_plan_when_the_program_ends_is_stopped_and_says_why()
    {
        Guid job;
        await using (var given = await PlannedShop.OpenAsync(folder))
        {
            given.Planner.Empty = true;
            job = await BeginAsync(given, UntilStopped);
        }

        await using var again = await TestShop.OpenAsync(folder: folder);
        AssertStopped(again.Plans.FindJob(job)!);
        Assert.Empty(await again.Plans.ListAsync(cancel: TestShop.Cancel));
    }

    [Fact]
    public async Task Runs_that_wait_when_the_program_ends_never_begin_and_say_why()
    {
        Guid waiting;
        FirstFitPlanner planner;
        await using (var given = await PlannedShop.OpenAsync(folder))
        {
            planner = given.Planner;
            await BeginAsync(given, UntilStopped);
            waiting = (await given.Shop.Plans.StartAsync(given.Order(), CommandId.New(), TestShop.Cancel)).Value!.Id;
        }

        Assert.Equal(1, planner.Runs);
        await using var again = await TestShop.OpenAsync(folder: folder);
        AssertStopped(again.Plans.FindJob(waiting)!);
    }

    // Between search and storing another plan takes the offcut. What was found is worth a second, short look without it.
    [Theory, InlineData(false), InlineData(true)]
    public async Task A_piece_lost_while_a_run_is_stopped_does_not_lose_the_plan(bool byPerson)
    {
        Guid job;
        await using (var given = await PlannedShop.OpenAsync(folder))
        {
            var offcut = await given.OffcutAsync("41 3/8");
            var begun = new TaskCompletionSource<Guid>(TaskCreationOptions.RunContinuationsAsynchronously);
            job = await BeginAsync(
                given,
                control =>
                {
                    if (byPerson && given.Planner.Runs == 1)
                        given.Shop.Plans.StopJob(begun.Task.GetAwaiter().GetResult());
                    UntilStopped(control);
                    if (given.Planner.Runs == 1)
                        given.Shop.Stock.DiscardAsync(offcut, 1, "split", Some.Device, default).GetAwaiter().GetResult();
                },
                begun
            );
            if (byPerson)
                await given.EndOfAsync(job);
        }

        await using var again = await TestShop.OpenAsync(folder: folder);
        Assert.Equal(PlanJobState.Done, again.Plans.FindJob(job)!.State);
    }

    // A killed program cannot note anything: the next start does.
    [Theory, InlineData(PlanJobState.Running), InlineData(PlanJobState.Waiting)]
    public async Task A_run_of_a_killed_program_is_stopped_at_the_next_start(PlanJobState left)
    {
        Guid job;
        await using (var given = await PlannedShop.OpenAsync(folder))
            job = (await given.RunAsync(given.Order())).Id;
        await using (var shop = await TestShop.OpenAsync(folder: folder))
            shop.Ask($"UPDATE PlanJobs SET State = {(int)left}, PlanId = NULL");
        await using var again = await TestShop.OpenAsync(folder: folder);
        AssertStopped(again.Plans.FindJob(job)!);
    }

    private static void UntilStopped(SearchControl control) => control.Cancel.WaitHandle.WaitOne(TimeSpan.FromSeconds(30));

    private static async Task<Guid> BeginAsync(
        PlannedShop given,
        Action<SearchControl> search,
        TaskCompletionSource<Guid>? begun = null
    )
    {
        given.Planner.Before = (_, control) => search(control);
        var job = (await given.Shop.Plans.StartAsync(given.Order(), CommandId.New(), TestShop.Cancel)).Value!.Id;
        begun?.SetResult(job);
        while (given.Planner.Runs == 0)
            await Task.Delay(5, TestShop.Cancel);
        return job;
    }

    private static void AssertStopped(PlanJobView job)
    {
        Assert.Equal((PlanJobState.Stopped, (Guid?)null), (job.State, job.PlanId));
        Assert.Contains("Shop Planner was stopped", Assert.Single(job.Faults).Message);
    }
}
