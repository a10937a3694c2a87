using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;

namespace ShopPlanner.Browser.Tests;

/// <summary>The keyboard's place is seen on every page.</summary>
public sealed class FocusTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    public static TheoryData<string> Routes() => [.. FieldPages.Routes];

    [Fact]
    public void Every_page_is_known_to_these_tests() => Assert.Equal(FieldPages.Routes, Places.Known);

    // A ring: at least two pixels (WCAG 2.2, success criterion 2.4.13) in another colour than nothing.
    [Theory]
    [MemberData(nameof(Routes))]
    public async Task A_ring_is_seen_on_every_link_button_and_field(string route)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await Places.GoAsync(page, route);
        if (!FieldPages.IsPlain(route))
            await Fields.OpenAllAsync(page);
        // The keyboard was used last: what gets the focus from now on shows it.
        await page.Keyboard.PressAsync("Tab");
        var seen = await page.EvaluateAsync<string[][]>(
            """
            () => {
              const all = [...document.querySelectorAll("a[href], button, input, select, textarea, summary")];
              const usable = all.filter(el => !el.matches(":disabled") && el.type !== "hidden" && el.checkVisibility());
              return usable.map(el => {
                el.focus();
                const style = getComputedStyle(el);
                const isSeen = document.activeElement === el && el.matches(":focus-visible") && style.outlineStyle !== "none"
                  && parseFloat(style.outlineWidth) >= 2 && !/, 0\)$|transparent/.test(style.outlineColor);
                const kind = el.matches("a") ? "link" : el.matches("button, summary") ? "button" : "field";
                return [kind, isSeen ? "" : `${el.outerHTML.slice(0, 120)}: ${style.outline}`];
              });
            }
            """
        );
        Assert.All(seen, one => Assert.Equal("", one[1]));
        Assert.Equal(await KindsAsync(page), seen.Select(one => one[0]).Distinct().Order());
        await page.Context.CloseAsync();
    }

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

    // What the page has, so that a page of which nothing was looked at does not pass.
    private static async Task<IEnumerable<string>> KindsAsync(IPage page)
    {
        var kinds = new Dictionary<string, string>
        {
            ["button"] = "button:visible:enabled, summary:visible",
            ["field"] = "input:visible:enabled, select:visible:enabled, textarea:visible:enabled",
            ["link"] = "a[href]:visible",
        };
        var present = new List<string>();
        foreach (var (kind, selector) in kinds)
            if (await page.Locator(selector).CountAsync() > 0)
                present.Add(kind);
        Assert.Contains("link", present);
        return present.Order(StringComparer.Ordinal);
    }
}
