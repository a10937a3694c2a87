using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Bought;

namespace ShopPlanner.Services.Tests.Buying;

/// <summary>Ticking what was bought: the boards lie in the rack for their plan, the money stands beside them.</summary>
public sealed class BuyTests : IAsyncLifetime
{
    private BuyingShop given = null!;

    private static Money Each => BuyingShop.Each;

    public async ValueTask InitializeAsync() => given = await BuyingShop.OpenAsync();

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task Before_anything_is_bought_all_is_to_pay()
    {
        var list = await given.ListAsync();
        var line = list.Lines.Single();
        Assert.Equal(("Pine 1x3, 8 ft", 3, 3, 0), (line.Name, line.Asked, line.Left, line.Have));
        Assert.Equal((Each * 3, Money.Zero, Each * 3), (list.Totals.Planned, list.Totals.Spent, list.Totals.Left));
        Assert.Equal("Corner lumber", list.Stores.Single().Name);
    }

    [Fact]
    public async Task What_is_bought_lies_in_the_rack_promised_to_its_plan_and_the_plan_is_up_to_date()
    {
        var line = await given.BoughtAsync(1, 2);
        Assert.Equal((1, 2), (line.Left, line.Have));
        Assert.Equal([("R1", given.Plan), ("R2", (Guid?)given.Plan)], await given.RackAsync());
        Assert.Equal(Each * 2, await given.SpentAsync());
        Assert.Empty((await given.Given.ReadAsync(given.Plan)).Changes);
        var entries = await given.Shop.Stock.HistoryAsync(null, 10, TestShop.Cancel);
        Assert.All(entries, entry => Assert.Equal(StockEntryKind.Bought, entry.Kind));
        Assert.Equal("bought for Boot-room bench", entries[0].Reason);
    }

    [Fact]
    public async Task The_price_really_paid_is_kept_and_nothing_is_a_price_too()
    {
        BuyingShop.Sure(await given.BuyAsync("7.29", 1));
        BuyingShop.Sure(await given.BuyAsync("0", 2));
        var list = await given.ListAsync();
        Assert.Equal([Money.From(7.29m), Money.Zero], list.Lines.Single().Bought.Select(one => one.Price));
        Assert.Equal((Money.From(7.29m), Each), (list.Totals.Spent, list.Totals.Left));
    }

    [Fact]
    public async Task The_rest_is_bought_at_the_prices_known_now_and_once()
    {
        await given.BoughtAsync(2);
        await NoteAsync(new SeenInStore(given.Line, "7.29", null));
        BuyingShop.Sure(await given.BuyRestAsync());
        var line = await given.LineAsync();
        Assert.Equal(
            [(1, Money.From(7.29m)), (2, Each), (3, Money.From(7.29m))],
            line.Bought.Select(one => (one.Place, one.Price))
        );
        Assert.Equal(0, line.Left);
        Assert.Contains("nothing on this list", (await given.BuyRestAsync()).Faults.Single().Message);
        Assert.Equal(3, (await given.LineAsync()).Bought.Length);
    }

    [Fact]
    public async Task What_the_store_was_seen_without_is_not_bought_with_the_rest()
    {
        await NoteAsync(new SeenInStore(given.Line, null, false));
        Assert.Equal(OutcomeKind.Faulty, (await given.BuyRestAsync()).Kind);
        Assert.Equal(3, (await given.LineAsync()).Left);
        Assert.Equal(Money.Zero, await given.SpentAsync());
    }

    private async Task NoteAsync(SeenInStore seen) =>
        BuyingShop.Sure(await given.Buying.NoteAsync(given.Plan, seen, CommandId.New(), TestShop.Cancel));

    [Fact]
    public async Task More_than_the_plan_cuts_is_free_stock_of_the_rack()
    {
        var line = await given.BoughtAsync(1, 2, 3, 4, 5);
        Assert.Equal((0, 3, 2), (line.Left, line.Have, line.Extra));
        Assert.Equal([given.Plan, given.Plan, given.Plan, null, null], (await given.RackAsync()).Select(one => one.Plan));
        Assert.Equal(Each * 5, await given.SpentAsync());
    }

