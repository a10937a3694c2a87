using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Stock;

/// <summary>Bad places that no piece can have: a board of 96 in, 2 1/2 in wide.</summary>
public sealed class BadPlaceInputTests : IAsyncLifetime
{
    private TestShop shop = null!;
    private StockPiece board = null!;

    private IStockConditionService Conditions => shop.Get<IStockConditionService>();

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync();
        var rack = Some.Offcut("96") with { Place = StockPlace.Rack };
        var added = await shop.Stock.AddAsync(rack, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        board = added.Value!.Single();
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Theory]
    [InlineData(BadPlaceKind.End, StockEdges.Near, "97", "", "", "", "Along", "is more than the piece: R1 is 96″ long")]
    [InlineData(BadPlaceKind.End, StockEdges.Near, "96", "", "", "", "R1", "would be bad all over: throw it away instead")]
    [InlineData(
        BadPlaceKind.End,
        StockEdges.Front,
        "6",
        "",
        "",
        "",
        "Where",
        "isn't a place of that kind: choose one from the list"
    )]
    [InlineData(
        BadPlaceKind.End,
        StockEdges.Ends,
        "6",
        "",
        "",
        "",
        "Where",
        "isn't a place of that kind: choose one from the list"
    )]
    [InlineData(
        BadPlaceKind.Corner,
        StockEdges.Near,
        "6",
        "1",
        "",
        "",
        "Where",
        "isn't a place of that kind: choose one from the list"
    )]
    [InlineData(
        (BadPlaceKind)9,
        StockEdges.Near,
        "6",
        "1",
        "",
        "",
        "Where",
        "isn't a place of that kind: choose one from the list"
    )]
    [InlineData(BadPlaceKind.Edge, StockEdges.Front, "", "3", "", "", "Across", "is more than the piece: R1 is 2 ½″ wide")]
    [InlineData(BadPlaceKind.End, StockEdges.Near, "-6", "", "", "", "Along", "is less than zero: a length is zero or more")]
    [InlineData(BadPlaceKind.End, StockEdges.Near, "0", "", "", "", "Along", "must be more than zero")]
    [InlineData(BadPlaceKind.Spot, StockEdges.None, "2", "1", "96", "0", "FromEnd", "is outside the piece: R1 is 96″ long")]
    [InlineData(
        BadPlaceKind.Spot,
        StockEdges.None,
        "2",
        "1",
        "95",
        "0",
        "FromEnd",
        "puts part of it outside R1, 96″ long: at most 94″"
    )]
    [InlineData(
        BadPlaceKind.Spot,
        StockEdges.None,
        "2",
        "1",
        "30",
        "2",
        "FromEdge",
        "puts part of it outside R1, 2 ½″ wide: at most 1 ½″"
    )]
    [InlineData(
        BadPlaceKind.Spot,
        StockEdges.None,
        "2",
        "1",
        "-1",
        "0",
        "FromEnd",
        "is less than zero: a length is zero or more"
    )]
    public async Task What_cannot_be_is_refused_in_words_that_say_what_would_be_right(
        BadPlaceKind kind,
        StockEdges where,
        string along,
        string across,
        string fromEnd,
        string fromEdge,
        string field,
        string message
    )
    {
        var rows = shop.CountRows();
        var typed = new BadPlaceTyped(kind, where, along, across, fromEnd, fromEdge);
        var outcome = await Conditions.AddBadPlaceAsync(
            board.Id,
            typed,
            Some.Inch,
            Some.Device,
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Equal((field, message), (outcome.Faults.Single().Field, outcome.Faults.Single().Message));
        Assert.Equal(rows, shop.CountRows());
    }
}
