using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Stock;

/// <summary>Bad places and edges as bought of pieces on hand: noted, undone, measured again.</summary>
public sealed class ConditionTests : IAsyncLifetime
{
    private TestShop shop = null!;
    private StockPiece board = null!;

    private IStockConditionService Conditions => shop.Get<IStockConditionService>();

    // A board of 96 in, 2 1/2 in wide.
    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync();
        board = await AddAsync(Some.Offcut("96") with { Place = StockPlace.Rack });
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Theory]
    [InlineData(BadPlaceKind.End, StockEdges.Near, "6", "", "0 0 6 2.5", "bad place: Left end, 6″")]
    [InlineData(BadPlaceKind.End, StockEdges.Far, "1 ft", "", "84 0 12 2.5", "bad place: Right end, 12″")]
    [InlineData(BadPlaceKind.Edge, StockEdges.Back, "", "1/2", "0 2 96 0.5", "bad place: Bottom edge, ½″")]
    [InlineData(
        BadPlaceKind.Corner,
        StockEdges.Far | StockEdges.Front,
        "3",
        "1",
        "93 0 3 1",
        "bad place: Top right corner, 3″ × 1″"
    )]
    [InlineData(
        BadPlaceKind.Spot,
        StockEdges.None,
        "2",
        "1",
        "30 0.5 2 1",
        "bad place: 2″ × 1″, 30″ from the left end, ½″ from the top edge"
    )]
    [InlineData(
        BadPlaceKind.Spot,
        StockEdges.None,
        "50.8 mm",
        "2 1/2",
        "30 0 2 2.5",
        "bad place: 2″ of the length, 30″ from the left end"
    )]
    public async Task A_bad_place_is_noted_where_it_is(
        BadPlaceKind kind,
        StockEdges where,
        string along,
        string across,
        string place,
        string said
    )
    {
        var isSpot = kind == BadPlaceKind.Spot;
        var typed = new BadPlaceTyped(
            kind,
            where,
            along,
            across,
            isSpot ? "30" : "",
            !isSpot ? ""
                : across == "1" ? "1/2"
                : "0"
        );
        var now = Sure(
            await Conditions.AddBadPlaceAsync(board.Id, typed, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel)
        );
        Assert.Equal(place, Text(Assert.Single(now.Condition.BadPlaces)));
        var line = (await shop.Stock.HistoryAsync(board.Id, 1, TestShop.Cancel)).Single();
        Assert.Equal((StockEntryKind.Inspected, said), (line.Kind, line.Reason));
        Assert.Equal((board.Version + 1, board.Length, board.Width), (now.Version, now.Length, now.Width));
    }

    [Fact]
    public async Task A_piece_has_twenty_bad_places_at_most_and_they_may_overlap()
    {
        for (var i = 0; i < CutStock.MostBadPlaces; i++)
            Sure(await SpotAsync($"{i}"));
        Assert.Contains("has this bad place already", (await SpotAsync("3")).Faults.Single().Message);
        for (var i = 20; i < 50; i++)
            Assert.Contains("are the most that one piece has", (await SpotAsync($"{i}")).Faults.Single().Message);
        Assert.Equal(CutStock.MostBadPlaces, (await NowAsync()).Condition.BadPlaces.Count);
    }

    [Fact]
    public async Task A_bad_place_is_removed_once_and_every_line_can_be_undone()
    {
        var knot = Sure(await SpotAsync("30")).Condition.BadPlaces.Single();
        Assert.Empty(
            Sure(await Conditions.RemoveBadPlaceAsync(board.Id, knot, Some.Device, TestShop.Cancel)).Condition.BadPlaces
        );
        var again = await Conditions.RemoveBadPlaceAsync(board.Id, knot, Some.Device, TestShop.Cancel);
        Assert.Contains("another device", again.Faults.Single().Message);
        await UndoAsync();
        Assert.Equal([knot], (await NowAsync()).Condition.BadPlaces);
        var noted = (await shop.Stock.HistoryAsync(board.Id, 10, TestShop.Cancel)).Single(line =>
            line.Reason.StartsWith("bad place:", StringComparison.Ordinal)
        );
        Assert.True((await shop.Stock.UndoAsync(noted.Id, Some.Device, TestShop.Cancel)).Ok);
        Assert.Empty((await NowAsync()).Condition.BadPlaces);
    }

    [Fact]
    public async Task A_bad_place_outlives_throwing_away_and_taking_back()
    {
        var now = Sure(await SpotAsync("30"));
        Assert.True((await shop.Stock.DiscardAsync(now.Id, now.Version, "split", Some.Device, TestShop.Cancel)).Ok);
        Assert.Equal(OutcomeKind.Missing, (await SpotAsync("40")).Kind);
        await UndoAsync();
        Assert.Equal(now.Condition, (await NowAsync()).Condition);
    }

    // What was bad up to an end is bad up to the new one; what lies beyond it is gone.
    [Theory]
    [InlineData("97", "90 0 7 2.5; 30 1 2 1")]
    [InlineData("95", "90 0 5 2.5; 30 1 2 1")]
    [InlineData("31", "30 1 1 1")]
    [InlineData("20", "")]
    public async Task A_piece_measured_again_keeps_the_bad_places_that_it_still_has(string length, string places)
    {
        var end = new BadPlaceTyped(BadPlaceKind.End, StockEdges.Far, "6", "");
        Sure(await Conditions.AddBadPlaceAsync(board.Id, end, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel));
        var now = Sure(await SpotAsync("30"));
        var again = await shop.Stock.CorrectAsync(now.Id, now.Version, length, "", "", Some.Inch, Some.Device, TestShop.Cancel);
        Assert.Equal(places, string.Join("; ", Sure(again).Condition.BadPlaces.Select(Text)));
    }

    [Fact]
    public async Task What_is_bought_has_edges_as_bought_and_what_is_found_has_none()
    {
        var sheet = await AddAsync(new(StockPlace.Rack, Some.Birch, "96", "48", "1", ""));
        var offcut = await AddAsync(Some.Offcut("20"));
        Assert.Equal(
            (StockEdges.Near, StockEdges.All, StockEdges.None),
            (board.Condition.Untrimmed, sheet.Condition.Untrimmed, offcut.Condition.Untrimmed)
        );
    }

    [Fact]
    public async Task An_edge_is_set_and_not_toggled()
    {
        Assert.Equal(StockEdges.None, Sure(await EdgeAsync(StockEdges.Near, false)).Condition.Untrimmed);
        var rows = shop.CountRows();
        Assert.Equal(StockEdges.None, Sure(await EdgeAsync(StockEdges.Near, false)).Condition.Untrimmed);
        Assert.Equal(rows, shop.CountRows());
        Assert.Equal(StockEdges.Far, Sure(await EdgeAsync(StockEdges.Far, true)).Condition.Untrimmed);
        Assert.Equal(
            "right end as bought, to trim",
            (await shop.Stock.HistoryAsync(board.Id, 1, TestShop.Cancel)).Single().Reason
        );
    }

    [Theory]
    [InlineData(StockEdges.Front)]
    [InlineData(StockEdges.None)]
    [InlineData(StockEdges.Ends)]
    public async Task A_board_has_two_ends_to_trim_and_no_more(StockEdges edge) =>
        Assert.Equal(
            "isn't one of the piece's: choose left end or right end",
            (await EdgeAsync(edge, true)).Faults.Single().Message
        );

    private Task<Outcome<StockPiece>> EdgeAsync(StockEdges edge, bool asBought) =>
        Conditions.SetEdgeAsync(board.Id, edge, asBought, Some.Device, TestShop.Cancel);

    private Task<Outcome<StockPiece>> SpotAsync(string fromEnd) =>
        Conditions.AddBadPlaceAsync(
            board.Id,
            new(BadPlaceKind.Spot, StockEdges.None, "2", "1", fromEnd, "1"),
            Some.Inch,
            Some.Device,
            CommandId.New(),
            TestShop.Cancel
        );

    private async Task UndoAsync()
    {
        var line = (await shop.Stock.HistoryAsync(board.Id, 1, TestShop.Cancel)).Single();
        Assert.True((await shop.Stock.UndoAsync(line.Id, Some.Device, TestShop.Cancel)).Ok);
    }

    private async Task<StockPiece> NowAsync() =>
        (await shop.Stock.ListAsync(TestShop.Cancel)).Single(piece => piece.Id == board.Id);

    private async Task<StockPiece> AddAsync(StockAddition addition) =>
        Sure(await shop.Stock.AddAsync(addition, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel)).Single();

    private static string Text(BadPlace place) =>
        FormattableString.Invariant(
            $"{place.X.ToInches():0.###} {place.Y.ToInches():0.###} {place.Dx.ToInches():0.###} {place.Dy.ToInches():0.###}"
        );

    private static T Sure<T>(Outcome<T> outcome)
        where T : class
    {
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value!;
    }
}
