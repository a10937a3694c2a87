using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>
/// The tablet at the saw, in a shop with a half-cut plan: a board is cut to its end and its leftovers measured, the next one is
/// left after its first cut, and what is not cut is planned again from what is there.
/// </summary>
public sealed partial class TabletTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task A_board_is_cut_to_its_end_and_one_that_went_wrong_is_planned_again()
    {
        var page = await browser.OpenAsync(Screen.Tablet);
        var clicks = new CountedClicks(page);
        await page.GotoAsync("/bench");
        await clicks.ClickAsync(page.Locator(".bench-list a").First, "the plan");
        await CutToTheEndAsync(page, clicks);
        await clicks.ButtonAsync("^Finish, then (board|sheet)");
        await Expect(page.Locator(".earlier")).ToBeVisibleAsync();
        await LeaveAsync(page, clicks);
        await clicks.LinkAsync("Plan the rest");
        await Fields.SettledAsync(page);
        var old = page.Url;
        await clicks.ButtonAsync("^Plan the cuts$");
        await page.WaitForURLAsync(url => Plan().IsMatch(url) && url != old, new() { Timeout = 60_000 });
        await Expect(page.Locator(".overview a").First).ToBeVisibleAsync();
        clicks.Print();
    }

    // One press a cut, and nothing to scroll for: the next cut's button stands where the last one stood.
    private static async Task CutToTheEndAsync(IPage page, CountedClicks clicks)
    {
        var done = page.Locator(".next-cut").GetByRole(AriaRole.Button);
        var measure = page.GetByRole(AriaRole.Link, new() { Name = "Measure the leftovers", Exact = true });
        await Expect(done.Or(measure)).ToBeVisibleAsync();
        while (await done.CountAsync() == 1)
        {
            await Expect(done).ToBeInViewportAsync();
            var which = await page.Locator(".next-cut .which:visible").InnerTextAsync();
            await clicks.ClickAsync(done, "Done");
            await Expect(page.Locator(".next-cut .which:visible")).Not.ToHaveTextAsync(which);
            await Taps.RestAsync(page);
        }

        await clicks.ClickAsync(measure, "Measure the leftovers");
    }

    private static async Task LeaveAsync(IPage page, CountedClicks clicks)
    {
        await clicks.LinkAsync("Stop here");
        await Expect(page.GetByText("Not cut: ").First).ToBeVisibleAsync();
        await clicks.ButtonAsync("^Finish this (board|sheet)");
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Plan the rest", Exact = true })).ToBeVisibleAsync();
    }

    [GeneratedRegex("/plans/[0-9a-f-]{36}$")]
    private static partial Regex Plan();
}
