using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Tests.Designs;

/// <summary>Every built-in design goes the whole way: idea, parts, a store's usual sizes, a plan of the real planner, a
/// packet.</summary>
public sealed class IdeaToPacketTests
{
    private const int Seconds = 1;

    private static CancellationToken Cancel => TestShop.Cancel;

    public static TheoryData<string> BuiltIns() =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "designs"), "*.json")
                .Select(file => Path.GetFileNameWithoutExtension(file))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(BuiltIns))]
    public async Task A_built_in_design_becomes_a_packet(string key)
    {
        await using var idea = await Ideas.BeginAsync(key, services => services.AddSingleton<ICutPlanner, ShopCutPlanner>());
        await idea.MakeAsync(mayLetter: true);
        var rows = await idea.RowsAsync();
        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.True(row.Faults.IsEmpty, string.Join("; ", row.Faults)));
        var store = await StoreAsync(idea.Shop, [.. rows.Select(row => row.Texts.Material).Distinct()]);

        var order = new PlanOrder([idea.Project], null, [store.Id], UseRack: true, UseBin: true, Seconds, []);
        var plan = await PlanAsync(idea.Shop, order);
        Assert.Empty(plan.Plan.Unplaced);
        Assert.Equal(
            plan.Request.Parts.Sum(part => part.Quantity),
            plan.Plan.Layouts.Sum(layout => layout.Copies * layout.Pieces.Length)
        );

        var packet = await idea.Shop.Plans.PacketAsync(plan.Summary.Id, PaperSize.Letter, cancel: Cancel);
        Assert.True(packet is [0x25, 0x50, 0x44, 0x46, ..], "the packet is no PDF");
    }

    // Lengths and sizes that a home store has; where the shop's list knows none for a material, these are.
    private static async Task<StoreView> StoreAsync(TestShop shop, IReadOnlyList<string> materials)
    {
        var known = (await shop.Materials.ListAsync(cancel: Cancel)).ToDictionary(one => one.Name);
        var prices = materials.SelectMany(name =>
            known[name].Form == StockForm.Board
                ? new[] { "6 ft", "8 ft", "10 ft", "12 ft" }.Select(length => Some.Price(length, "9.00", name))
                : [Some.Price("96", "60.00", name, "48")]
        );
        return await Some.StoreAsync(shop, [.. prices]);
    }

    private static async Task<PlanView> PlanAsync(TestShop shop, PlanOrder order)
    {
        var started = await shop.Plans.StartAsync(order, CommandId.New(), Cancel);
        Assert.True(started.Ok, string.Join("; ", started.Faults));
        while (shop.Plans.FindJob(started.Value.Id) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(10, Cancel);
        var end = shop.Plans.FindJob(started.Value.Id)!;
        Assert.True(end.State == PlanJobState.Done, string.Join("; ", end.Faults));
        return (await shop.Plans.GetAsync(end.PlanId!.Value, Cancel))!;
    }
}
