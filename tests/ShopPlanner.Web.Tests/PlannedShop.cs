using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Web.Tests;

/// <summary>The program with a project of two legs, a store that sells the board, and a plan that was really planned.</summary>
internal sealed class PlannedShop(ShopServer server, ProjectView project, StoreView store) : IAsyncDisposable
{
    private const string Pine = "pine-1x3";

    public ShopServer Server => server;

    public ProjectView Project => project;

    public StoreView Store => store;

    private static CancellationToken Cancel => ShopServer.Cancel;

    /// <summary>Two legs of 30 in from one board of 96 in: about 35 in are left over.</summary>
    public static async Task<PlannedShop> OpenAsync(int legs = 2)
    {
        var server = await ShopServer.OpenAsync();
        var project = (
            await server.Get<IProjectService>().CreateAsync("Boot-room bench", LengthUnit.Inch, CommandId.New(), Cancel)
        ).Value!;
        var leg = new PartTexts(Guid.CreateVersion7(), "A", "Leg", Pine, "30", "", $"{legs}", false, "");
        Assert.True((await server.Get<IPartService>().SaveAsync(project.Id, [new PartEdit(leg, null)], Cancel)).Ok);
        return new PlannedShop(server, project, await SellAsync(server));
    }

    public PlanOrder Order(Guid? replaces = null) =>
        new([project.Id], null, [store.Id], UseRack: true, UseBin: true, Seconds: 1, replaces is { } old ? [old] : []);

    public async Task<Guid> PlanAsync(PlanOrder? order = null)
    {
        var plans = server.Get<IPlanService>();
        var started = await plans.StartAsync(order ?? Order(), CommandId.New(), Cancel);
        Assert.True(started.Ok, string.Join("; ", started.Faults));
        var job = await EndAsync(plans, started.Value.Id);
        Assert.True(
            job.State == PlanJobState.Done,
            $"the plan stands at {job.State} after {job.Elapsed}: {string.Join("; ", job.Faults)}"
        );
        return job.PlanId!.Value;
    }

    // A run of one second that takes a minute is a fault of its own, not a reason to wait for ever.
    private static async Task<PlanJobView> EndAsync(IPlanService plans, Guid id)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
        patience.CancelAfter(TimeSpan.FromMinutes(1));
        while (plans.FindJob(id) is { State: PlanJobState.Waiting or PlanJobState.Running } && !patience.IsCancellationRequested)
            await Task.Delay(10, Cancel);
        return plans.FindJob(id)!;
    }

    /// <summary>The plan's first board as it stands at the bench.</summary>
    public async Task<BenchStock> BoardAsync(Guid plan) => (await server.Get<IBenchService>().GetAsync(plan, Cancel))!.Stocks[0];

    /// <summary>Adds a project of one leg of 20 in.</summary>
    public async Task<ProjectView> AddAsync(string name)
    {
        var added = (await server.Get<IProjectService>().CreateAsync(name, LengthUnit.Inch, CommandId.New(), Cancel)).Value!;
        var leg = new PartTexts(Guid.CreateVersion7(), "A", "Leg", Pine, "20", "", "1", false, "");
        Assert.True((await server.Get<IPartService>().SaveAsync(added.Id, [new PartEdit(leg, null)], Cancel)).Ok);
        return added;
    }

    /// <summary>Sets whether the first cut of the plan's first board is made.</summary>
    public async Task TickAsync(Guid plan, bool made = true)
    {
        var cut = (await BoardAsync(plan)).Cuts[0].Cut.N;
        var outcome = await server.Get<IBenchService>().SetCutAsync(plan, 0, 1, cut, made, "test", CommandId.New(), Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
    }

    /// <summary>Finishes the plan's first board.</summary>
    public async Task FinishAsync(Guid plan, bool allCutsMade = true)
    {
        var finished = new FinishedStock(0, 1, allCutsMade, []);
        var outcome = await server.Get<IBenchService>().FinishAsync(plan, finished, "test", CommandId.New(), Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
    }

    public Task<IReadOnlyList<StockPiece>> StockAsync() => server.Get<IStockService>().ListAsync(Cancel);

    public ValueTask DisposeAsync() => server.DisposeAsync();

    private static async Task<StoreView> SellAsync(ShopServer server)
    {
        var stores = server.Get<IStoreService>();
        var store = (await stores.CreateAsync("Corner lumber", LengthUnit.Inch, CommandId.New(), Cancel)).Value!;
        return (
            await stores.SavePriceAsync(
                store.Id,
                new PriceEdit(null, Pine, "96", "", "6.48", true, null),
                CommandId.New(),
                Cancel
            )
        ).Value!;
    }
}
