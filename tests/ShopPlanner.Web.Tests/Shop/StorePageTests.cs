using AngleSharp.Dom;
using Bunit;
using ShopPlanner.Services.Stores;
using ShopPlanner.Web.Features.Stores;

namespace ShopPlanner.Web.Tests.Shop;

/// <summary>What a store's saw does.</summary>
public sealed class StorePageTests
{
    [Fact]
    public async Task First_cuts_are_saved_and_a_usual_tolerance_is_filled_in()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var page = Open(context, shop);
        Field(page, "Free cuts per sheet").Typed("2");
        page.WaitForAssertion(() => Assert.Equal("1/8", Field(page, "Store cut tolerance").GetAttribute("data-shown")));
        Assert.Contains("up to 2 times", page.Find(".page-lead").TextContent, StringComparison.Ordinal);
        Assert.Equal("2", (await shop.Server.Get<IStoreService>().GetAsync(shop.Store.Id, ShopServer.Cancel))!.FirstCuts);
    }

    [Fact]
    public async Task A_number_that_is_none_is_marked_beside_its_field_and_can_be_mended()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var page = Open(context, shop);
        Field(page, "Free cuts per sheet").Typed("a few");
        page.WaitForAssertion(() =>
            Assert.Contains("‘a few’ isn't a number of cuts", page.Find(".fault").TextContent, StringComparison.Ordinal)
        );
        Assert.Equal("a few", Field(page, "Free cuts per sheet").GetAttribute("data-shown"));
        Field(page, "Free cuts per sheet").Typed("1");
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".fault")));
        Assert.Equal("1", (await shop.Server.Get<IStoreService>().GetAsync(shop.Store.Id, ShopServer.Cancel))!.FirstCuts);
    }

    private static IRenderedComponent<StorePage> Open(BunitContext context, PlannedShop shop)
    {
        var page = context.Render<StorePage>(given => given.Add(one => one.Id, shop.Store.Id));
        page.WaitForElement("h1");
        page.FindAll("button").Single(button => button.TextContent.Trim() == "Edit store").Click();
        return page;
    }

    private static IElement Field(IRenderedComponent<StorePage> page, string label) =>
        page.Find("#" + page.FindAll("label").Single(one => one.TextContent == label).GetAttribute("for"));
}