    [Fact]
    public async Task A_piece_ticked_by_two_devices_is_bought_once()
    {
        await given.BoughtAsync(1, 2);
        var line = await given.BoughtAsync(2, 3);
        Assert.Equal([1, 2, 3], line.Bought.Select(one => one.Place));
        Assert.Equal(Each * 3, await given.SpentAsync());
    }

    [Fact]
    public async Task Ticked_by_two_devices_at_different_prices_the_second_hears_of_the_first()
    {
        BuyingShop.Sure(await given.BuyAsync("7.29", 1));
        var outcome = await given.BuyAsync("6.99", 1, 2);
        Assert.Equal((OutcomeKind.Conflict, "7.29"), (outcome.Kind, outcome.Faults.Single().Value));
        Assert.Equal(2, (await given.LineAsync()).Left);
    }

    [Theory]
    [InlineData("six", "is not a price")]
    [InlineData("-1", "less than zero")]
    [InlineData("2000000", "more than a million")]
    [InlineData("6,48", "has a comma")]
    public async Task A_price_that_cannot_be_is_refused_and_nothing_is_half_saved(string price, string said)
    {
        var rows = given.Shop.CountRows();
        var outcome = await given.BuyAsync(price, 1);
        Assert.Equal((OutcomeKind.Faulty, "price"), (outcome.Kind, outcome.Faults.Single().Field));
        Assert.Contains(said, outcome.Faults.Single().Message);
        Assert.Equal(rows, given.Shop.CountRows());
    }

    [Fact]
    public async Task Two_hundred_of_a_line_are_the_most()
    {
        BuyingShop.Sure(await given.BuyAsync("1", [.. Enumerable.Range(1, 200)]));
        var outcome = await given.BuyAsync("1", 201);
        Assert.Equal((OutcomeKind.Faulty, "201"), (outcome.Kind, outcome.Faults.Single().Value));
        Assert.Contains("check the number", outcome.Faults.Single().Message);
        Assert.Equal(200, (await given.RackAsync()).Count);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(401)]
    public async Task A_piece_that_no_line_has_is_refused(int place) =>
        Assert.Equal(OutcomeKind.Faulty, (await given.BuyAsync(BuyingShop.PlanPrice, place)).Kind);

