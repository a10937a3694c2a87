using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>A page may be left while its script is still on the way: the page that follows has nothing to do with it.</summary>
[Collection(OneShop.Name)]
public sealed class LeavingTests(BrowserFixture browser)
{
    [Theory]
    [InlineData("first of /projects", "", "sheet")]
    [InlineData("first of /projects", "", "steps")]
    [InlineData("idea", "", "idea")]
    [InlineData("idea", "?view=turn", "turn")]
    [InlineData("/weekends", "", "weekends")]
    public async Task What_arrives_after_that_spoils_nothing(string way, string query, string script)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        var address = await Places.AddressAsync(page, way) + query;
        var asked = new TaskCompletionSource();
        var mayArrive = new TaskCompletionSource();
        await page.RouteAsync(
            new Regex($"/scripts/{script}(\\.[a-z0-9]+)?\\.js"),
            async route =>
            {
                asked.TrySetResult();
                await mayArrive.Task;
                await route.ContinueAsync();
            }
        );
        await page.GotoAsync(address);
        await asked.Task.WaitAsync(TimeSpan.FromSeconds(45), TestContext.Current.CancellationToken);
        await page.Locator("nav a[href='/stores']").ClickAsync();
        var heading = page.GetByRole(AriaRole.Heading, new() { Name = "Stores", Level = 1 });
        await Expect(heading).ToBeVisibleAsync();
        mayArrive.SetResult();
        // The page asked first, so its own wait ends first; two round trips later what it would do is done.
        await page.EvaluateAsync($"() => import(new URL('./scripts/{script}.js', document.baseURI))");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a store" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Add a store" })).ToBeVisibleAsync();
        await Expect(page.Locator("#blazor-error-ui")).ToBeHiddenAsync();
        await Expect(heading).ToBeVisibleAsync();
    }
}
