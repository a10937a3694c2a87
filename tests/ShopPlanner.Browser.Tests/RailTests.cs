using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>The places at the foot of a phone.</summary>
[Collection(OneShop.Name)]
public sealed class RailTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_phone_reaches_the_seldom_used_places_and_the_look_under_more()
    {
        var page = await browser.OpenAsync(Screen.Phone);
        await page.GotoAsync("/projects");
        await Fields.SettledAsync(page);
        var rail = page.GetByRole(AriaRole.Navigation, new() { Name = "Places", Exact = true });
        await Expect(rail.GetByRole(AriaRole.Link)).ToHaveCountAsync(5);
        await rail.GetByRole(AriaRole.Button, new() { Name = "More", Exact = true }).ClickAsync();
        await Expect(page.Locator(".shop-menu").GetByText("Theme: same as device")).ToBeVisibleAsync();
        await page.Locator(".shop-menu").GetByText("Theme: same as device").ClickAsync();
        await Expect(page.Locator("html")).ToHaveAttributeAsync("data-look", "light");
        await rail.GetByRole(AriaRole.Button, new() { Name = "More", Exact = true }).ClickAsync();
        await page.Locator(".shop-menu").GetByText("Setup", new() { Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Setup", Exact = true })).ToBeVisibleAsync();
        await Expect(rail.Locator(".more-places .active")).ToBeVisibleAsync();
        await page.Context.CloseAsync();
    }
}
