using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>Building a piece by its steps.</summary>
[Collection(OneShop.Name)]
public sealed class WorkTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_step_that_is_done_is_still_done_after_a_reload()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await Places.GoAsync(page, "/projects/{Id:guid}/build");
        var step = page.Locator(".work-step").First;
        await Expect(step.Locator(".work-picture svg, .work-says").First).ToBeVisibleAsync();
        await step.Locator(".buy-tick").ClickAsync();
        await Expect(step.Locator(".buy-tick")).ToHaveAttributeAsync("aria-pressed", "true");
        await page.ReloadAsync();
        await Fields.SettledAsync(page);
        await Expect(page.Locator(".work-step").First.Locator(".buy-tick")).ToHaveAttributeAsync("aria-pressed", "true");
        await page.GetByRole(AriaRole.Link, new() { Name = "Finish", Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Put on the shopping list" })).ToBeVisibleAsync();
        await page.Context.CloseAsync();
    }
}
