using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>
/// The first hour: from an empty shop to prices, offcuts, a design, its parts, a plan, the cuts, and leftovers in the bin. Every
/// click is counted, a field that is gone to by hand as well.
/// </summary>
public sealed partial class NewcomerTests(EmptyShopFixture shop) : IClassFixture<EmptyShopFixture>
{
    private const int MostClicks = 45;
    private readonly List<string> clicks = [];

    [Fact]
    public async Task The_first_hour_has_no_dead_end()
    {
        var page = await shop.OpenAsync(Screen.Tablet);
        await page.GotoAsync("/");
        await Fields.SettledAsync(page);
        await SetUpAsync(page);
        await StartFromADesignAsync(page);
        var plan = await PlanAsync(page);
        var tags = await CutAllAsync(page);
        await LinkAsync(page, "Rack & bin");
        foreach (var tag in tags)
            await Expect(page.GetByText(tag, new() { Exact = true }).First).ToBeVisibleAsync();
        await page.GotoAsync(plan);
        await Expect(page.GetByText("All cut").First).ToBeVisibleAsync();
        await page.GotoAsync("/projects");
        await Expect(page.Locator("main .row .state")).ToHaveTextAsync("Building");
        TestContext.Current.SendDiagnosticMessage($"{clicks.Count} clicks: {string.Join(", ", clicks)}");
        Assert.InRange(clicks.Count, 1, MostClicks);
    }

    private async Task SetUpAsync(IPage page)
    {
        await LinkAsync(page, "Set up your shop");
        await ButtonAsync(page, "Next");
        await Expect(page.GetByText("Table saw", new() { Exact = true }).First).ToBeVisibleAsync();
        await ButtonAsync(page, "Next");
        await FillAsync(page, "Store name", "Corner lumber");
        await PriceAsync(page, "Pine boards", "Pine 1x4", "8 ft", "7.98");
        await PriceAsync(page, "Pine boards", "Pine 1x3", "8 ft", "5.98");
        await PriceAsync(page, "Construction lumber", "Whitewood 2x4", "8 ft", "4.48");
        await ButtonAsync(page, "Save prices");
        await FillAsync(page, "Offcuts", "Pine 1x4 36\nPine 1x3 20 1/2");
        await ButtonAsync(page, "Put in the bin");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Ready to build" })).ToBeVisibleAsync();
    }

    private async Task StartFromADesignAsync(IPage page)
    {
        await LinkAsync(page, "Start from a design");
        await ButtonAsync(page, "Start a project from this: Boot-room bench");
        await page.WaitForURLAsync(Idea());
        await ButtonAsync(page, "Make parts list");
        await LinkAsync(page, "Open parts list");
    }

    private async Task<string> PlanAsync(IPage page)
    {
        await LinkAsync(page, "Plan the cuts");
        await ButtonAsync(page, "Plan the cuts");
        await page.WaitForURLAsync(Plan(), new() { Timeout = 60_000 });
        var plan = new Uri(page.Url).AbsolutePath;
        await LinkAsync(page, "Go to the bench");
        return plan;
    }

    private async Task<IReadOnlyList<string>> CutAllAsync(IPage page)
    {
        var tags = new List<string>();
        var next = page.GetByRole(AriaRole.Link, new() { NameRegex = Next() });
        while (true)
        {
            await LinkAsync(page, "All cuts done");
            await ButtonAsync(page, "^Finish this (board|sheet)");
            await Expect(page.GetByText("Finished", new() { Exact = true }).First).ToBeVisibleAsync();
            tags.AddRange(await page.Locator(".write-tag .tag").AllInnerTextsAsync());
            if (await next.CountAsync() == 0)
                return tags;
            await ClickAsync(next, "Next");
        }
    }

    private async Task PriceAsync(IPage page, string group, string material, string size, string price)
    {
        var field = page.GetByLabel($"Price of {material}, {size}", new() { Exact = true });
        if (!await field.IsVisibleAsync())
            await ClickAsync(page.GetByText(group, new() { Exact = true }).First, group);
        await FillAsync(page, $"Price of {material}, {size}", price);
    }

    private async Task FillAsync(IPage page, string label, string text)
    {
        var field = page.GetByLabel(label, new() { Exact = true });
        await ClickAsync(field, label);
        await field.FillAsync(text);
    }

    private Task LinkAsync(IPage page, string name) =>
        ClickAsync(page.GetByRole(AriaRole.Link, new() { Name = name, Exact = true }).First, name);

    private Task ButtonAsync(IPage page, string name) =>
        ClickAsync(page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex(name) }).First, name);

    private async Task ClickAsync(ILocator what, string name)
    {
        await what.ClickAsync();
        clicks.Add(name);
    }

    [GeneratedRegex("/projects/[0-9a-f-]{36}/idea$")]
    private static partial Regex Idea();

    [GeneratedRegex("/plans/[0-9a-f-]{36}$")]
    private static partial Regex Plan();

    [GeneratedRegex("^Next: (board|sheet) [0-9]+$")]
    private static partial Regex Next();
}
