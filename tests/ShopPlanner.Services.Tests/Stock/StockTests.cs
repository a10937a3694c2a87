using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Stock;

public sealed class StockTests : IAsyncLifetime
{
    private TestShop shop = null!;

    public async ValueTask InitializeAsync() => shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task Each_piece_gets_its_own_tag_and_lists_go_longest_first()
    {
        await AddAsync(Some.Offcut("20", quantity: "2"));
        await AddAsync(Some.Offcut("41 3/8"));
        await AddAsync(Some.Offcut("96") with { Place = StockPlace.Rack });
        var pieces = await shop.Stock.ListAsync(TestShop.Cancel);
        Assert.Equal(["R1", "B3", "B1", "B2"], pieces.Select(piece => piece.Tag));
        Assert.All(pieces, piece => Assert.Equal(Length.FromInches(2, 1, 2), piece.Width));
    }

    [Fact]
    public async Task A_tag_is_never_given_twice()
    {
        var first = (await AddAsync(Some.Offcut("20"))).Single();
        Assert.True((await shop.Stock.DiscardAsync(first.Id, first.Version, "split", Some.Device, TestShop.Cancel)).Ok);
        Assert.Equal("B2", (await AddAsync(Some.Offcut("20"))).Single().Tag);
    }

    [Fact]
    public async Task A_refused_addition_uses_up_no_tag()
    {
        Assert.Equal(
            OutcomeKind.Faulty,
            (await shop.Stock.AddAsync(Some.Offcut("12 1/0"), Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel)).Kind
        );
        Assert.Equal("B1", (await AddAsync(Some.Offcut("12 1/2"))).Single().Tag);
    }

