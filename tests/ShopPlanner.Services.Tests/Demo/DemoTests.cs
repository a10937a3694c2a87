using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Pictures;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;

namespace ShopPlanner.Services.Tests.Demo;

/// <summary>The demo is furniture that can be built: its parts add up to the outside sizes that its notes give.</summary>
public sealed class DemoTests : IAsyncLifetime
{
    private TestShop shop = null!;
    private Dictionary<string, MaterialView> materials = null!;

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync(demo: true);
        materials = (await shop.Materials.ListAsync(TestShop.Cancel)).ToDictionary(material => material.Id);
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task It_fills_an_empty_shop_without_a_fault()
    {
        var projects = await shop.Projects.ListAsync(cancel: TestShop.Cancel);
        Assert.Equal(["Plant stand", "Pantry cupboard", "Boot-room bench"], projects.Select(project => project.Name));
        Assert.All(projects, project => Assert.Equal(0, project.FaultyRows));
        Assert.Equal(["BB", "PC", "PS"], projects.Select(project => project.Code).Order());
        Assert.Equal(2, (await shop.Stores.ListAsync(TestShop.Cancel)).Count);
        var stock = await shop.Stock.ListAsync(TestShop.Cancel);
        Assert.Equal(4, stock.Count(piece => piece.Place == StockPlace.Rack));
        Assert.Equal(15, stock.Count(piece => piece.Place == StockPlace.Bin));
    }

