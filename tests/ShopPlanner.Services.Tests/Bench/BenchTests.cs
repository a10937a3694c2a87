using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Pictures;

namespace ShopPlanner.Services.Tests.Bench;

public sealed class BenchTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private Guid plan;

    private IBenchService Bench => given.Shop.Bench;

    // Layout 0 is offcut B1 of 41 3/8 with one leg; layout 1 a new board of 96 with two.
    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        await given.OffcutAsync("41 3/8");
        plan = (await given.PlanAsync()).Summary.Id;
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task The_bench_shows_every_board_in_order()
    {
        var view = (await Bench.GetAsync(plan, TestShop.Cancel))!;
        Assert.Equal(
            [(1, 0, 1, "B1"), (2, 1, 1, (string?)null)],
            view.Stocks.Select(s => (s.Number, s.Layout, s.Copy, s.Stock.Tag))
        );
        Assert.All(view.Stocks.SelectMany(stock => stock.Cuts), cut => Assert.False(cut.Made));
    }

    [Fact]
    public async Task A_tick_is_kept_and_puts_the_plan_on_the_bench()
    {
        Assert.True((await TickAsync(0, 1, true)).Stocks[0].Cuts[0].Made);
        Assert.Equal(PlanState.Cutting, await StateAsync());
        Assert.Equal(OutcomeKind.Faulty, (await given.Shop.Plans.WithdrawAsync(plan, TestShop.Cancel)).Kind);
        await TickAsync(0, 1, false);
        Assert.Equal(PlanState.Ready, await StateAsync());
    }

    // Board 2 has two legs: the first is freed by cut 1, so cut 2 is next.
    [Fact]
    public async Task The_picture_at_the_bench_shows_what_is_done_and_what_comes_next()
    {
        var picture = PlanPictures.ForBench(await TickAsync(1, 1, true), 2);
        Assert.Equal([CutState.Done, CutState.Next], picture.Cuts.Select(cut => cut.State));
        Assert.Equal([("A2", true), ("A3", false)], picture.Pieces.Select(piece => (piece.Mark, piece.Done)));
        Assert.Equal("Pine 1x3, 8 ft, 2 of 2", picture.Title);
        Assert.Equal("B1: Pine 1x3, 41 3/8 in, 1 of 2", PlanPictures.ForLayout(await given.ReadAsync(plan), 0).Title);
        var finished = await FinishAsync(0, new MeasuredLeftover(0, "11", "", true));
        Assert.Equal("B2", PlanPictures.ForBench(finished, 1).Leftovers.Single(leftover => leftover.Keep).Tag);
    }

    [Fact]
    public async Task The_same_command_again_changes_nothing_and_answers_the_same()
    {
        var id = Guid.CreateVersion7();
        var first = await Bench.FinishAsync(
            plan,
            new(0, 1, true, [new(0, "11", "", true)]),
            Some.Device,
            new CommandId(id),
            TestShop.Cancel
        );
        var rows = given.Shop.CountRows();
        for (var i = 0; i < 3; i++)
        {
            var again = await Bench.FinishAsync(
                plan,
                new(0, 1, true, [new(0, "11", "", true)]),
                Some.Device,
                new CommandId(id),
                TestShop.Cancel
            );
            Assert.True(again.Ok);
            Assert.Equal(first.Value!.Stocks[0].Binned, again.Value.Stocks[0].Binned);
        }

        Assert.Equal(rows, given.Shop.CountRows());
        Assert.Equal(
            OutcomeKind.Faulty,
            (await Bench.SetCutAsync(plan, 0, 1, 1, true, Some.Device, new CommandId(id), TestShop.Cancel)).Kind
        );
    }

    [Fact]
    public async Task Finishing_an_offcut_takes_it_from_the_bin_and_puts_the_leftover_in()
    {
        var view = await FinishAsync(0, new MeasuredLeftover(0, "11 1/8", "", true));
        Assert.True(view.Stocks[0].Finished);
        Assert.Equal(["B2"], view.Stocks[0].Binned.Select(binned => binned.Tag));
        var piece = Assert.Single(await given.Shop.Stock.ListAsync(TestShop.Cancel));
        Assert.Equal(("B2", null), (piece.Tag, piece.PromisedPlanId));
        Assert.Equal(Core.Measures.Length.FromInches(11, 1, 8), piece.Length);
        Assert.Empty(view.Plan.Changes);
    }

    [Fact]
    public async Task Finishing_new_stock_enters_it_as_bought_and_cut()
    {
        await FinishAsync(1);
        var entries = await given.Shop.Stock.HistoryAsync(null, 2, TestShop.Cancel);
        Assert.Equal(
            [("R1", StockEntryKind.Cut), ("R1", StockEntryKind.Bought)],
            entries.Select(entry => (entry.Tag, entry.Kind))
        );
        Assert.DoesNotContain(await given.Shop.Stock.ListAsync(TestShop.Cancel), piece => piece.Tag == "R1");
    }

    [Fact]
    public async Task When_all_is_finished_the_plan_is_cut()
    {
        await FinishAsync(0);
        Assert.Equal(PlanState.Cutting, await StateAsync());
        await FinishAsync(1);
        Assert.Equal(PlanState.Cut, await StateAsync());
        Assert.Equal(OutcomeKind.Conflict, (await TryFinishAsync(1)).Kind);
    }

    [Theory]
    [InlineData("200", "", "larger than what it was cut from")]
    [InlineData("-1", "", "less than zero")]
    [InlineData("11", "3", "wider than the board")]
    [InlineData("", "", "is empty")]
    public async Task An_absurd_leftover_is_refused_and_nothing_is_half_saved(string length, string width, string said)
    {
        var rows = given.Shop.CountRows();
        var outcome = await TryFinishAsync(0, new MeasuredLeftover(0, length, width, true));
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Contains(said, outcome.Faults.Single().Message);
        Assert.StartsWith("leftovers[0].", outcome.Faults.Single().Field);
        Assert.Equal(rows, given.Shop.CountRows());
        Assert.Equal(PlanState.Ready, await StateAsync());
    }

    [Fact]
    public async Task A_finish_taken_back_leaves_the_stock_as_it_was()
    {
        var before = await given.Shop.Stock.ListAsync(TestShop.Cancel);
        await FinishAsync(0, new MeasuredLeftover(0, "11", "", true));
        await FinishAsync(1);
        Assert.True((await ReopenAsync(0)).Ok);
        Assert.True((await ReopenAsync(1)).Ok);
        var after = await given.Shop.Stock.ListAsync(TestShop.Cancel);
        Assert.Equal(before.Select(piece => piece with { Version = 0 }), after.Select(piece => piece with { Version = 0 }));
        Assert.Equal(PlanState.Cutting, await StateAsync());
        Assert.Equal("B3", (await FinishAsync(0, new MeasuredLeftover(0, "11", "", true))).Stocks[0].Binned.Single().Tag);
    }

    [Fact]
    public async Task A_finish_whose_leftover_was_used_is_not_taken_back()
    {
        await FinishAsync(0, new MeasuredLeftover(0, "11", "", true));
        var leftover = (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single();
        await given.Shop.Stock.DiscardAsync(leftover.Id, leftover.Version, "burnt", Some.Device, TestShop.Cancel);
        var outcome = await ReopenAsync(0);
        Assert.Equal((OutcomeKind.Conflict, "B2"), (outcome.Kind, outcome.Faults.Single().Field));
    }

    [Fact]
    public async Task A_piece_thrown_away_meanwhile_cannot_be_finished()
    {
        var piece = (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single();
        await given.Shop.Stock.DiscardAsync(piece.Id, piece.Version, "split", Some.Device, TestShop.Cancel);
        Assert.Equal(OutcomeKind.Conflict, (await TryFinishAsync(0)).Kind);
    }

    [Theory]
    [InlineData(9, 1, 1)]
    [InlineData(0, 2, 1)]
    [InlineData(0, 1, 99)]
    public async Task What_the_plan_does_not_have_is_refused(int layout, int copy, int cut) =>
        Assert.Equal(
            OutcomeKind.Faulty,
            (await Bench.SetCutAsync(plan, layout, copy, cut, true, Some.Device, CommandId.New(), TestShop.Cancel)).Kind
        );

    [Fact]
    public async Task A_board_is_found_by_its_number()
    {
        var stocks = (await Bench.GetAsync(plan, TestShop.Cancel))!.Stocks;
        foreach (var stock in stocks)
            Assert.Equal(new BenchPlace(stock.Layout, stock.Copy), await Bench.FindAsync(plan, stock.Number, TestShop.Cancel));
        Assert.Null(await Bench.FindAsync(plan, 0, TestShop.Cancel));
        Assert.Null(await Bench.FindAsync(plan, stocks.Length + 1, TestShop.Cancel));
        Assert.Null(await Bench.FindAsync(Guid.CreateVersion7(), 1, TestShop.Cancel));
    }

    [Fact]
    public async Task A_cut_of_a_finished_board_may_be_made_but_not_taken_back()
    {
        await FinishAsync(1);
        Assert.Equal(OutcomeKind.Ok, await TryTickAsync(1, 1, true));
        Assert.Equal(OutcomeKind.Conflict, await TryTickAsync(1, 1, false));
        Assert.Equal(PlanState.Cutting, await StateAsync());
    }

    [Fact]
    public async Task A_plan_that_is_not_there_has_no_tick() =>
        Assert.Equal(
            OutcomeKind.Missing,
            (await Bench.SetCutAsync(Guid.CreateVersion7(), 0, 1, 1, true, Some.Device, CommandId.New(), TestShop.Cancel)).Kind
        );

    private async Task<OutcomeKind> TryTickAsync(int layout, int cut, bool made) =>
        (await Bench.SetCutAsync(plan, layout, 1, cut, made, Some.Device, CommandId.New(), TestShop.Cancel)).Kind;

    private async Task<PlanState> StateAsync() => (await given.ReadAsync(plan)).Summary.State;

    private async Task<BenchView> TickAsync(int layout, int cut, bool made)
    {
        Assert.True((await Bench.SetCutAsync(plan, layout, 1, cut, made, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
        return (await Bench.GetAsync(plan, TestShop.Cancel))!;
    }

    private Task<Outcome<BenchView>> TryFinishAsync(int layout, params MeasuredLeftover[] leftovers) =>
        Bench.FinishAsync(plan, new(layout, 1, true, leftovers), Some.Device, CommandId.New(), TestShop.Cancel);

    private async Task<BenchView> FinishAsync(int layout, params MeasuredLeftover[] leftovers)
    {
        var outcome = await TryFinishAsync(layout, leftovers);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }

    private Task<Outcome<BenchView>> ReopenAsync(int layout) =>
        Bench.ReopenAsync(plan, layout, 1, Some.Device, CommandId.New(), TestShop.Cancel);
}
