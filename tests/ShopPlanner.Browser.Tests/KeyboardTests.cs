using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>From the home page to the printed packet without a mouse; the keyboard's place is seen at every stop.</summary>
public sealed partial class KeyboardTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private const int MostStops = 150;

    [Fact]
    public async Task A_packet_is_printed_by_keyboard_alone()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/");
        await Fields.SettledAsync(page);
        await GoAsync(page, "Cut plans");
        await Expect(page.Locator("h1", new() { HasText = "Cut plans" })).ToBeVisibleAsync();
        await GoAsync(page, "Plan the cuts");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Plan the cuts", Level = 1 })).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Plan the cuts" })).ToBeEnabledAsync();
        await GoAsync(page, "Plan the cuts");
        await page.ArriveAsync(Plan(), 60_000);
        // The address changes before the plan is drawn.
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Packet" }).First).ToBeVisibleAsync();
        var packet = await page.RunAndWaitForDownloadAsync(() => GoAsync(page, "Packet"));
        var content = await File.ReadAllBytesAsync((await packet.PathAsync())!, TestContext.Current.CancellationToken);
        Assert.Equal("%PDF-", Encoding.ASCII.GetString(content, 0, 5));
    }

    // Goes on by Tab until a link or button whose name begins so has the focus, and presses it.
    private static async Task GoAsync(IPage page, string name)
    {
        for (var stop = 0; stop < MostStops; stop++)
        {
            await page.Keyboard.PressAsync("Tab");
            var here = await page.EvaluateAsync<string[]>(
                """
                () => {
                  const el = document.activeElement, style = getComputedStyle(el);
                  const isSeen = style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2;
                  const name = el.getAttribute("aria-label") ?? el.textContent.trim();
                  return [el.tagName, name, isSeen ? "" : el.outerHTML.slice(0, 120)];
                }
                """
            );
            // A page that was gone to begins at its heading: that is no stop of the keyboard.
            if (here[0] is not ("BODY" or "H1"))
                Assert.Equal("", here[2]);
            if (here[0] is "A" or "BUTTON" && here[1].StartsWith(name, StringComparison.Ordinal))
            {
                await page.Keyboard.PressAsync("Enter");
                return;
            }
        }

        Assert.Fail($"No link or button '{name}' was reached in {MostStops} stops");
    }

    [GeneratedRegex("/plans/[0-9a-f-]{36}$")]
    private static partial Regex Plan();
}