    [Fact]
    public async Task It_leaves_a_shop_in_use_alone()
    {
        var folder = TestShop.NewFolder();
        await using (var used = await TestShop.OpenAsync(folder: folder))
            await Some.ProjectAsync(used, "My own");
        await using (var again = await TestShop.OpenAsync(demo: true, folder: folder))
            Assert.Equal(["My own"], (await again.Projects.ListAsync(cancel: TestShop.Cancel)).Select(project => project.Name));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task The_bench_adds_up()
    {
        var part = await PartsAsync("Boot-room bench");
        var (leg, slat, bearer) = (materials["whitewood-2x4"], materials["pine-1x4"], materials["pine-1x3"]);
        Assert.Equal(In("18"), part["A"].Length + slat.Thickness);
        Assert.Equal(In("14 3/4"), (slat.Width!.Value * part["B"].Quantity) + (In("1/4") * (part["B"].Quantity - 1)));
        Assert.Equal(In("42"), part["B"].Length);
        var (frameLength, frameDepth) = (part["C"].Length + (leg.Width!.Value * 2), part["D"].Length + (leg.Thickness * 2));
        Assert.Equal((In("40 1/2"), In("13 1/4")), (frameLength, frameDepth));
        Assert.Equal((In("42") - frameLength, In("14 3/4") - frameDepth), (In("3/4") * 2, In("3/4") * 2));
        Assert.Equal((part["C"].Length, part["D"].Length), (part["E"].Length, part["F"].Length));
        Assert.Equal(frameLength, part["G"].Length);
        Assert.Equal(part["D"].Length, (bearer.Width!.Value * part["G"].Quantity) + (In("11/16") * (part["G"].Quantity + 1)));
        Assert.Equal(frameDepth - (slat.Thickness * 2), part["H"].Length);
    }

    [Fact]
    public async Task The_cupboard_adds_up()
    {
        var part = await PartsAsync("Pantry cupboard");
        var ply = materials["birch-ply-3-4"].Thickness;
        Assert.Equal(In("30"), part["B"].Length + (ply * 2));
        Assert.Equal((part["B"].Length, part["B"].Length), (part["C"].Length, part["E"].Length));
        Assert.Equal(part["B"].Length - In("1/8"), part["D"].Length);
        Assert.Equal((part["A"].Length, In("30")), (part["F"].Length, part["F"].Width));
    }

    // Common practice for a frame with a groove: rails reach into it with a tongue, the panel keeps a little room.
    [Fact]
    public async Task The_doors_add_up()
    {
        var part = await PartsAsync("Pantry cupboard");
        var (stile, groove, room) = (materials["poplar-1x3"].Width!.Value, In("3/8"), In("1/8"));
        var doorWidth = part["H"].Length - (groove * 2) + (stile * 2);
        Assert.Equal(In("30"), (doorWidth * 2) + In("1/8") + (In("1/16") * 2));
        Assert.Equal(In("48"), part["G"].Length + (In("1/16") * 2));
        var openingWidth = doorWidth - (stile * 2);
        Assert.Equal(openingWidth + (groove * 2) - room, part["J"].Width);
        var openingHeight = part["J"].Length + room - (groove * 2);
        Assert.Equal(part["G"].Length, (openingHeight * 2) + (stile * 3));
        Assert.Equal((4, 6, 4), (part["G"].Quantity, part["H"].Quantity, part["J"].Quantity));
    }

    [Fact]
    public async Task The_plant_stand_adds_up_in_millimetres()
    {
        var part = await PartsAsync("Plant stand");
        var leg = materials["poplar-1x2"];
        Assert.Equal(Mm(600), part["A"].Length + materials["birch-multiply-18mm"].Thickness);
        Assert.Equal(Mm(280), part["B"].Length + (leg.Width!.Value * 2));
        Assert.Equal(Mm(280), part["C"].Length + (leg.Thickness * 2));
        Assert.Equal(part["B"].Length - Mm(1), part["E"].Width);
        Assert.Equal(Mm(280) + (Mm(20) * 2), part["D"].Length);
    }

    [Fact]
    public async Task The_real_planner_cuts_all_three_pieces_and_a_packet_is_printed()
    {
        await using var real = await TestShop.OpenAsync(
            demo: true,
            change: services => services.AddSingleton<ICutPlanner, ShopCutPlanner>()
        );
        var projects = (await real.Projects.ListAsync(cancel: TestShop.Cancel)).Select(project => project.Id);
        var stores = (await real.Stores.ListAsync(TestShop.Cancel)).Select(store => store.Id);
        var job = (
            await real.Plans.StartAsync(
                new PlanOrder([.. projects], null, [.. stores], true, true, 3, null),
                CommandId.New(),
                TestShop.Cancel
            )
        ).Value!;
        while (real.Plans.FindJob(job.Id) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(20, TestShop.Cancel);
        var end = real.Plans.FindJob(job.Id)!;
        Assert.True(end.State == PlanJobState.Done, string.Join("; ", end.Faults));
        var plan = (await real.Plans.GetAsync(end.PlanId!.Value, TestShop.Cancel))!;
        Assert.Empty(plan.Plan.Unplaced);
        Assert.NotEmpty((await real.Plans.PacketAsync(plan.Summary.Id, Services.Common.PaperSize.Letter, TestShop.Cancel))!);
        Assert.NotEmpty(
            (await real.Bench.GetAsync(plan.Summary.Id, TestShop.Cancel))!.Stocks.Select(stock =>
                PlanPictures.ForLayout(plan, stock.Layout)
            )
        );
        TestContext.Current.TestOutputHelper!.WriteLine(
            $"{plan.Summary.Cost} (bound {plan.Plan.CostLowerBound}), {plan.Summary.Stocks} boards and sheets, {plan.Summary.Status}"
        );
        foreach (var buy in plan.Plan.Buy)
            TestContext.Current.TestOutputHelper!.WriteLine(
                $"{buy.Quantity} of {plan.Stocks[buy.Stock].Name} at {plan.Stocks[buy.Stock].Store}"
            );
    }

    private async Task<Dictionary<string, CutPart>> PartsAsync(string name)
    {
        var project = (await shop.Projects.ListAsync(cancel: TestShop.Cancel)).Single(project => project.Name == name);
        return (await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!.Rows.ToDictionary(
            row => row.Texts.Mark,
            row => row.Part!
        );
    }

    private static Length In(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;

    private static Length Mm(int millimetres) => Length.FromMillimetres(millimetres);
}
