using Microsoft.Playwright;

namespace ShopPlanner.Browser.Tests.Pages;

/// <summary>The keyboard's place is seen: a ring of at least two pixels (WCAG 2.2, success criterion 2.4.13) in another colour
/// than nothing, on every link, button and field.</summary>
internal static class FocusRule
{
    /// <summary>What has the focus and does not show it, and kinds of which nothing was looked at.</summary>
    public static async Task<List<string>> BrokenAsync(IPage page)
    {
        // The keyboard was used last: what gets the focus from now on shows it.
        await page.Keyboard.PressAsync("Tab");
        var seen = await SeenAsync(page);
        var broken = seen.Where(one => one[1].Length > 0).Select(one => $"No ring on {one[1]}").ToList();
        broken.AddRange((await KindsAsync(page)).Except(seen.Select(one => one[0])).Select(kind => $"No {kind} was looked at"));
        return broken;
    }

    private static Task<string[][]> SeenAsync(IPage page) =>
        page.EvaluateAsync<string[][]>(
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
