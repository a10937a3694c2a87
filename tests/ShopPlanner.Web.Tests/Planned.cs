using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Web.Tests;

/// <summary>Plans for tests, made by the real planner from the demo's smallest project.</summary>
internal static class Planned
{
    private static readonly SemaphoreSlim Turn = new(1, 1);

    /// <summary>The id of a plan that is ready to cut; made when there is none.</summary>
    public static async Task<Guid> OneAsync(RunningWeb web)
    {
        await Turn.WaitAsync(TestContext.Current.CancellationToken);
        try
        {
            var plans = await web.Service<IPlanService>().ListAsync(cancel: TestContext.Current.CancellationToken);
            return plans.FirstOrDefault(plan => plan.State == PlanState.Ready)?.Id ?? await MakeAsync(web);
        }
        finally
        {
            Turn.Release();
        }
    }

    /// <summary>A new plan.</summary>
    public static async Task<Guid> MakeAsync(RunningWeb web)
    {
        var cancel = TestContext.Current.CancellationToken;
        var plans = web.Service<IPlanService>();
        var project = (await web.Service<IProjectService>().ListAsync(cancel: cancel)).MinBy(project => project.Pieces)!;
        var stores = await web.Service<IStoreService>().ListAsync(cancel);
        var job = await plans.StartAsync(
            new PlanOrder([project.Id], null, [.. stores.Select(store => store.Id)], true, true, 2, []),
            CommandId.New(),
            cancel
        );
        Assert.True(job.Ok, string.Join('\n', job.Faults));
        while (plans.FindJob(job.Value.Id) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(50, cancel);
        var done = plans.FindJob(job.Value.Id)!;
        Assert.True(done.PlanId is not null, string.Join('\n', done.Faults));
        return done.PlanId.Value;
    }
}
