using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// A shop of many years in a temporary folder: the demo's three projects and copies of them, plans that were really planned and
/// copies of those, some ready, some begun, most cut, and a bin full of offcuts.
/// </summary>
internal sealed class LargeShop : IAsyncDisposable
{
    private const int Projects = 40;
    private const int Plans = 200;
    private const int Pieces = 1_500;
    private const string Device = "benchmark";

    private readonly string folder = Directory.CreateTempSubdirectory("shop-planner-benchmark-").FullName;
    private readonly ServiceProvider provider;

    private LargeShop()
    {
        var services = new ServiceCollection();
        services.AddShopPlanner(new ServicesOptions(folder, Demo: true));
        services.AddSingleton(Counter);
        services.AddSingleton<IInterceptor>(Counter);
        provider = services.BuildServiceProvider();
    }

    public CommandCounter Counter { get; } = new();

    /// <summary>The plan over three projects, begun at the bench.</summary>
    public Guid Plan { get; private set; }

    /// <summary>A project with an idea, parts and plans.</summary>
    public Guid Project { get; private set; }

    public T Get<T>()
        where T : notnull => provider.GetRequiredService<T>();

    public static async Task<LargeShop> MakeAsync()
    {
        var shop = new LargeShop();
        await shop.Get<ShopDatabase>().OpenAsync();
        foreach (var worker in shop.provider.GetServices<IHostedService>())
            await worker.StartAsync(CancellationToken.None);
        await shop.FillAsync();
        return shop;
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var worker in provider.GetServices<IHostedService>())
            await worker.StopAsync(CancellationToken.None);
        await provider.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    private async Task FillAsync()
    {
        var sheets = await CopyProjectsAsync();
        await AddStockAsync();
        var planned = new List<PlanView>();
        foreach (var sheet in sheets.Take(3))
            planned.Add(await PlanAsync(sheet.ProjectId));
        Plan = (await PlanAsync([.. sheets.Take(3).Select(sheet => sheet.ProjectId)])).Summary.Id;
        using (var copies = new CopiedPlans(Path.Combine(folder, "shop.db")))
            copies.Add(planned, sheets, Plans - planned.Count - 1);
        Project = sheets[^1].ProjectId;
        var design = (await Get<IDesignService>().ListAsync())[0];
        Sure(await Get<IIdeaService>().StartAsync(Project, design.Key, CommandId.New()));
    }

    private async Task<List<PartSheet>> CopyProjectsAsync()
    {
        var (projects, parts) = (Get<IProjectService>(), Get<IPartService>());
        var sheets = new List<PartSheet>();
        foreach (var demo in (await projects.ListAsync()).Reverse())
            sheets.Add((await parts.GetAsync(demo.Id))!);
        for (var i = sheets.Count; i < Projects; i++)
        {
            var like = sheets[i % 3];
            var made = Sure(await projects.CreateAsync($"Piece {i}", like.Unit, CommandId.New()));
            var rows = like.Rows.Select(row => new PartEdit(row.Texts with { Id = Guid.CreateVersion7() }, null)).ToList();
            sheets.Add(Sure(await parts.SaveAsync(made.Id, rows)));
        }

        return sheets;
    }

    private async Task AddStockAsync()
    {
        var (stock, random) = (Get<IStockService>(), new Random(1));
        for (var left = Pieces - (await stock.ListAsync()).Count; left > 0; left -= 10)
        {
            var material = left % 3 == 0 ? "pine-1x3" : "pine-1x4";
            var piece = new StockAddition(StockPlace.Bin, material, $"{random.Next(8, 30)}", "", $"{Math.Min(left, 10)}", "");
            Sure(await stock.AddAsync(piece, LengthUnit.Inch, Device, CommandId.New()));
        }
    }

    private async Task<PlanView> PlanAsync(params Guid[] projects)
    {
        var stores = await Get<IStoreService>().ListAsync();
        var order = new PlanOrder([.. projects], null, [.. stores.Select(store => store.Id)], true, true, 1, []);
        var plans = Get<IPlanService>();
        var job = Sure(await plans.StartAsync(order, CommandId.New()));
        while (job.State is PlanJobState.Waiting or PlanJobState.Running)
        {
            await Task.Delay(20);
            job = plans.FindJob(job.Id)!;
        }

        return job.PlanId is { } id
            ? (await plans.GetAsync(id))!
            : throw new InvalidOperationException(string.Join("; ", job.Faults));
    }

    private static T Sure<T>(Outcome<T> outcome)
        where T : class => outcome.Value ?? throw new InvalidOperationException(string.Join("; ", outcome.Faults));
}
