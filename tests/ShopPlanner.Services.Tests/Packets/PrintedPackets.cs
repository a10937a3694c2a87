using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Stores;
using ShopPlanner.Services.Tests.Designs;

namespace ShopPlanner.Services.Tests.Packets;

/// <summary>Packets of real plans: the demo's three pieces of furniture that stand, together, and one bookcase.</summary>
internal static class PrintedPackets
{
    private const int Seconds = 1;

    private static readonly string[] Printed = ["Plant stand", "Pantry cupboard", "Mudroom bench"];

    /// <summary>Where the packets are written to be looked at; nowhere while the variable is not set.</summary>
    private const string Folder = "SHOP_PLANNER_PACKETS";

    private static CancellationToken Cancel => TestShop.Cancel;

    /// <summary>The demo's pieces of furniture that stand, in one plan.</summary>
    public static async Task<byte[]> OfDemoAsync(PaperSize paper)
    {
        await using var shop = await TestShop.OpenAsync(
            demo: true,
            change: services => services.AddSingleton<ICutPlanner, ShopCutPlanner>()
        );
        var projects = (await shop.Projects.ListAsync(cancel: Cancel))
            .Where(project => Printed.Contains(project.Name))
            .Select(project => project.Id);
        var stores = (await shop.Stores.ListAsync(Cancel)).Select(store => store.Id);
        var order = new PlanOrder([.. projects], null, [.. stores], UseRack: true, UseBin: true, Seconds, []);
        return await PrintAsync(shop, await PlanAsync(shop, order), paper, "demo");
    }

    /// <summary>One piece, made from a built-in design.</summary>
    public static async Task<byte[]> OfDesignAsync(string key, PaperSize paper)
    {
        await using var idea = await Ideas.BeginAsync(key, services => services.AddSingleton<ICutPlanner, ShopCutPlanner>());
        await idea.MakeAsync(mayLetter: true);
        var materials = (await idea.RowsAsync()).Select(row => row.Texts.Material).Distinct().ToList();
        var store = await StoreAsync(idea.Shop, materials);
        var order = new PlanOrder([idea.Project], null, [store.Id], UseRack: true, UseBin: true, Seconds, []);
        return await PrintAsync(idea.Shop, await PlanAsync(idea.Shop, order), paper, key);
    }

    private static async Task<byte[]> PrintAsync(TestShop shop, Guid plan, PaperSize paper, string name)
    {
        var file = (await shop.Plans.PacketAsync(plan, paper, cancel: Cancel))!;
        if (Environment.GetEnvironmentVariable(Folder) is { Length: > 0 } folder)
            await File.WriteAllBytesAsync(Path.Combine(folder, $"{name}-{paper}.pdf"), file, Cancel);
        return file;
    }

    private static async Task<StoreView> StoreAsync(TestShop shop, List<string> materials)
    {
        var known = (await shop.Materials.ListAsync(cancel: Cancel)).ToDictionary(one => one.Name);
        var prices = materials.SelectMany(name =>
            known[name].Form == StockForm.Board
                ? new[] { "6 ft", "8 ft", "10 ft", "12 ft" }.Select(length => Some.Price(length, "9.00", name))
                : [Some.Price("96", "60.00", name, "48")]
        );
        return await Some.StoreAsync(shop, [.. prices]);
    }

    private static async Task<Guid> PlanAsync(TestShop shop, PlanOrder order)
    {
        var started = await shop.Plans.StartAsync(order, CommandId.New(), Cancel);
        while (shop.Plans.FindJob(started.Value!.Id) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(10, Cancel);
        var end = shop.Plans.FindJob(started.Value.Id)!;
        Assert.True(end.State == PlanJobState.Done, string.Join("; ", end.Faults));
        return end.PlanId!.Value;
    }
}
