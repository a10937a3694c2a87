using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>What saw, store and car allow, and what is cut long or practised, as the planner is asked for it.</summary>
public sealed class RequestLimitsTests : IAsyncLifetime
{
    private PlannedShop given = null!;

    private TestShop Shop => given.Shop;

    public async ValueTask InitializeAsync() => given = await PlannedShop.OpenAsync();

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task Without_limits_the_request_has_none()
    {
        var request = await RequestAsync();
        Assert.Equal(
            (null, null, null, null),
            (request.Saw.WidestRip, request.Saw.LongestCrosscut, request.Store, request.Carry)
        );
        Assert.All(
            request.Parts,
            part => Assert.Equal((null, null, null), (part.FinishedLength, part.FinishedWidth, part.PracticeFor))
        );
    }

    [Fact]
    public async Task Saw_and_car_go_into_the_request_a_side_left_open_being_as_long_as_any()
    {
        var settings = await Shop.Shop.GetAsync(TestShop.Cancel);
        await Shop.Shop.SaveAsync(
            settings with
            {
                WidestRip = "24",
                LongestCrosscut = "12",
                CarryWidest = "30",
            },
            TestShop.Cancel
        );
        var request = await RequestAsync();
        Assert.Equal((Length.FromInches(24), Length.FromInches(12)), (request.Saw.WidestRip, request.Saw.LongestCrosscut));
        Assert.Equal(new CarryLimit(LengthText.Longest, Length.FromInches(30)), request.Carry);
    }

    [Fact]
    public async Task Several_stores_cut_as_often_as_the_least_of_them_and_as_far_off_as_the_worst_and_one_that_does_not_cut_is_marked()
    {
        await CutsAsync(given.Store, "3", "1/8");
        Assert.Equal(new StoreCuts(3, Length.FromInches(0, 1, 8)), (await RequestAsync()).Store);
        var other = (await Shop.Stores.CreateAsync("Highway store", Some.Inch, CommandId.New(), TestShop.Cancel)).Value!;
        Assert.Equal(3, (await RequestAsync(other.Id)).Store!.Most);
        other = (await Shop.Stores.SavePriceAsync(other.Id, Some.Price("72", "5"), CommandId.New(), TestShop.Cancel)).Value!;
        var both = await RequestAsync(other.Id);
        Assert.Equal(new StoreCuts(3, Length.FromInches(0, 1, 8)), both.Store);
        Assert.Equal(
            [(Length.FromInches(72), true), (Length.FromInches(96), false)],
            both.Stock.Select(stock => (stock.Length, stock.SoldUncut))
        );
        await CutsAsync(other, "1", "1/4");
        Assert.Equal(new StoreCuts(1, Length.FromInches(0, 1, 4)), (await RequestAsync(other.Id)).Store);
    }

    [Fact]
    public async Task What_is_at_home_already_is_marked_so_that_neither_store_nor_car_limits_it()
    {
        await given.OffcutAsync("90");
        await CutsAsync(given.Store, "1", "1/8");
        var stock = (await RequestAsync()).Stock;
        Assert.Equal([true, false], stock.Select(one => one.Offcut));
    }

    [Fact]
    public async Task A_practice_piece_is_a_part_of_its_own_like_the_part_as_cut()
    {
        await EditAsync("1/2", "2");
        var request = await RequestAsync();
        var (part, practice) = (request.Parts[0], request.Parts[1]);
        Assert.Equal((Length.FromInches(30, 1, 2), Length.FromInches(30), 3), (part.Length, part.FinishedLength, part.Quantity));
        Assert.Equal((part.Id, 2, "Test piece for A"), (practice.PracticeFor, practice.Quantity, practice.Name));
        Assert.Equal(
            (part.Length, part.Width, part.Material, part.Grain),
            (practice.Length, practice.Width, practice.Material, practice.Grain)
        );
        Assert.Null(practice.FinishedLength);
    }

    [Fact]
    public async Task Practice_pieces_are_named_and_marked_for_their_part()
    {
        await EditAsync("", "1");
        Assert.Equal(["A", "pA"], (await given.PlanAsync()).Parts.Values.Select(part => part.Mark).Order(StringComparer.Ordinal));
        var other = await Some.ProjectAsync(Shop, "Shelf");
        await Shop.Parts.SaveAsync(other.Id, [Some.New(Some.Part("10", "A", "1"))], TestShop.Cancel);
        var plan = await given.PlanAsync(given.Order() with { Projects = [given.Project.Id, other.Id] });
        var practice = plan.Request.Parts.Single(part => part.PracticeFor is not null);
        Assert.Equal((practice.Id, $"Test piece for {practice.PracticeFor}"), (plan.Parts[practice.Id].Mark, practice.Name));
        Assert.Equal($"{given.Project.Code} pA", practice.Id);
    }

    private Task<StoreView> CutsAsync(StoreView store, string cuts, string tolerance) =>
        SavedAsync(store with { FirstCuts = cuts, CutTolerance = tolerance });

    private async Task<StoreView> SavedAsync(StoreView store)
    {
        var outcome = await Shop.Stores.SaveAsync(store, TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }

    private async Task EditAsync(string longBy, string practice)
    {
        var row = (await Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows[0];
        Assert.True(
            (
                await Shop.Parts.SaveAsync(
                    given.Project.Id,
                    [new(row.Texts with { LongBy = longBy, Practice = practice }, row.Version)],
                    TestShop.Cancel
                )
            ).Ok
        );
    }

    private async Task<CutRequest> RequestAsync(params Guid[] moreStores)
    {
        var order = given.Order();
        var preview = await Shop.Plans.PreviewAsync(order with { Stores = [.. order.Stores, .. moreStores] }, TestShop.Cancel);
        Assert.True(preview.Ok, string.Join("; ", preview.Faults));
        return preview.Value.Request;
    }
}
