using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>A bad place from the piece in the hand to the saw, on a phone and on a tablet.</summary>
public sealed class BadPlaceTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task The_form_shows_what_the_chosen_place_needs_and_keeps_the_rest()
    {
        var page = await OpenAsync(Screen.Phone);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a bad place", Exact = true }).ClickAsync();
        await ShowsAsync(page, length: true, width: false, spot: false);
        await page.GetByLabel("How long", new() { Exact = true }).FillAsync("3");
        await ChooseAsync(page, "edge-top");
        await ShowsAsync(page, length: false, width: true, spot: false);
        await ChooseAsync(page, "spot");
        await ShowsAsync(page, length: true, width: true, spot: true);
        await ChooseAsync(page, "corner-top-left");
        await ShowsAsync(page, length: true, width: true, spot: false);
        await Expect(page.GetByLabel("How long", new() { Exact = true })).ToHaveValueAsync("3");
    }

    [Fact]
    public async Task A_bad_end_is_seen_on_the_piece_on_the_plan_and_at_the_bench()
    {
        var page = await OpenAsync(Screen.Tablet);
        var tag = (await page.Locator("h1 .tag").TextContentAsync())!;
        await BadPlaces.AddAsync(page, "end-left", "3");
        await Expect(page.Locator(".piece-condition svg rect.bad-place >> visible=true")).ToHaveCountAsync(1);
        await page.GotoAsync("/plans/new");
        await Fields.SettledAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan the cuts" }).ClickAsync();
        var layout = page.Locator(".layout", new() { Has = page.Locator($".tag:text-is('{tag}')") });
        await layout.WaitForAsync(new() { Timeout = 60_000 });
        await Expect(layout.Locator("svg rect.bad-place >> visible=true")).ToHaveCountAsync(1);
        await Expect(layout).ToContainTextAsync("bad place: Left end, 3");
        await Expect(layout).ToContainTextAsync("Crosshatched: bad place, keep out");
        await page.GotoAsync(await BenchAsync(page, tag));
        await Expect(page.Locator(".take")).ToContainTextAsync("bad place: Left end, 3");
        await Expect(page.Locator(".next-cut .keep-out:visible")).ToContainTextAsync("Bad place: keep out.");
    }

    private static async Task<string> BenchAsync(IPage page, string tag)
    {
        var plan = new Uri(page.Url).AbsolutePath.Replace("/plans/", "/bench/", StringComparison.Ordinal);
        for (var number = 1; ; number++)
        {
            await page.GotoAsync($"{plan}/{number}");
            if (await page.Locator($".take .tag:text-is('{tag}')").CountAsync() > 0)
                return page.Url;
        }
    }

    private static async Task ChooseAsync(IPage page, string where) =>
        await page.GetByLabel("Where", new() { Exact = true }).SelectOptionAsync(where);

    private static async Task ShowsAsync(IPage page, bool length, bool width, bool spot)
    {
        foreach (
            var (label, isShown) in new[]
            {
                ("How long", length),
                ("How wide", width),
                ("From the left end", spot),
                ("From the top edge", spot),
            }
        )
            await Expect(page.GetByLabel(label, new() { Exact = true })).ToBeVisibleAsync(new() { Visible = isShown });
    }

    // The first board of the demo's rack: a plan of all projects cuts it.
    private async Task<IPage> OpenAsync(Screen screen)
    {
        var page = await browser.OpenAsync(screen);
        await page.GotoAsync("/rack-and-bin?place=rack");
        var piece = await page.Locator("main a.tag").First.GetAttributeAsync("href");
        await page.GotoAsync(piece!);
        await Fields.SettledAsync(page);
        return page;
    }
}
