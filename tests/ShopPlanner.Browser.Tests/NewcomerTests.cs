using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>
/// The first hour: from an empty shop to prices, offcuts, a design, its parts, a plan, boards that are bought, the cuts, and
/// leftovers in the bin. Every click is counted, a field that is gone to by hand as well.
/// </summary>
public sealed partial class NewcomerTests(EmptyShopFixture shop) : IClassFixture<EmptyShopFixture>
{
    private const int MostClicks = 40;
    private CountedClicks clicks = null!;

    [Fact]
    public async Task The_first_hour_has_no_dead_end()
    {
        var page = await shop.OpenAsync(Screen.Tablet);
        clicks = new(page);
        await page.GotoAsync("/");
        await Fields.SettledAsync(page);
        await SetUpAsync(page);
        await StartFromADesignAsync(page);
        var plan = await PlanAsync(page);
        await clicks.BuyAllAsync();
        await clicks.LinkAsync("Go to the bench");
        var tags = await CutAllAsync(page);
        await clicks.LinkAsync("Rack & bin");
        foreach (var tag in tags)
            await Expect(page.GetByText(tag, new() { Exact = true }).First).ToBeVisibleAsync();
        await page.GotoAsync(plan);
        await Expect(page.GetByText("All cut").First).ToBeVisibleAsync();
        await page.GotoAsync("/projects");
        await Expect(page.Locator("main .row .state")).ToHaveTextAsync("Building");
        await page.GotoAsync("/projects");
        await Expect(page.Locator("main .row .state")).ToHaveTextAsync("Building");
        clicks.Print();
        Assert.InRange(clicks.Count, 1, MostClicks);
    }

    private async Task SetUpAsync(IPage page)
    {
        await clicks.LinkAsync("Set up your shop");
        await clicks.ButtonAsync("Next");
        await Expect(page.GetByText("Table saw", new() { Exact = true }).First).ToBeVisibleAsync();
        await clicks.ButtonAsync("Next");
        await clicks.FillAsync("Store name", "Corner lumber");
        await PriceAsync(page, "Pine boards", "Pine 1x4", "8 ft", "7.98");
        await PriceAsync(page, "Pine boards", "Pine 1x3", "8 ft", "5.98");
        await PriceAsync(page, "Pine boards", "Pine 1x6", "8 ft", "12.98");
        await PriceAsync(page, "Construction lumber", "Whitewood 2x4", "8 ft", "4.48");
        await clicks.ButtonAsync("Save prices");
        await clicks.FillAsync("Offcuts", "Pine 1x4 36\nPine 1x3 20 1/2");
        await clicks.ButtonAsync("Put in the bin");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Ready to build" })).ToBeVisibleAsync();
    }

    private async Task StartFromADesignAsync(IPage page)
    {
        await clicks.LinkAsync("Start from a design");
        await clicks.ButtonAsync("Start a project from this: Mudroom bench");
        await page.ArriveAsync(Idea());
        await clicks.ButtonAsync("Make parts list");
        await clicks.LinkAsync("Open parts list");
    }

    private async Task<string> PlanAsync(IPage page)
    {
        await clicks.LinkAsync("Plan the cuts");
        await clicks.ButtonAsync("Plan the cuts");
        await page.ArriveAsync(Plan(), 60_000);
        return new Uri(page.Url).AbsolutePath;
    }

    private async Task<IReadOnlyList<string>> CutAllAsync(IPage page)
    {
        var tags = new List<string>();
        var finish = page.GetByRole(AriaRole.Button, new() { NameRegex = Finish() });
        for (var isLast = false; !isLast; )
        {
            await clicks.LinkAsync("All cuts done");
            await Expect(finish.First).ToBeVisibleAsync();
            isLast = await finish.CountAsync() == 1;
            await clicks.ClickAsync(finish.First, await finish.First.InnerTextAsync());
            await Expect(page.Locator(isLast ? ".next-cut.finished" : ".earlier")).ToBeVisibleAsync();
            tags.AddRange(await page.Locator(".write-tag .tag").AllInnerTextsAsync());
        }

        return tags;
    }

    private async Task PriceAsync(IPage page, string group, string material, string size, string price)
    {
        var field = page.GetByLabel($"Price of {material}, {size}", new() { Exact = true });
        if (!await field.IsVisibleAsync())
            await clicks.ClickAsync(page.GetByText(group, new() { Exact = true }).First, group);
        await clicks.FillAsync($"Price of {material}, {size}", price);
    }

    [GeneratedRegex("/projects/[0-9a-f-]{36}/idea$")]
    private static partial Regex Idea();

    [GeneratedRegex("/plans/[0-9a-f-]{36}$")]
    private static partial Regex Plan();

    // The first of them goes on to the next board, where there is one.
    [GeneratedRegex("^Finish(, then| this) (board|sheet)")]
    private static partial Regex Finish();
}
