using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Pictures;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>The real planner and verifier under the limits that were typed into the shop's and the store's pages: a car for pieces of
/// 60 × 48 in, a store that makes two first cuts, rips of 24 in at home.</summary>
public sealed class RealLimitsTests : IAsyncLifetime
{
    private TestShop shop = null!;
    private PlanView plan = null!;

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync(change: services => services.AddSingleton<ICutPlanner, ShopCutPlanner>());
        var settings = await shop.Shop.GetAsync(TestShop.Cancel);
        Assert.True(
            (
                await shop.Shop.SaveAsync(
                    settings with
                    {
                        WidestRip = "24",
                        CarryLongest = "60",
                        CarryWidest = "48",
                    },
                    TestShop.Cancel
                )
            ).Ok
        );
        var project = await Some.ProjectAsync(shop);
        await shop.Parts.SaveAsync(
            project.Id,
            [
                Some.New(Some.Part("70", "A", "1")),
                Some.New(Some.Part("27", "P", "4", Some.Birch, "13 1/4") with { LongBy = "1/2", Practice = "1" }),
            ],
            TestShop.Cancel
        );
        var store = await Some.StoreAsync(shop, Some.Price(), Some.Price("96", "64.00", Some.Birch, "48"));
        store = (await shop.Stores.SaveAsync(store with { FirstCuts = "2" }, TestShop.Cancel)).Value!;
        await shop.Stock.AddAsync(Some.Offcut("80"), Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        var job = (
            await shop.Plans.StartAsync(
                new PlanOrder([project.Id], null, [store.Id], true, true, 2, []),
                CommandId.New(),
                TestShop.Cancel
            )
        ).Value!;
        while (shop.Plans.FindJob(job.Id) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(10, TestShop.Cancel);
        var end = shop.Plans.FindJob(job.Id)!;
        Assert.True(end.State == PlanJobState.Done, string.Join("; ", end.Faults));
        plan = (await shop.Plans.GetAsync(end.PlanId!.Value, TestShop.Cancel))!;
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public void A_sheet_that_the_car_does_not_take_is_cut_by_the_store_first()
    {
        Assert.Empty(plan.Plan.Unplaced);
        var sheet = Enumerable.Range(0, plan.Plan.Layouts.Length).Single(i => !PlanLayouts.IsBoard(plan, i));
        var cuts = plan.Plan.Layouts[sheet].Cuts;
        Assert.InRange(cuts.Count(cut => cut.ByStore), 1, 2);
        Assert.Equal(cuts.Count(cut => cut.ByStore), StoreCutTexts.Of(plan, sheet).Length);
        Assert.All(cuts.TakeWhile(cut => cut.ByStore), cut => Assert.True(cut.At <= Length.FromInches(60)));
        Assert.Equal(
            [.. cuts.Where(cut => cut.ByStore).Select(cut => cut.N)],
            PlanPictures.ForLayout(plan, sheet).Cuts.Where(cut => cut.ByStore).Select(cut => cut.N)
        );
    }

    // 80 in are too long for the car, but the board is at home already.
    [Fact]
    public void A_board_of_the_bin_is_held_neither_to_the_car_nor_to_the_store()
    {
        var board = plan.Plan.Layouts.Single(layout => layout.Stock == "B1");
        Assert.DoesNotContain(board.Cuts, cut => cut.ByStore);
    }

    [Fact]
    public void Every_leftover_worth_keeping_is_for_the_bin_in_the_words_of_the_cuts_too()
    {
        for (var i = 0; i < plan.Plan.Layouts.Length; i++)
            Assert.Equal(
                plan.Plan.Layouts[i].Leftovers.Count(left => left.Keep),
                CutTexts.Steps(plan, i).Sum(step => step.Gives.Split(" for the bin").Length - 1)
            );
    }
}
