using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>
/// Pictures of a page without a line and of two devices' texts side by side, on every screen, light and dark, into the folder
/// named by SHOP_PLANNER_PICTURES. Not part of the tests: run by tests/pictures.sh.
/// </summary>
public sealed class KeptPictures(KeptFixture kept) : IClassFixture<KeptFixture>
{
    private static readonly string Folder =
        Environment.GetEnvironmentVariable("SHOP_PLANNER_PICTURES") ?? Path.Combine(AppContext.BaseDirectory, "pictures");

    [Fact(Explicit = true)]
    public async Task Take()
    {
        var step = 1;
        foreach (var screen in Screen.All)
        foreach (var dark in new[] { false, true })
            await TakeAsync(screen, dark, $"{step += 2}/64", $"{step + 1}/64");
    }

    private async Task TakeAsync(Screen screen, bool dark, string mine, string theirs)
    {
        var name = $"{screen.Name}-{(dark ? "dark" : "light")}.png";
        var page = await kept.OpenAsync(screen, dark);
        await page.GotoAsync("/shop");
        await Fields.SettledAsync(page);
        kept.Line.Drop();
        await Expect(page.Locator("body[data-line=down]")).ToBeVisibleAsync();
        await TypeAsync(page, mine);
        await page.ScreenshotAsync(new() { Path = Path.Combine(Folder, "kept-lost-" + name) });
        var other = await kept.OpenElsewhereAsync();
        await other.GotoAsync("/shop");
        await Fields.SettledAsync(other);
        await TypeAsync(other, theirs);
        await Expect(other.Locator("[data-save-state]")).ToHaveTextAsync("Saved");
        kept.Line.Restore();
        await Expect(page.Locator(".field-conflict")).ToBeVisibleAsync();
        await page.ScreenshotAsync(new() { Path = Path.Combine(Folder, "kept-conflict-" + name) });
        await page.Context.CloseAsync();
        await other.Context.CloseAsync();
    }

    private static async Task TypeAsync(IPage page, string text)
    {
        await page.GetByLabel("Table saw: kerf", new() { Exact = true }).FillAsync(text);
        await page.GetByLabel("Table saw: kerf", new() { Exact = true }).PressAsync("Tab");
    }
}
