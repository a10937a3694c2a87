using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Plans;

public sealed class PlanChangesTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private Guid offcut;
    private PlanView plan = null!;

    private TestShop Shop => given.Shop;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        offcut = await given.OffcutAsync("41 3/8");
        plan = await given.PlanAsync();
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public Task An_untouched_shop_leaves_the_plan_up_to_date() => ExpectAsync();

    [Fact]
    public async Task A_part_of_another_length_quantity_and_material()
    {
        await EditAsync(texts => texts with { Length = "14" });
        await ExpectAsync("Boot-room bench: part A is now 14 in long");
        await EditAsync(texts => texts with { Quantity = "2" });
        await ExpectAsync(
            "Boot-room bench: part A is now 14 in long",
            "Boot-room bench: part A is now needed twice, not 3 times"
        );
        await EditAsync(texts => texts with { Length = "30", Quantity = "3", Material = "poplar-1x3" });
        await ExpectAsync("Boot-room bench: part A is now Poplar 1x3");
        await EditAsync(texts => texts with { Material = Some.Pine });
        await ExpectAsync();
    }

    [Fact]
    public async Task A_part_added_removed_or_spoilt()
    {
        await Shop.Parts.SaveAsync(given.Project.Id, [Some.New(Some.Part("9", "D", "1"))], TestShop.Cancel);
        await ExpectAsync("Boot-room bench: part D is new");
        var rows = (await Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows;
        await Shop.Parts.RemoveAsync(given.Project.Id, [.. rows.Select(row => row.Texts.Id)], TestShop.Cancel);
        await ExpectAsync("Boot-room bench: part A was removed");
        await Shop.Parts.UndoAsync(given.Project.Id, TestShop.Cancel);
        await EditAsync(texts => texts with { Length = "thirty" });
        Assert.StartsWith("Boot-room bench: part A needs fixing", (await given.ReadAsync(plan.Summary.Id)).Changes[0]);
    }

    [Fact]
    public async Task A_price_that_rose_fell_out_of_stock_or_left_the_list()
    {
        await PriceAsync("6.98", true);
        await ExpectAsync("price of Pine 1x3, 8 ft went from 6.48 to 6.98 at Corner lumber");
        await PriceAsync("6.48", false);
        await ExpectAsync("Corner lumber has no Pine 1x3, 8 ft now");
        await Shop.Stores.RemovePriceAsync(given.Store.Id, given.Store.Prices[0].Id, TestShop.Cancel);
        await ExpectAsync("Corner lumber no longer lists Pine 1x3, 8 ft");
        await Shop.Stores.SavePriceAsync(given.Store.Id, Some.Price("72", "4.20"), CommandId.New(), TestShop.Cancel);
        await ExpectAsync("Corner lumber no longer lists Pine 1x3, 8 ft", "Corner lumber now has Pine 1x3, 6 ft at 4.20");
    }

    [Fact]
    public async Task A_promised_offcut_measured_anew_or_thrown_away_needs_attention_and_comes_right_by_undoing()
    {
        await Shop.Stock.CorrectAsync(offcut, 1, "39", "", "", Some.Inch, Some.Device, TestShop.Cancel);
        await ExpectAsync("offcut B1 was measured again");
        Assert.True((await given.ReadAsync(plan.Summary.Id)).OutOfDate);
        await Shop.Stock.DiscardAsync(offcut, 2, "split", Some.Device, TestShop.Cancel);
        await ExpectAsync("offcut B1 is gone");
        foreach (var entry in (await Shop.Stock.HistoryAsync(offcut, 2, TestShop.Cancel)).ToList())
            Assert.True((await Shop.Stock.UndoAsync(entry.Id, Some.Device, TestShop.Cancel)).Ok);
        await ExpectAsync();
    }

    [Fact]
    public async Task A_blade_changed()
    {
        var settings = await Shop.Shop.GetAsync(TestShop.Cancel);
        await Shop.Shop.SaveAsync(settings with { Kerf = "3/32" }, TestShop.Cancel);
        await ExpectAsync("the saw's kerf is now 3/32 in");
    }

    [Fact]
    public async Task What_saw_and_car_allow()
    {
        var settings = await Shop.Shop.GetAsync(TestShop.Cancel);
        settings = (
            await Shop.Shop.SaveAsync(
                settings with
                {
                    WidestRip = "24",
                    LongestCrosscut = "12",
                    CarryLongest = "6 ft",
                },
                TestShop.Cancel
            )
        ).Value!;
        await ExpectAsync(
            "the saw's widest rip is now 24 in",
            "the saw's longest crosscut is now 12 in",
            "the longest piece the car carries is now 72 in"
        );
        await Shop.Shop.SaveAsync(
            settings with
            {
                WidestRip = "",
                LongestCrosscut = "",
                CarryLongest = "",
                CarryWidest = "30",
            },
            TestShop.Cancel
        );
        await ExpectAsync("the widest piece the car carries is now 30 in");
    }

    [Fact]
    public async Task What_the_store_cuts()
    {
        var store = (await Shop.Stores.SaveAsync(await StoreAsync() with { FirstCuts = "2" }, TestShop.Cancel)).Value!;
        await ExpectAsync("the store now makes 2 free cuts");
        plan = await given.PlanAsync(given.Order(replaces: plan.Summary.Id));
        await Shop.Stores.SaveAsync(store with { CutTolerance = "1/4" }, TestShop.Cancel);
        await ExpectAsync("the store cut tolerance is now 1/4 in");
        await Shop.Stores.SaveAsync(await StoreAsync() with { FirstCuts = "" }, TestShop.Cancel);
        await ExpectAsync("the store now makes no free cuts, not 2 free cuts");
    }

    [Fact]
    public async Task A_store_that_begins_to_cut_beside_one_that_does()
    {
        var other = (await Shop.Stores.CreateAsync("Highway store", Some.Inch, CommandId.New(), TestShop.Cancel)).Value!;
        other = (await Shop.Stores.SavePriceAsync(other.Id, Some.Price("72", "5"), CommandId.New(), TestShop.Cancel)).Value!;
        await Shop.Stores.SaveAsync(await StoreAsync() with { FirstCuts = "2" }, TestShop.Cancel);
        var order = given.Order(replaces: plan.Summary.Id);
        plan = await given.PlanAsync(order with { Stores = [.. order.Stores, other.Id] });
        await Shop.Stores.SaveAsync(other with { FirstCuts = "2" }, TestShop.Cancel);
        await ExpectAsync("Highway store now cuts for you");
    }

    [Fact]
    public async Task A_part_cut_long_or_practised()
    {
        await EditAsync(texts => texts with { LongBy = "1/2", Practice = "2" });
        await ExpectAsync("Boot-room bench: part A is now cut 30 1/2 in long", "Boot-room bench: part A now has 2 test pieces");
        plan = await given.PlanAsync(given.Order(replaces: plan.Summary.Id));
        await ExpectAsync();
        await EditAsync(texts => texts with { LongBy = "", Practice = "1" });
        await ExpectAsync(
            "Boot-room bench: part A is no longer cut too long",
            "Boot-room bench: part A now has 1 test piece, not 2 test pieces"
        );
        await EditAsync(texts => texts with { Length = "29 1/2", LongBy = "1", Practice = "2" });
        await ExpectAsync("Boot-room bench: part A is now 29 1/2 in long");
    }

    [Fact]
    public async Task A_plan_given_up_is_history_and_never_out_of_date()
    {
        await PriceAsync("6.98", true);
        await Shop.Plans.WithdrawAsync(plan.Summary.Id, TestShop.Cancel);
        await ExpectAsync();
    }

    [Fact]
    public async Task The_snapshot_itself_never_changes()
    {
        await PriceAsync("6.98", true);
        await EditAsync(texts => texts with { Length = "14" });
        var now = await given.ReadAsync(plan.Summary.Id);
        Assert.Equal(plan.RequestHash, now.RequestHash);
        Assert.Equal(plan.Request.Parts, now.Request.Parts);
        Assert.Equal(plan.Plan.Cost, now.Plan.Cost);
    }

    private async Task<Services.Stores.StoreView> StoreAsync() => (await Shop.Stores.GetAsync(given.Store.Id, TestShop.Cancel))!;

    private async Task ExpectAsync(params string[] changes) =>
        Assert.Equal(changes, (await given.ReadAsync(plan.Summary.Id)).Changes);

    private async Task EditAsync(Func<PartTexts, PartTexts> change)
    {
        var row = (await Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows[0];
        Assert.True(
            (await Shop.Parts.SaveAsync(given.Project.Id, [new PartEdit(change(row.Texts), row.Version)], TestShop.Cancel)).Ok
        );
    }

    private async Task PriceAsync(string price, bool inStock)
    {
        var stored = (await Shop.Stores.GetAsync(given.Store.Id, TestShop.Cancel))!.Prices[0];
        var edit = Some.Price(price: price) with { Id = stored.Id, Version = stored.Version, InStock = inStock };
        Assert.True((await Shop.Stores.SavePriceAsync(given.Store.Id, edit, CommandId.New(), TestShop.Cancel)).Ok);
    }
}
