using System.Text;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Backups;

/// <summary>The last room of the disk is for what is entered at the bench.</summary>
public sealed class LowDiskTests : IAsyncLifetime
{
    private readonly FakeDisk disk = new() { Free = 600_000_000 };
    private PlannedShop given = null!;

    private static CancellationToken Cancel => TestShop.Cancel;

    public async ValueTask InitializeAsync() =>
        given = await PlannedShop.OpenAsync(change: services => services.AddSingleton<FreeSpace>(disk));

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task Files_are_not_imported()
    {
        var (shop, project) = (given.Shop, given.Project.Id);
        var plan = await given.PlanAsync();
        var request = Encoding.UTF8.GetBytes((await shop.Plans.ExportAsync(plan.Summary.Id, plan: false, Cancel))!);
        var design = (await shop.Get<IDesignService>().GetAsync("table", Cancel))!.Document;
        var parts = Encoding.UTF8.GetBytes("Part,Material,Length\nLeg,pine-1x3,30\n");
        var pieces = Encoding.UTF8.GetBytes("material,length\npine-1x3,20\n");
        using var prices = new MemoryStream(Encoding.UTF8.GetBytes("material,length,price\npine-1x3,96,6.48\n"));
        var rows = shop.CountRows();
        disk.Free = 400_000_000;
        RefusesFor(await shop.Get<IPartExchange>().ImportCsvAsync(project, parts, CommandId.New(), Cancel));
        RefusesFor(await shop.Parts.ImportAsync(project, request, CommandId.New(), Cancel));
        RefusesFor(await shop.Get<IStockExchange>().ImportCsvAsync(pieces, Some.Device, CommandId.New(), Cancel));
        RefusesFor(await shop.Stores.ImportCsvAsync(given.Store.Id, prices, TableChoices.Guess, CommandId.New(), Cancel));
        RefusesFor(
            await shop.Get<IDesignService>()
                .ImportAsync(Encoding.UTF8.GetBytes(DesignJson.Write(design)), CommandId.New(), Cancel)
        );
        Assert.Equal(rows, shop.CountRows());
        disk.Free = 600_000_000;
        Assert.True((await shop.Get<IPartExchange>().ImportCsvAsync(project, parts, CommandId.New(), Cancel)).Ok);
    }

    [Fact]
    public async Task No_planning_run_begins_and_one_that_began_is_found_again()
    {
        var (shop, command) = (given.Shop, CommandId.New());
        var before = (await shop.Plans.StartAsync(given.Order(), command, Cancel)).Value!;
        await given.EndOfAsync(before.Id);
        disk.Free = 400_000_000;
        RefusesFor(await shop.Plans.StartAsync(given.Order(useBin: false), CommandId.New(), Cancel));
        Assert.Equal(before.Id, (await shop.Plans.StartAsync(given.Order(), command, Cancel)).Value!.Id);
        Assert.Equal(1, shop.CountRows()["PlanJobs"]);
    }

    [Fact]
    public async Task Cuts_are_marked_and_parts_are_typed()
    {
        var (shop, plan) = (given.Shop, (await given.PlanAsync()).Summary.Id);
        disk.Free = 1_000_000;
        var cut = await shop.Bench.NoteCutAsync(plan, 1, 1, true, Some.Device, CommandId.New(), Cancel);
        Assert.True(cut.Ok, string.Join("; ", cut.Faults));
        Assert.True((await shop.Parts.SaveAsync(given.Project.Id, [Some.New(Some.Part())], Cancel)).Ok);
    }

    private static void RefusesFor<T>(Outcome<T> outcome)
        where T : class
    {
        var fault = Assert.Single(outcome.Faults);
        Assert.Equal(("storage", "the disk"), (fault.Field, fault.Value));
        Assert.Contains("at least 512 MB are needed", fault.Message, StringComparison.Ordinal);
    }
}
