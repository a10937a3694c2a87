using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>A project is duplicated, deleted, taken back at once, and restored from the trash.</summary>
public sealed class TrashTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task A_duplicate_is_deleted_taken_back_and_restored_from_the_trash()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/projects");
        await Fields.SettledAsync(page);
        var first = page.Locator("main a.name").First;
        var name = (await first.TextContentAsync())!.Trim() + " copy";
        await first.ClickAsync();
        await EditAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Duplicate project" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = name })).ToBeVisibleAsync();
        await Expect(page.GetByLabel("Part, row 1", new() { Exact = true })).Not.ToHaveValueAsync("");

        await DeleteAsync(page);
        await Expect(page.GetByText($"{name} is in the trash.")).ToBeVisibleAsync();
        await Expect(page.Locator("main a.name", new() { HasText = name })).ToHaveCountAsync(0);
        await page.Locator("[data-note-undo]").ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = name })).ToBeVisibleAsync();

        await DeleteAsync(page);
        await page.GetByRole(AriaRole.Link, new() { Name = "Trash" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = $"Restore: {name}" }).ClickAsync();
        await Expect(page.GetByText($"{name} is back.")).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "The trash is empty" })).ToBeVisibleAsync();
        await page.GotoAsync("/projects");
        await Expect(page.Locator("main a.name", new() { HasText = name })).ToHaveCountAsync(1);
    }

    private static async Task DeleteAsync(IPage page)
    {
        await EditAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Delete project" }).ClickAsync();
        await page.ArriveAsync(url => url.EndsWith("/projects", StringComparison.Ordinal));
    }

    private static async Task EditAsync(IPage page)
    {
        await Fields.SettledAsync(page);
        if (await page.Locator("[data-scope='project']").CountAsync() == 0)
            await page.Locator("[data-opens='project']").ClickAsync();
    }
}
