using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Pictures;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Sawing;

/// <summary>What page, bench and packet say and draw of bad places. Three legs of 30 in; a rack board of 96 in with a bad left end
/// of 4 in.</summary>
public sealed class BadPlaceWordsTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private PlanView plan = null!;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync(change: services => services.AddSingleton<ICutPlanner, ShopCutPlanner>());
        var rack = new StockAddition(StockPlace.Rack, Some.Pine, "96", "", "1", "a little cupped");
        var board = (await given.Shop.Stock.AddAsync(rack, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel)).Value![0];
        var end = new BadPlaceTyped(BadPlaceKind.End, StockEdges.Near, "4", "");
        var conditions = given.Shop.Get<IStockConditionService>();
        Assert.True(
            (await conditions.AddBadPlaceAsync(board.Id, end, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel)).Ok
        );
        plan = await given.PlanAsync();
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    private int Layout => Enumerable.Range(0, plan.Plan.Layouts.Length).Single(i => plan.Plan.Layouts[i].Stock == "R1");

    [Fact]
    public void Before_it_is_cut_a_board_tells_its_note_and_its_bad_places()
    {
        Assert.Equal("a little cupped; bad place: Left end, 4″, with the tag at the left", StockNotes.Of(plan, "R1"));
        var price = plan.Request.Stock.Single(stock => !stock.Offcut).Id;
        Assert.Equal("", StockNotes.Of(plan, price));
    }

    [Fact]
    public void The_cut_that_takes_the_bad_wood_off_says_so_and_those_after_it_do_not()
    {
        var steps = CutTexts.Steps(plan, Layout);
        Assert.Equal("1a is scrap (bad place), keep 1b (bad place)", steps[0].Gives);
        Assert.Equal("2a is scrap (bad place), keep 2b", steps[1].Gives);
        Assert.All(steps.Skip(2), step => Assert.DoesNotContain("bad place", step.Gives, StringComparison.Ordinal));
        Assert.Equal([true, true, .. steps.Skip(2).Select(_ => false)], steps.Select(step => step.IsNearBadPlace));
    }

    [Fact]
    public async Task Every_drawing_of_the_board_has_the_bad_place_and_the_trim()
    {
        var area = new StockArea(default, default, Core.Measures.Length.FromInches(4), plan.Request.Stock[0].Width);
        Assert.Equal([area], PlanPictures.ForLayout(plan, Layout).BadPlaces);
        Assert.Equal([area], PlanPictures.ForOverview(plan, _ => false)[Layout].Picture.BadPlaces);
        var bench = (await given.Shop.Bench.GetAsync(plan.Summary.Id, TestShop.Cancel))!;
        var number = bench.Stocks.Single(stock => stock.Layout == Layout).Number;
        Assert.Equal([area], PlanPictures.ForBench(bench, number).BadPlaces);
        Assert.Single(PlanPictures.ForLayout(plan, Layout).Trims);
        Assert.Equal(StockEdges.Near, PlanLayouts.EdgesToTrim(plan, Layout));
    }

    [Theory]
    [InlineData(StockEdges.All, 4)]
    [InlineData(StockEdges.Near | StockEdges.Back, 2)]
    [InlineData(StockEdges.None, 0)]
    public async Task A_sheet_is_drawn_with_the_trims_that_it_still_needs(StockEdges edges, int trims)
    {
        var rack = new StockAddition(StockPlace.Rack, Some.Birch, "96", "48", "1", "");
        var added = await given.Shop.Stock.AddAsync(rack, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        var sheet = added.Value![0];
        foreach (var edge in BadPlaceWords.Each(StockEdges.All))
            sheet = (
                await given
                    .Shop.Get<IStockConditionService>()
                    .SetEdgeAsync(sheet.Id, edge, edges.HasFlag(edge), Some.Device, TestShop.Cancel)
            ).Value!;
        var material = (await given.Shop.Materials.ListAsync(TestShop.Cancel)).Single(one => one.Id == Some.Birch);
        var picture = StockPictures.Of(sheet, material, await given.Shop.Shop.GetAsync(TestShop.Cancel));
        Assert.Equal(trims, picture.Trims.Length);
        var all = picture.Trims;
        Assert.All(all, one => Assert.True(one.Dx.IsPositive && one.Dy.IsPositive));
        Assert.DoesNotContain(all, one => all.Any(other => one != other && Overlaps(one, other)));
    }

    private static bool Overlaps(StockArea a, StockArea b) =>
        a.X < b.X + b.Dx && b.X < a.X + a.Dx && a.Y < b.Y + b.Dy && b.Y < a.Y + a.Dy;
}
