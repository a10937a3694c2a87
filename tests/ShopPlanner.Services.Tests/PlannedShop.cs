using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Tests;

/// <summary>A shop with a project, a store and what is wanted to plan it.</summary>
internal sealed class PlannedShop(TestShop shop, ProjectView project, StoreView store) : IAsyncDisposable
{
    public TestShop Shop => shop;

    public ProjectView Project => project;

    public StoreView Store => store;

    public FirstFitPlanner Planner => (FirstFitPlanner)shop.Get<ICutPlanner>();

    public static CancellationToken Cancel => TestShop.Cancel;

    /// <summary>Three legs of 30 in; boards of 96 in at 6.48.</summary>
    public static async Task<PlannedShop> OpenAsync(string? folder = null, Action<IServiceCollection>? change = null)
    {
        var shop = await TestShop.OpenAsync(folder: folder, change: change);
        var project = await Some.ProjectAsync(shop);
        await shop.Parts.SaveAsync(project.Id, [Some.New(Some.Part("30", "A", "3"))], Cancel);
        return new PlannedShop(shop, project, await Some.StoreAsync(shop, Some.Price()));
    }

    public PlanOrder Order(bool useBin = true, Guid? replaces = null) =>
        new([project.Id], null, [store.Id], UseRack: true, useBin, Seconds: 1, replaces is { } old ? [old] : []);

    /// <summary>Adds an offcut and gives its id.</summary>
    public async Task<Guid> OffcutAsync(string length)
    {
        var added = await shop.Stock.AddAsync(Some.Offcut(length), Some.Inch, Some.Device, CommandId.New(), Cancel);
        return added.Value!.Single().Id;
    }

    public async Task<PlanJobView> RunAsync(PlanOrder order)
    {
        var started = await shop.Plans.StartAsync(order, CommandId.New(), Cancel);
        Assert.True(started.Ok, string.Join("; ", started.Faults));
        return await EndOfAsync(started.Value.Id);
    }

    public async Task<PlanJobView> EndOfAsync(Guid job)
    {
        while (shop.Plans.FindJob(job) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(5, Cancel);
        return shop.Plans.FindJob(job)!;
    }

    public async Task<PlanView> PlanAsync(PlanOrder? order = null)
    {
        var job = await RunAsync(order ?? Order());
        Assert.True(job.State == PlanJobState.Done, string.Join("; ", job.Faults));
        return (await shop.Plans.GetAsync(job.PlanId!.Value, Cancel))!;
    }

    public async Task<PlanView> ReadAsync(Guid plan) => (await shop.Plans.GetAsync(plan, Cancel))!;

    public ValueTask DisposeAsync() => shop.DisposeAsync();
}
