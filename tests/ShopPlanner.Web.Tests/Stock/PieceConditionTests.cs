using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Web.Features.Stock;
using ShopPlanner.Web.Frame;

namespace ShopPlanner.Web.Tests.Stock;

/// <summary>Bad places and edges as bought on the page of a piece: a board of the rack, 96 in long.</summary>
public sealed class PieceConditionTests : PageContext, IAsyncLifetime
{
    private ShopServer server = default!;
    private Guid board;

    public async ValueTask InitializeAsync()
    {
        server = await ShopServer.OpenAsync();
        Services.AddSingleton(server.Get<IStockService>());
        Services.AddSingleton(server.Get<IStockConditionService>());
        Services.AddSingleton(server.Get<IShopService>());
        Services.AddSingleton(server.Get<IMaterialService>());
        board = await AddAsync(new(StockPlace.Rack, "pine-1x3", "96", "", "1", ""));
    }

    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await server.DisposeAsync();
    }

    [Fact]
    public async Task A_bad_end_is_added_drawn_listed_and_removed()
    {
        var page = Open(board);
        await Named(page, "Add a bad place").ClickAsync();
        await Named(page, "Where").TypedAsync("end-right");
        await Named(page, "How long").TypedAsync("6");
        await page.Find("form.bad-place").PressAsync();

        Assert.Equal("Right end, 6″", page.Find(".bad-places li span").TextContent);
        Assert.Equal(2, page.FindAll("svg rect.bad-place").Count);
        Assert.Contains("Bad place: Right end, 6″", page.Find(".history").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("form.bad-place"));

        await Named(page, "Remove: Right end, 6″").ClickAsync();
        Assert.Empty((await NowAsync()).Condition.BadPlaces);
        Assert.Empty(page.FindAll("svg rect.bad-place"));
    }

    [Theory]
    [InlineData("end-left", "100", "", "", "", "is more than the piece: R1 is 96″ long")]
    [InlineData("spot", "2", "1", "95", "0", "puts part of it outside R1, 96″ long: at most 94″")]
    [InlineData("corner-top-left", "2", "-1", "", "", "is less than zero")]
    [InlineData("edge-bottom", "", "nothing", "", "", "is not a length")]
    [InlineData("end-left", "96", "", "", "", "would be bad all over: throw it away instead")]
    public async Task What_cannot_be_is_said_at_its_field_and_nothing_is_kept(
        string where,
        string along,
        string across,
        string fromEnd,
        string fromEdge,
        string said
    )
    {
        var page = Open(board);
        await Named(page, "Add a bad place").ClickAsync();
        foreach (
            var (name, text) in new[]
            {
                ("Where", where),
                ("How long", along),
                ("How wide", across),
                ("From the left end", fromEnd),
                ("From the top edge", fromEdge),
            }
        )
            await Named(page, name).TypedAsync(text);
        await page.Find("form.bad-place").PressAsync();
        Assert.Contains(said, page.Find("form.bad-place").TextContent, StringComparison.Ordinal);
        Assert.Empty((await NowAsync()).Condition.BadPlaces);
    }

    [Fact]
    public async Task Every_place_of_the_list_can_be_added()
    {
        var page = Open(board);
        await Named(page, "Add a bad place").ClickAsync();
        var places = page.FindAll("form.bad-place option").Select(option => option.GetAttribute("value")!).ToList();
        Assert.Equal(9, places.Count);
        foreach (var place in places)
        {
            if (page.FindAll("form.bad-place").Count == 0)
                await Named(page, "Add a bad place").ClickAsync();
            await Named(page, "Where").TypedAsync(place);
            foreach (var name in new[] { "How long", "How wide", "From the left end", "From the top edge" })
                await Named(page, name).TypedAsync("1");
            await page.Find("form.bad-place").PressAsync();
        }

        Assert.Equal(9, (await NowAsync()).Condition.BadPlaces.Count);
    }

    [Fact]
    public async Task A_bought_board_is_squared_at_its_left_end_until_the_tick_is_cleared()
    {
        var page = Open(board);
        var ticks = page.FindAll(".ticks input");
        Assert.Equal([true, false], ticks.Select(tick => tick.HasAttribute("checked")));
        await ticks[0].TypedAsync("false");
        Assert.Equal(StockEdges.None, (await NowAsync()).Condition.Untrimmed);
        await page.FindAll(".ticks input")[1].TypedAsync("true");
        Assert.Equal(StockEdges.Far, (await NowAsync()).Condition.Untrimmed);
    }

    [Fact]
    public async Task A_sheet_has_four_edges()
    {
        var sheet = await AddAsync(new(StockPlace.Rack, "birch-ply-3-4", "96", "48", "1", ""));
        var page = Open(sheet);
        Assert.Equal(4, page.FindAll(".ticks input").Count(tick => tick.HasAttribute("checked")));
        Assert.Contains("Edges to trim", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_list_of_the_rack_counts_bad_places()
    {
        var end = new BadPlaceTyped(BadPlaceKind.End, StockEdges.Near, "2", "");
        var conditions = server.Get<IStockConditionService>();
        Assert.True(
            (await conditions.AddBadPlaceAsync(board, end, LengthUnit.Inch, "test", CommandId.New(), ShopServer.Cancel)).Ok
        );
        var page = Render<StockPage>(one => one.AddCascadingValue(new Visitor("test tablet", null)));
        Assert.Equal("1 bad place", page.Find(".bad-count").TextContent);
    }

    private IRenderedComponent<StockPiecePage> Open(Guid piece) =>
        Render<StockPiecePage>(page => page.Add(one => one.Id, piece).AddCascadingValue(new Visitor("test tablet", null)));

    private async Task<Guid> AddAsync(StockAddition addition)
    {
        var added = await server
            .Get<IStockService>()
            .AddAsync(addition, LengthUnit.Inch, "test", CommandId.New(), ShopServer.Cancel);
        return added.Value!.Single().Id;
    }

    private async Task<StockPiece> NowAsync() =>
        (await server.Get<IStockService>().ListAsync(ShopServer.Cancel)).Single(piece => piece.Id == board);
}
