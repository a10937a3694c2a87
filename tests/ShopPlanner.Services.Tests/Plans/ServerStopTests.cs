using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Tests.Plans;

public sealed class ServerStopTests : IDisposable
{
    private readonly string folder = TestShop.NewFolder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_run_cut_short_by_the_programs_end_is_stopped_and_known_as_such_afterwards()
    {
        Guid job;
        await using (var given = await PlannedShop.OpenAsync(folder))
        {
            given.Planner.Before = (_, control) => control.Cancel.WaitHandle.WaitOne(TimeSpan.FromSeconds(30));
            job = (await given.Shop.Plans.StartAsync(given.Order(), CommandId.New(), TestShop.Cancel)).Value!.Id;
            while (given.Planner.Runs == 0)
                await Task.Delay(5, TestShop.Cancel);
        }

        await using var again = await TestShop.OpenAsync(folder: folder);
        Assert.Equal(PlanJobState.Stopped, again.Plans.FindJob(job)!.State);
        Assert.Empty(await again.Plans.ListAsync(cancel: TestShop.Cancel));
    }

    // A killed program cannot note anything: the next start does.
    [Fact]
    public async Task A_run_of_a_killed_program_is_stopped_at_the_next_start()
    {
        Guid job;
        await using (var given = await PlannedShop.OpenAsync(folder))
            job = (await given.RunAsync(given.Order())).Id;
        await using (var shop = await TestShop.OpenAsync(folder: folder))
            shop.Ask($"UPDATE PlanJobs SET State = {(int)PlanJobState.Running}");
        await using var again = await TestShop.OpenAsync(folder: folder);
        Assert.Equal(PlanJobState.Stopped, again.Plans.FindJob(job)!.State);
    }
}
