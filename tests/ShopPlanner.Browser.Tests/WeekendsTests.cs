using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>The schedule of the demo on every screen: a task that is put off moves, and stays there after a reload.</summary>
public sealed class WeekendsTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task A_task_that_is_put_off_moves_and_the_page_fits_every_screen()
    {
        foreach (var screen in new[] { Screen.Desktop, Screen.Tablet, Screen.Phone })
        {
            var page = await browser.OpenAsync(screen);
            await page.GotoAsync("/weekends");
            await Fields.SettledAsync(page);
            await Expect(page.Locator(".weekend-card").First).ToBeVisibleAsync();
            Assert.True(
                await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"),
                $"the page is wider than the screen: {screen}"
            );
        }

        var board = await browser.OpenAsync(Screen.Desktop);
        await board.GotoAsync("/weekends");
        await Fields.SettledAsync(board);
        var first = board.GetByRole(AriaRole.Button, new() { Name = "Put off to" }).First;
        var title = (await first.GetAttributeAsync("aria-label"))!.Split(": ", 2)[1];
        await first.ClickAsync();
        var back = board.GetByRole(AriaRole.Button, new() { Name = $"As early as possible: {title}", Exact = true });
        await Expect(back.First).ToBeVisibleAsync();
        await board.ReloadAsync();
        await Fields.SettledAsync(board);
        await back.First.ClickAsync();
        await Expect(back).ToHaveCountAsync(0);
    }
}