    [Fact]
    public async Task A_line_of_another_plan_is_refused()
    {
        var outcome = await given.Buying.BuyAsync(
            given.Plan,
            new("nothing", [1], ""),
            Some.Device,
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.Contains("is not on this list", outcome.Faults.Single().Message);
    }

    [Fact]
    public async Task A_canceled_plan_and_one_that_is_all_cut_buy_nothing()
    {
        await given.Shop.Plans.WithdrawAsync(given.Plan, TestShop.Cancel);
        Assert.Contains("is canceled or replaced", (await given.BuyAsync("", 1)).Faults.Single().Message);
        await given.Shop.Plans.ReinstateAsync(given.Plan, TestShop.Cancel);
        for (var number = 1; number <= 3; number++)
            await given.FinishAsync(number);
        Assert.Contains("is all cut", (await given.BuyAsync("", 1)).Faults.Single().Message);
        Assert.Equal(0, (await given.LineAsync()).Left);
    }

    [Fact]
    public async Task A_tick_taken_back_takes_the_piece_and_the_money_with_it()
    {
        await given.BoughtAsync(1, 2);
        BuyingShop.Sure(await given.ReturnAsync(2));
        Assert.Equal([("R1", (Guid?)given.Plan)], await given.RackAsync());
        Assert.Equal((2, Each), ((await given.LineAsync()).Left, await given.SpentAsync()));
        var last = (await given.Shop.Stock.HistoryAsync(null, 1, TestShop.Cancel)).Single();
        Assert.Equal((StockEntryKind.Returned, "R2"), (last.Kind, last.Tag));
        Assert.True((await given.ReturnAsync(2)).Ok);
    }

    [Fact]
    public async Task Returned_pieces_make_room_for_those_bought_beyond_the_plan()
    {
        await given.BoughtAsync(1, 2, 3, 4);
        BuyingShop.Sure(await given.ReturnAsync(1));
        var line = await given.LineAsync();
        Assert.Equal((0, 0), (line.Left, line.Extra));
        Assert.All(await given.RackAsync(), one => Assert.Equal(given.Plan, one.Plan));
    }

    [Fact]
    public async Task A_board_that_was_cut_is_not_taken_back()
    {
        await given.BoughtAsync(1);
        await given.FinishAsync(1);
        var outcome = await given.ReturnAsync(1);
        Assert.Equal((OutcomeKind.Conflict, "R1"), (outcome.Kind, outcome.Faults.Single().Field));
        Assert.Contains("is cut already", outcome.Faults.Single().Message);
        Assert.Equal(Each, await given.SpentAsync());
    }

    [Fact]
    public async Task An_undone_line_of_the_ledger_takes_the_money_along()
    {
        await given.BoughtAsync(1);
        var bought = (await given.Shop.Stock.HistoryAsync(null, 1, TestShop.Cancel)).Single();
        Assert.True((await given.Shop.Stock.UndoAsync(bought.Id, Some.Device, TestShop.Cancel)).Ok);
        Assert.Equal((3, Money.Zero), ((await given.LineAsync()).Left, await given.SpentAsync()));
        await given.BoughtAsync(1);
        BuyingShop.Sure(await given.ReturnAsync(1));
        await given.BoughtAsync(1);
        var returned = (await given.Shop.Stock.HistoryAsync(null, 5, TestShop.Cancel)).First(e =>
            e.Kind == StockEntryKind.Returned
        );
        Assert.True((await given.Shop.Stock.UndoAsync(returned.Id, Some.Device, TestShop.Cancel)).Ok);
        var line = await given.LineAsync();
        Assert.Equal([1, 2], line.Bought.Select(one => one.Place));
        Assert.Equal((1, Each * 2), (line.Left, await given.SpentAsync()));
    }

    [Fact]
    public async Task A_board_thrown_away_is_paid_for_and_to_be_bought_again()
    {
        await given.BoughtAsync(1, 2, 3);
        var piece = (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single(one => one.Tag == "R2");
        await given.Shop.Stock.DiscardAsync(piece.Id, piece.Version, "split", Some.Device, TestShop.Cancel);
        var line = await given.LineAsync();
        Assert.Equal((1, BoughtState.Gone), (line.Left, line.Bought[1].State));
        Assert.Contains("was thrown away", (await given.ReturnAsync(2)).Faults.Single().Message);
        line = await given.BoughtAsync(4);
        Assert.Equal((0, Each * 4), (line.Left, await given.SpentAsync()));
        Assert.Equal(3, (await given.RackAsync()).Count(one => one.Plan == given.Plan));
    }

    [Fact]
    public async Task A_board_measured_again_and_too_short_is_to_be_bought_again()
    {
        await given.BoughtAsync(1, 2, 3);
        var piece = (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single(one => one.Tag == "R1");
        BuyingShop.Sure(
            await given.Shop.Stock.CorrectAsync(
                piece.Id,
                piece.Version,
                "95",
                "",
                "split end",
                Some.Inch,
                Some.Device,
                TestShop.Cancel
            )
        );
        Assert.Equal(1, (await given.LineAsync()).Left);
        await given.BoughtAsync(4);
        Assert.Equal([null, given.Plan, given.Plan, given.Plan], (await given.RackAsync()).Select(one => one.Plan));
        Assert.Empty((await given.Given.ReadAsync(given.Plan)).Changes);
    }

    [Fact]
    public async Task What_was_paid_can_be_corrected()
    {
        await given.BoughtAsync(1, 2);
        BuyingShop.Sure(await given.Buying.CorrectPriceAsync(given.Plan, given.Line, "7.10", CommandId.New(), TestShop.Cancel));
        Assert.Equal(Money.From(14.2m), await given.SpentAsync());
        BuyingShop.Sure(await given.ReturnAsync(1, 2));
        var outcome = await given.Buying.CorrectPriceAsync(given.Plan, given.Line, "7", CommandId.New(), TestShop.Cancel);
        Assert.Contains("check off what you bought first", outcome.Faults.Single().Message);
    }
}
