using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>A press on a link counts, whenever it falls.</summary>
[Collection(OneShop.Name)]
public sealed class PressTests(BrowserFixture browser)
{
    [Theory]
    [InlineData("main a.name", "/projects/[0-9a-f-]{36}")]
    [InlineData("nav a[href='/stores']", "/stores$")]
    public async Task A_press_that_the_page_goes_live_under_leads_where_it_was_aimed(string link, string address)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        var mayGoLive = new TaskCompletionSource();
        await page.RouteAsync(
            "**/_blazor/negotiate*",
            async route =>
            {
                await mayGoLive.Task;
                await route.ContinueAsync();
            }
        );
        await page.GotoAsync("/projects");
        await page.Locator(link).First.HoverAsync();
        await page.Mouse.DownAsync();
        mayGoLive.SetResult();
        await Fields.SettledAsync(page);
        await page.Mouse.UpAsync();
        await Expect(page).ToHaveURLAsync(new Regex(address));
    }

    // As the bench does when an answer comes: what stands there is taken out and put back, or is written anew.
    [Theory]
    [InlineData("place.replaceChildren(...[...place.children])", "a:text-is('All cuts done')", "finish\\?all-made=true")]
    [InlineData("place.replaceChildren(...[...place.children].map(one => one.cloneNode(true)))", "a:text-is('Stop here')", "finish$")]
    public async Task A_press_that_the_bench_draws_anew_under_leads_where_it_was_aimed(string draw, string link, string address)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await Places.GoAsync(page, "/bench/{PlanId:guid}");
        await Expect(page.Locator("[data-saved]")).ToContainTextAsync("Saved");
        await page.Locator("[data-place] " + link).HoverAsync();
        await page.Mouse.DownAsync();
        await page.EvaluateAsync($"() => {{ const place = document.querySelector('[data-place]'); {draw}; }}");
        await page.Mouse.UpAsync();
        await Expect(page).ToHaveURLAsync(new Regex(address));
    }

    [Fact]
    public async Task A_press_that_ends_elsewhere_leads_nowhere()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/projects");
        await Fields.SettledAsync(page);
        await page.Locator("nav a[href='/stores']").HoverAsync();
        await page.Mouse.DownAsync();
        await page.Locator("h1").HoverAsync();
        await page.Mouse.UpAsync();
        await Fields.DrawnAsync(page);
        await Expect(page).ToHaveURLAsync(new Regex("/projects$"));
    }
}
