using Microsoft.Playwright;

namespace ShopPlanner.Browser.Tests;

/// <summary>The keyboard's place is seen on every page.</summary>
public sealed class FocusTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private const int Steps = 40;

    public static TheoryData<string> Places() =>
        [
            "/",
            "/designs",
            "/plans",
            "/plans/new",
            "/projects",
            "/rack-and-bin",
            "/shop",
            "/stores",
            "/workings",
            "/workings/sag?span=36&load=75%20lb&unit=in",
            "/bench",
        ];

    [Theory]
    [MemberData(nameof(Places))]
    public async Task A_ring_is_seen_wherever_the_keyboard_goes(string place)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync(place, new() { WaitUntil = WaitUntilState.NetworkIdle });
        var kinds = new HashSet<string>();
        var hidden = new List<string>();
        for (var i = 0; i < Steps; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            var seen = await page.EvaluateAsync<string[]>(
                """
                () => {
                  const here = document.activeElement, style = getComputedStyle(here);
                  const isSeen = style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2;
                  return [here.tagName, isSeen ? "" : here.outerHTML.slice(0, 120)];
                }
                """
            );
            if (seen[0] == "BODY")
                continue;
            kinds.Add(seen[0]);
            if (seen[1].Length > 0)
                hidden.Add(seen[1]);
        }

        Assert.Empty(hidden);
        Assert.Contains("A", kinds);
        await page.Context.CloseAsync();
    }
}
