using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>
/// Somebody with three projects, one of them half cut: the other two are planned together and bought, a board is cut, and the rest
/// is planned again.
/// </summary>
public sealed partial class ThreeProjectsTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task What_is_bought_is_not_bought_again()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        var clicks = new CountedClicks(page);
        await page.GotoAsync("/plans/new");
        await Fields.SettledAsync(page);
        await clicks.ButtonAsync("^Plan the cuts$");
        await page.ArriveAsync(Plan(), 60_000);
        var first = page.Url;
        await Expect(page.Locator(".overview a").First).ToBeVisibleAsync();
        await clicks.BuyAllAsync();
        await clicks.LinkAsync("Go to the bench");
        await clicks.LinkAsync("All cuts done");
        await clicks.ButtonAsync("^Finish this (board|sheet)");
        await Expect(page.Locator("[data-saved] [role=status]")).ToHaveTextAsync("✓Saved on the shop's computer");
        await page.GotoAsync(first);
        await Fields.SettledAsync(page);
        await clicks.LinkAsync("Plan the rest");
        await Fields.SettledAsync(page);
        await clicks.ButtonAsync("^Plan the cuts$");
        await page.ArriveAsync(url => Plan().IsMatch(url) && url != first, 60_000);
        await Expect(page.Locator(".summary .large dd").First).ToHaveTextAsync("$0.00");
        await page.GotoAsync(first);
        await Expect(page.GetByText("This plan is canceled")).ToBeVisibleAsync();
        clicks.Print();
    }

    [GeneratedRegex("/plans/[0-9a-f-]{36}$")]
    private static partial Regex Plan();
}
