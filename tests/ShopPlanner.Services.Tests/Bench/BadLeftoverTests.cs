using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Bench;

/// <summary>What is left of a board: true where it was cut, as bought and bad where it was not. Three legs of 30 in, of which the
/// first comes from a board of the rack, 41 3/8 in long.</summary>
public sealed class BadLeftoverTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private Guid board;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        var rack = Some.Offcut("41 3/8") with { Place = StockPlace.Rack };
        var added = await given.Shop.Stock.AddAsync(rack, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        board = added.Value!.Single().Id;
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task A_leftover_of_the_plan_has_true_edges()
    {
        var plan = (await given.PlanAsync()).Summary.Id;
        await FinishAsync(plan, new MeasuredLeftover(0, "11", "", true));
        Assert.Equal(StockCondition.Sound, (await BinAsync()).Condition);
    }

    [Fact]
    public async Task A_board_that_was_not_cut_goes_back_as_it_was()
    {
        await SpoilAsync(BadPlaceKind.End, StockEdges.Far, "2");
        var plan = (await given.PlanAsync()).Summary.Id;
        await FinishAsync(plan, Whole("41 3/8"));
        var left = await BinAsync();
        Assert.Equal(StockEdges.Near, left.Condition.Untrimmed);
        Assert.Equal([Place("39 3/8", "2")], left.Condition.BadPlaces);
    }

    // Measured at 41 in: what is bad up to the end is bad up to the end.
    [Fact]
    public async Task A_bad_end_goes_along_with_another_measurement()
    {
        await SpoilAsync(BadPlaceKind.End, StockEdges.Far, "2");
        var plan = (await given.PlanAsync()).Summary.Id;
        await FinishAsync(plan, Whole("41"));
        Assert.Equal([Place("39 3/8", "1 5/8")], (await BinAsync()).Condition.BadPlaces);
    }

    // 12 in from 29 3/8 in on: its own bad end begins 10 in from its left end.
    [Fact]
    public async Task A_part_of_the_board_has_its_own_share()
    {
        await SpoilAsync(BadPlaceKind.End, StockEdges.Far, "2");
        var plan = (await given.PlanAsync()).Summary.Id;
        var from = new StockArea(Of("29 3/8"), Length.Zero, Of("12"), Of("2 1/2"));
        await FinishAsync(plan, new MeasuredLeftover(-1, "12", "", true) { From = from });
        var left = await BinAsync();
        Assert.Equal(StockEdges.None, left.Condition.Untrimmed);
        Assert.Equal([Place("10", "2")], left.Condition.BadPlaces);
    }

    [Fact]
    public async Task A_part_that_lies_outside_is_refused()
    {
        var plan = (await given.PlanAsync()).Summary.Id;
        var from = new StockArea(Of("30"), Length.Zero, Of("12"), Of("2 1/2"));
        var rows = given.Shop.CountRows();
        var outcome = await TryFinishAsync(plan, new MeasuredLeftover(-1, "12", "", true) { From = from });
        Assert.Contains("name a part that the stock does not have", outcome.Faults.Single().Message);
        Assert.Equal(rows, given.Shop.CountRows());
    }

    [Fact]
    public async Task Reopened_the_board_has_its_bad_places_again()
    {
        await SpoilAsync(BadPlaceKind.Corner, StockEdges.Far | StockEdges.Front, "2");
        var before = (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single();
        var plan = (await given.PlanAsync()).Summary.Id;
        await FinishAsync(plan, new MeasuredLeftover(0, "9", "", true));
        Assert.True((await given.Shop.Bench.ReopenAsync(plan, 0, 1, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
        Assert.Equal(before.Condition, (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single().Condition);
    }

    private static MeasuredLeftover Whole(string length) =>
        new(-1, length, "", true) { From = new(Length.Zero, Length.Zero, Of("41 3/8"), Of("2 1/2")) };

    private Task<Outcome<BenchView>> TryFinishAsync(Guid plan, MeasuredLeftover leftover) =>
        given.Shop.Bench.FinishAsync(
            plan,
            new FinishedStock(0, 1, leftover.Index >= 0, [leftover]),
            Some.Device,
            CommandId.New(),
            TestShop.Cancel
        );

    private async Task FinishAsync(Guid plan, MeasuredLeftover leftover)
    {
        var outcome = await TryFinishAsync(plan, leftover);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
    }

    private async Task<StockPiece> BinAsync() =>
        (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single(piece => piece.Place == StockPlace.Bin);

    private async Task SpoilAsync(BadPlaceKind kind, StockEdges where, string along)
    {
        var typed = new BadPlaceTyped(kind, where, along, kind == BadPlaceKind.End ? "" : "1");
        var service = given.Shop.Get<IStockConditionService>();
        var outcome = await service.AddBadPlaceAsync(board, typed, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
    }

    private static BadPlace Place(string x, string dx) => new(Of(x), Length.Zero, Of(dx), Of("2 1/2"));

    private static Length Of(string text) => LengthText.Parse(text, Some.Inch).Value;
}
