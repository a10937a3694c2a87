using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Buying;

/// <summary>What is bought has its ends as bought, and a plan from the rack needs no more than the plan that bought it.</summary>
public sealed class BoughtConditionTests
{
    private static CancellationToken Cancel => TestShop.Cancel;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task The_rest_of_a_bought_plan_needs_nothing_bought(bool begun)
    {
        await using var given = await BuyingShop.OpenAsync(real: true);
        await given.BoughtAsync(1, 2, 3);
        if (begun)
            await given.FinishAsync(1);
        Assert.All(
            (await given.Shop.Stock.ListAsync(Cancel)).Where(piece => piece.Place == StockPlace.Rack),
            piece => Assert.Equal(StockCondition.AsBought(StockForm.Board), piece.Condition)
        );
        var rest = await given.Given.PlanAsync(given.Given.Order(replaces: given.Plan));
        Assert.Empty(rest.Plan.Unplaced);
        Assert.Empty(rest.Plan.Buy);
        Assert.Equal(begun ? 2 : 3, rest.Plan.Layouts.Sum(layout => layout.Copies));
    }

    [Fact]
    public async Task A_bought_board_with_a_bad_place_is_to_be_bought_again_or_planned_anew()
    {
        await using var given = await BuyingShop.OpenAsync();
        await given.BoughtAsync(1, 2, 3);
        var board = (await given.Shop.Stock.ListAsync(Cancel)).Single(piece => piece.Tag == "R2");
        var conditions = given.Shop.Get<IStockConditionService>();
        var end = new BadPlaceTyped(BadPlaceKind.End, StockEdges.Far, "3", "");
        var spoiled = BuyingShop.Sure(
            await conditions.AddBadPlaceAsync(board.Id, end, Some.Inch, Some.Device, CommandId.New(), Cancel)
        );
        var line = await given.LineAsync();
        Assert.Equal((1, BoughtState.Flawed), (line.Left, line.Bought[1].State));
        await given.FinishAsync(1);
        Assert.Contains(await given.Shop.Stock.ListAsync(Cancel), piece => piece.Tag == "R2");
        BuyingShop.Sure(await conditions.RemoveBadPlaceAsync(board.Id, spoiled.Condition.BadPlaces[0], Some.Device, Cancel));
        Assert.Equal(0, (await given.LineAsync()).Left);
    }

    // The plan trims one end only; it may need the other to the last bit.
    [Theory]
    [InlineData(StockEdges.Far, true, BoughtState.Flawed)]
    [InlineData(StockEdges.Near, false, BoughtState.InRack)]
    public async Task An_edge_that_the_plan_does_not_trim_is_a_reason_too(StockEdges edge, bool asBought, BoughtState state)
    {
        await using var given = await BuyingShop.OpenAsync();
        await given.BoughtAsync(1);
        var board = (await given.Shop.Stock.ListAsync(Cancel)).Single();
        var conditions = given.Shop.Get<IStockConditionService>();
        BuyingShop.Sure(await conditions.SetEdgeAsync(board.Id, edge, asBought, Some.Device, Cancel));
        Assert.Equal(state, (await given.LineAsync()).Bought.Single().State);
    }

    [Fact]
    public async Task A_board_bought_at_the_bench_is_as_bought_when_it_is_reopened_from_the_list()
    {
        await using var given = await BuyingShop.OpenAsync();
        await given.BoughtAsync(1);
        await given.FinishAsync(1, true, "5");
        BuyingShop.Sure(await given.ReopenAsync(1));
        Assert.Equal(StockCondition.AsBought(StockForm.Board), (await given.Shop.Stock.ListAsync(Cancel)).Single().Condition);
    }
}
