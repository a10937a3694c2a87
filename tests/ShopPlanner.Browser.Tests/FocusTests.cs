using Microsoft.Playwright;

namespace ShopPlanner.Browser.Tests;

/// <summary>The keyboard's place is seen on its way through a page.</summary>
[Collection(OneShop.Name)]
public sealed class FocusTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_ring_is_seen_wherever_the_keyboard_goes()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await Places.GoAsync(page, "/shop");
        var hidden = new List<string>();
        var kinds = new HashSet<string>();
        for (var i = 0; i < 40; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            var (kind, missing) = await HereAsync(page);
            kinds.Add(kind);
            if (kind != "BODY" && missing.Length > 0)
                hidden.Add(missing);
        }

        Assert.Empty(hidden);
        Assert.Superset(new HashSet<string> { "A", "BUTTON", "INPUT", "SELECT" }, kinds);
        await page.Context.CloseAsync();
    }

    private static async Task<(string Kind, string Missing)> HereAsync(IPage page)
    {
        var seen = await page.EvaluateAsync<string[]>(
            """
            () => {
              const here = document.activeElement, style = getComputedStyle(here);
              const isSeen = style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2;
              return [here.tagName, isSeen ? "" : here.outerHTML.slice(0, 120)];
            }
            """
        );
        return (seen[0], seen[1]);
    }
}
