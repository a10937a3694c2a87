using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Tests.Stores;

public sealed class StoreTests : IAsyncLifetime
{
    private TestShop shop = null!;
    private StoreView store = null!;

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync();
        store = await Some.StoreAsync(shop, Some.Price());
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public void A_price_is_kept_with_the_day_it_was_seen()
    {
        var row = Assert.Single(store.Prices);
        Assert.Equal((Length.FromInches(96), Length.FromInches(2, 1, 2), Money.From(6.48m)), (row.Length, row.Width, row.Price));
        Assert.Equal(new DateOnly(2026, 5, 2), row.Seen);
    }

    [Fact]
    public async Task A_changed_price_is_seen_today()
    {
        shop.Clock.Advance(TimeSpan.FromDays(10));
        var row = store.Prices[0];
        var now = (
            await shop.Stores.SavePriceAsync(
                store.Id,
                Some.Price(price: "6.98") with
                {
                    Id = row.Id,
                    Version = row.Version,
                },
                CommandId.New(),
                TestShop.Cancel
            )
        )
            .Value!
            .Prices[0];
        Assert.Equal((Money.From(6.98m), new DateOnly(2026, 5, 12), 2), (now.Price, now.Seen, now.Version));
        var late = await shop.Stores.SavePriceAsync(
            store.Id,
            Some.Price(price: "7") with
            {
                Id = row.Id,
                Version = row.Version,
            },
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.Equal((OutcomeKind.Conflict, "6.98"), (late.Kind, late.Faults.Single().Value));
    }

    [Theory]
    [InlineData("96", "free", "Price")]
    [InlineData("96", "-1", "Price")]
    [InlineData("96", "1,50", "Price")]
    [InlineData("0", "6.48", "Length")]
    [InlineData("8 ft", "6.48", "Length")]
    public async Task A_price_that_is_none_or_a_size_listed_already_is_refused(string length, string price, string member)
    {
        var rows = shop.CountRows();
        var outcome = await shop.Stores.SavePriceAsync(store.Id, Some.Price(length, price), CommandId.New(), TestShop.Cancel);
        Assert.Equal((OutcomeKind.Faulty, member), (outcome.Kind, outcome.Faults.Single().Field));
        Assert.Equal(rows, shop.CountRows());
    }

    [Fact]
    public async Task First_cuts_are_kept_with_a_tolerance_that_is_filled_in_where_it_is_missing()
    {
        Assert.Equal(("", ""), (store.FirstCuts, store.CutTolerance));
        var now = (await shop.Stores.SaveAsync(store with { FirstCuts = " 2 " }, TestShop.Cancel)).Value!;
        Assert.Equal(("2", "1/8"), (now.FirstCuts, now.CutTolerance));
        now = (await shop.Stores.SaveAsync(now with { CutTolerance = "0" }, TestShop.Cancel)).Value!;
        Assert.Equal(("2", "0"), (now.FirstCuts, now.CutTolerance));
        now = (await shop.Stores.SaveAsync(now with { FirstCuts = "0", CutTolerance = "" }, TestShop.Cancel)).Value!;
        Assert.Equal(("", ""), (now.FirstCuts, now.CutTolerance));
        Assert.Single(now.Prices);
    }

    [Fact]
    public async Task A_tolerance_left_alone_means_the_same_in_a_new_unit()
    {
        var now = (await shop.Stores.SaveAsync(store with { FirstCuts = "1", CutTolerance = "1/4" }, TestShop.Cancel)).Value!;
        now = (await shop.Stores.SaveAsync(now with { Unit = LengthUnit.Millimetre }, TestShop.Cancel)).Value!;
        Assert.Equal("1/4 in", now.CutTolerance);
        Assert.Equal("5", (await shop.Stores.SaveAsync(now with { CutTolerance = "5" }, TestShop.Cancel)).Value!.CutTolerance);
    }

    [Theory]
    [InlineData("two", "", "FirstCuts")]
    [InlineData("-1", "", "FirstCuts")]
    [InlineData("21", "", "FirstCuts")]
    [InlineData("2", "-1/8", "CutTolerance")]
    [InlineData("2", "18", "CutTolerance")]
    [InlineData("2", "some", "CutTolerance")]
    public async Task First_cuts_that_no_store_makes_are_refused(string cuts, string tolerance, string member)
    {
        var outcome = await shop.Stores.SaveAsync(
            store with
            {
                FirstCuts = cuts,
                CutTolerance = tolerance,
                Note = "not kept",
            },
            TestShop.Cancel
        );
        Assert.Equal((OutcomeKind.Faulty, member), (outcome.Kind, Assert.Single(outcome.Faults).Field));
        Assert.Equal("", (await shop.Stores.GetAsync(store.Id, TestShop.Cancel))!.Note);
    }

    [Fact]
    public async Task A_store_is_renamed_on_its_latest_version_only_and_names_differ()
    {
        Assert.Equal(
            OutcomeKind.Faulty,
            (await shop.Stores.CreateAsync("corner  LUMBER", LengthUnit.Inch, CommandId.New(), TestShop.Cancel)).Kind
        );
        Assert.True((await shop.Stores.SaveAsync(store with { Name = "Lumber at the corner" }, TestShop.Cancel)).Ok);
        Assert.Equal(OutcomeKind.Conflict, (await shop.Stores.SaveAsync(store with { Name = "Corner" }, TestShop.Cancel)).Kind);
    }

    [Fact]
    public async Task A_price_is_taken_out_once()
    {
        Assert.Empty((await shop.Stores.RemovePriceAsync(store.Id, store.Prices[0].Id, TestShop.Cancel)).Value!.Prices);
        Assert.Equal(
            OutcomeKind.Missing,
            (await shop.Stores.RemovePriceAsync(store.Id, store.Prices[0].Id, TestShop.Cancel)).Kind
        );
    }
}
