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

    [Fact]
    public async Task A_task_is_dragged_to_another_window_and_moved_on_a_phone_by_its_menu()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/weekends");
        await Fields.SettledAsync(page);
        // Everything of a project waits for its parts.
        var task = (await page.Locator("[data-task$='/cut']").First.GetAttributeAsync("data-task"))!;
        var card = $".weekend-card:has([data-task='{task}'])";
        var target = page.Locator($"{card} + .weekend-card").First;
        var window = (await target.GetAttributeAsync("data-window"))!;
        await DragAsync(page, page.Locator($"[data-task='{task}'] .weekend-grip").First, target);
        await Expect(page.Locator(card).First).ToHaveAttributeAsync("data-window", window, new() { Timeout = 20_000 });
        Assert.Equal(
            task,
            await page.EvaluateAsync<string>(
                """
                project => [...document.querySelectorAll("[data-task]")]
                  .find(one => one.dataset.task.startsWith(project)).dataset.task
                """,
                task[..^"cut".Length]
            )
        );

        var phone = await browser.OpenAsync(Screen.Phone);
        await phone.GotoAsync("/weekends");
        await Fields.SettledAsync(phone);
        var mine = phone.Locator($"[data-task='{task}']").First;
        await mine.GetByRole(AriaRole.Button, new() { Name = "Undo move" }).ClickAsync();
        await Expect(phone.GetByRole(AriaRole.Button, new() { Name = "Undo move" }))
            .ToHaveCountAsync(0, new() { Timeout = 20_000 });
        await mine.GetByRole(AriaRole.Button, new() { Name = "Move to" }).ClickAsync();
        await phone.Locator(".weekend-targets button").Nth(2).ClickAsync();
        await Expect(phone.GetByRole(AriaRole.Button, new() { Name = "Undo move" }).First)
            .ToBeVisibleAsync(new() { Timeout = 20_000 });
        Assert.True(await phone.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        await phone.GetByRole(AriaRole.Button, new() { Name = "Undo move" }).First.ClickAsync();
    }

    private static async Task DragAsync(IPage page, ILocator grip, ILocator target)
    {
        await target.Locator("h3").ScrollIntoViewIfNeededAsync();
        await grip.ScrollIntoViewIfNeededAsync();
        var from = (await grip.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(from.X + (from.Width / 2), from.Y + (from.Height / 2));
        await page.Mouse.DownAsync();
        // The page scrolls while the pointer is held at its edge.
        for (var n = 0; n < 200 && (await target.BoundingBoxAsync())!.Y > 400; n++)
            await page.Mouse.MoveAsync(300 + (n % 2), page.ViewportSize!.Height - 5);
        var to = (await target.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(to.X + 60, to.Y + 20, new() { Steps = 3 });
        await page.Mouse.UpAsync();
    }
}