    [Theory]
    [InlineData("-5", "1", "Length")]
    [InlineData("0", "1", "Length")]
    [InlineData("NaN", "1", "Length")]
    [InlineData("1e400", "1", "Length")]
    [InlineData("", "1", "Length")]
    [InlineData("12", "0", "Quantity")]
    [InlineData("12", "1000000000", "Quantity")]
    public async Task What_cannot_be_is_refused_at_its_member(string length, string quantity, string member)
    {
        var rows = shop.CountRows();
        var outcome = await shop.Stock.AddAsync(
            Some.Offcut(length, quantity: quantity),
            Some.Inch,
            Some.Device,
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.Equal((OutcomeKind.Faulty, member), (outcome.Kind, outcome.Faults.Single().Field));
        Assert.Equal(rows, shop.CountRows());
    }

    [Fact]
    public async Task A_piece_measured_anew_keeps_its_history_and_can_be_undone()
    {
        var piece = (await AddAsync(Some.Offcut("20"))).Single();
        var now = (
            await shop.Stock.CorrectAsync(piece.Id, piece.Version, "19", "", "planed", Some.Inch, Some.Device, TestShop.Cancel)
        ).Value!;
        Assert.Equal((Length.FromInches(19), "planed"), (now.Length, now.Note));
        var entry = (await shop.Stock.HistoryAsync(piece.Id, 10, TestShop.Cancel))[0];
        Assert.Equal((StockEntryKind.Corrected, Some.Device), (entry.Kind, entry.Device));
        Assert.True((await shop.Stock.UndoAsync(entry.Id, Some.Device, TestShop.Cancel)).Ok);
        Assert.Equal(Length.FromInches(20), (await shop.Stock.ListAsync(TestShop.Cancel)).Single().Length);
        Assert.Equal(3, (await shop.Stock.HistoryAsync(piece.Id, 10, TestShop.Cancel)).Count);
        Assert.Equal(OutcomeKind.Faulty, (await shop.Stock.UndoAsync(entry.Id, Some.Device, TestShop.Cancel)).Kind);
    }

    [Fact]
    public async Task An_entry_that_a_later_one_rests_on_is_not_undone()
    {
        var piece = (await AddAsync(Some.Offcut("20"))).Single();
        await shop.Stock.CorrectAsync(piece.Id, piece.Version, "19", "", "", Some.Inch, Some.Device, TestShop.Cancel);
        var logged = (await shop.Stock.HistoryAsync(piece.Id, 10, TestShop.Cancel))[1];
        var outcome = await shop.Stock.UndoAsync(logged.Id, Some.Device, TestShop.Cancel);
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Contains("later change", outcome.Faults.Single().Message);
    }

    [Fact]
    public async Task Two_devices_changing_one_piece_get_a_conflict()
    {
        var piece = (await AddAsync(Some.Offcut("20"))).Single();
        await shop.Stock.CorrectAsync(piece.Id, piece.Version, "19", "", "", Some.Inch, Some.Device, TestShop.Cancel);
        Assert.Equal(
            OutcomeKind.Conflict,
            (await shop.Stock.CorrectAsync(piece.Id, piece.Version, "18", "", "", Some.Inch, Some.Device, TestShop.Cancel)).Kind
        );
        Assert.Equal(
            OutcomeKind.Conflict,
            (await shop.Stock.DiscardAsync(piece.Id, piece.Version, "", Some.Device, TestShop.Cancel)).Kind
        );
    }

    [Theory]
    [InlineData(LengthUnit.Inch, "19″ × 2 ½″")]
    [InlineData(LengthUnit.Millimetre, "482.6 mm × 63.5 mm")]
    public async Task A_conflict_tells_what_stands_there_in_the_unit_asked_in(LengthUnit unit, string stands)
    {
        var piece = (await AddAsync(Some.Offcut("20"))).Single();
        await shop.Stock.CorrectAsync(piece.Id, piece.Version, "19", "", "", Some.Inch, Some.Device, TestShop.Cancel);
        var outcome = await shop.Stock.CorrectAsync(piece.Id, piece.Version, "18", "", "", unit, Some.Device, TestShop.Cancel);
        Assert.Equal(stands, outcome.Faults.Single().Value);
    }

    [Theory]
    [InlineData(LengthUnit.Inch, "19″ × 2 ½″")]
    [InlineData(LengthUnit.Millimetre, "482.6 mm × 63.5 mm")]
    public async Task A_conflict_in_throwing_away_tells_it_in_the_shops_unit(LengthUnit unit, string stands)
    {
        var settings = await shop.Shop.GetAsync(TestShop.Cancel);
        Assert.True((await shop.Shop.SaveAsync(settings with { Unit = unit }, TestShop.Cancel)).Ok);
        var piece = (await AddAsync(Some.Offcut("20"))).Single();
        await shop.Stock.CorrectAsync(piece.Id, piece.Version, "19", "", "", Some.Inch, Some.Device, TestShop.Cancel);
        var outcome = await shop.Stock.DiscardAsync(piece.Id, piece.Version, "", Some.Device, TestShop.Cancel);
        Assert.Equal(stands, outcome.Faults.Single().Value);
    }

    [Fact]
    public async Task A_piece_that_is_gone_is_missing()
    {
        var piece = (await AddAsync(Some.Offcut("20"))).Single();
        await shop.Stock.DiscardAsync(piece.Id, piece.Version, "split", Some.Device, TestShop.Cancel);
        Assert.Equal(
            OutcomeKind.Missing,
            (await shop.Stock.DiscardAsync(piece.Id, 2, "split", Some.Device, TestShop.Cancel)).Kind
        );
    }

    // A clock that jumps must not reorder the ledger.
    [Fact]
    public async Task The_ledger_is_in_the_order_of_writing_whatever_the_clock_says()
    {
        var piece = (await AddAsync(Some.Offcut("20"))).Single();
        shop.Clock.AdjustTime(new DateTimeOffset(2020, 1, 1, 0, 0, 0, TimeSpan.Zero));
        await shop.Stock.CorrectAsync(piece.Id, piece.Version, "19", "", "", Some.Inch, Some.Device, TestShop.Cancel);
        var history = await shop.Stock.HistoryAsync(piece.Id, 10, TestShop.Cancel);
        Assert.Equal([StockEntryKind.Corrected, StockEntryKind.Logged], history.Select(entry => entry.Kind));
        Assert.Equal(2020, history[0].WhenUtc.Year);
        Assert.Equal(DateTimeKind.Utc, history[0].WhenUtc.Kind);
    }

    private async Task<IReadOnlyList<StockPiece>> AddAsync(StockAddition addition)
    {
        var outcome = await shop.Stock.AddAsync(addition, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }
}
