using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>What is said of an order's materials before it is planned.</summary>
public sealed class OrderAdviceTests
{
    private const string Pine4 = "pine-1x4",
        Pine6 = "pine-1x6";

    [Fact]
    public async Task A_material_that_no_chosen_store_sells_is_named_with_a_store_that_does()
    {
        await using var shop = await TestShop.OpenAsync();
        var order = await OrderAsync(shop, [Some.Part("30", material: Pine4)], Some.Price());
        var unsold = (await AdviceAsync(shop, order)).Unsold.Single();
        Assert.Equal(("Pine 1x4", 4, false, (string?)null), (unsold.Material, unsold.Pieces, unsold.IsOnHand, unsold.Seller));
        Assert.Equal(order.Projects, unsold.Projects);

        var other = (await shop.Stores.CreateAsync("Mill outlet", Some.Inch, CommandId.New(), TestShop.Cancel)).Value!;
        await shop.Stores.SavePriceAsync(other.Id, Some.Price(material: Pine4), CommandId.New(), TestShop.Cancel);
        await shop.Stock.AddAsync(Some.Offcut("40", Pine4), Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        unsold = (await AdviceAsync(shop, order)).Unsold.Single();
        Assert.Equal(("Mill outlet", other.Id, true), (unsold.Seller, unsold.SellerId, unsold.IsOnHand));
        Assert.Empty((await AdviceAsync(shop, order with { Stores = [.. order.Stores, other.Id] })).Unsold);
    }

    // 16 pieces of 23 in, three to a board of 96 in by length: 4 boards of 1x3 at 8 are 32. A 1x6 of 5 1/2 in gives two strips of
    // 2 1/2 in beside a kerf: 2 boards at 9 are 18.
    [Fact]
    public async Task A_wider_board_ripped_into_strips_is_offered_where_it_costs_less()
    {
        await using var shop = await TestShop.OpenAsync();
        var parts = Some.Part("23", quantity: "16");
        var order = await OrderAsync(shop, [parts], Some.Price(price: "8"), Some.Price(price: "9", material: Pine6));
        var cheaper = (await AdviceAsync(shop, order)).Cheaper.Single();
        Assert.Equal(("Pine 1x3", "Pine 1x6", 2), (cheaper.Material, cheaper.Other, cheaper.Strips));
        Assert.Equal((Money.From(32), Money.From(18)), (cheaper.Cost, cheaper.OtherCost));
    }

    [Fact]
    public async Task What_costs_no_less_is_not_offered()
    {
        await using var shop = await TestShop.OpenAsync();
        var parts = Some.Part("23", quantity: "16");
        var order = await OrderAsync(shop, [parts], Some.Price(price: "8"), Some.Price(price: "15", material: Pine6));
        Assert.Empty((await AdviceAsync(shop, order)).Cheaper);
    }

    // 40 slats of 40 in by 5 1/2 take 17 boards of 96 in by length, 510; less than three sheets of 4608 square inches by area.
    [Fact]
    public async Task A_sheet_of_the_same_wood_is_offered_where_it_costs_less()
    {
        await using var shop = await TestShop.OpenAsync();
        var order = await OrderAsync(
            shop,
            [Some.Part("40", material: "oak-1x6", quantity: "40")],
            Some.Price(price: "30", material: "oak-1x6"),
            Some.Price(price: "90", material: "oak-ply-3-4", width: "48"),
            Some.Price(price: "20", material: "mdf-3-4", width: "48")
        );
        var cheaper = (await AdviceAsync(shop, order)).Cheaper.Single();
        Assert.Equal(("Red oak 1x6", "Red oak plywood 3/4 in", 0), (cheaper.Material, cheaper.Other, cheaper.Strips));
        Assert.Equal(Money.From(270), cheaper.OtherCost);
    }

    [Fact]
    public async Task An_order_of_nothing_has_no_advice()
    {
        await using var shop = await TestShop.OpenAsync();
        var order = await OrderAsync(shop, []);
        var advice = await AdviceAsync(shop, order);
        Assert.Empty(advice.Unsold);
        Assert.Empty(advice.Cheaper);
    }

    private static Task<MaterialAdvice> AdviceAsync(TestShop shop, PlanOrder order) =>
        shop.Get<IOrderAdvice>().OfAsync(order, TestShop.Cancel);

    private static async Task<PlanOrder> OrderAsync(TestShop shop, PartTexts[] parts, params PriceEdit[] prices)
    {
        var project = await Some.ProjectAsync(shop);
        if (parts.Length > 0)
            await shop.Parts.SaveAsync(project.Id, [.. parts.Select(Some.New)], TestShop.Cancel);
        var store = await Some.StoreAsync(shop, prices);
        return new PlanOrder([project.Id], null, [store.Id], UseRack: true, UseBin: true, Seconds: 1, []);
    }
}
