using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>The tablet at the saw: a cut goes wrong, the rest is planned again, a board of the new plan is cut to its end, and the
/// bin has what was put into it.</summary>
public sealed partial class WrongCutTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task A_cut_goes_wrong_the_rest_is_planned_again_and_the_bin_is_true()
    {
        var page = await browser.OpenAsync(Screen.Tablet);
        await page.GotoAsync("/bench");
        await page.Locator(".bench-list a").First.ClickAsync();
        await SpoilAPieceAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan the rest again" }).ClickAsync();
        await Expect(page.Locator("h1")).ToContainTextAsync("Costs ");
        await page.GetByRole(AriaRole.Button, new() { Name = "Cut by the new plan" }).ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Cuts gone wrong");
        await page.GetByRole(AriaRole.Link, new() { Name = "Cut by the new plan" }).ClickAsync();
        var proposed = await CutABoardAsync(page);
        await page.GotoAsync("/bench/bin");
        foreach (var tag in proposed)
            await Expect(page.GetByRole(AriaRole.Region, new() { Name = tag, Exact = true })).ToBeVisibleAsync();
    }

    // The first cuts of a sheet give no part yet: they are made until one does.
    private static async Task SpoilAPieceAsync(IPage page)
    {
        var spoiled = page.GetByLabel(CannotBeUsed());
        for (var n = 0; n < 12; n++)
        {
            await page.Locator(".next-cut .went-wrong:visible").ClickAsync();
            await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Plan the rest again" })).ToBeVisibleAsync();
            if (await spoiled.CountAsync() > 0)
            {
                await spoiled.First.CheckAsync();
                return;
            }

            await page.GetByRole(AriaRole.Link, new() { Name = "Cancel" }).ClickAsync();
            await page.Locator(".next-cut").GetByRole(AriaRole.Button).ClickAsync();
            await Taps.RestAsync(page);
        }

        Assert.Fail("none of the first twelve cuts gives a part");
    }

    // Returns the tags that were proposed for what is kept.
    private static async Task<IReadOnlyList<string>> CutABoardAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "All cuts done" }).ClickAsync();
        var finish = page.GetByRole(AriaRole.Button, new() { NameRegex = FinishThis() });
        await Expect(finish).ToBeVisibleAsync();
        await Expect(page.Locator("fieldset .tag").First).ToBeVisibleAsync();
        var tags = await page.Locator("fieldset .tag").AllInnerTextsAsync();
        await finish.ClickAsync();
        await Expect(page.Locator(".next-cut.finished")).ToBeVisibleAsync();
        Assert.Equal(tags, await page.Locator(".write-tag .tag").AllInnerTextsAsync());
        return tags;
    }

    [GeneratedRegex("^Can't be used as ")]
    private static partial Regex CannotBeUsed();

    [GeneratedRegex("^Finish this (board|sheet)")]
    private static partial Regex FinishThis();
}
