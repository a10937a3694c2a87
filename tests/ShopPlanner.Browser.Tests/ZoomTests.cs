using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;

namespace ShopPlanner.Browser.Tests;

/// <summary>At 200 % a screen has half the pixels each way: the page still fits its width, and leaves room to work in.</summary>
public sealed class ZoomTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    // A desktop of 1280 by 800.
    private const int Width = 640,
        Height = 400;

    public static TheoryData<string> Routes() => [.. FieldPages.Routes];

    [Theory]
    [MemberData(nameof(Routes))]
    public async Task A_page_can_be_read_and_used_at_twice_the_size(string route)
    {
        var page = await browser.OpenAsync(new Screen("zoomed", Width, Height, Touch: false));
        await Places.GoAsync(page, route);
        Assert.Equal(Width, await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
        // What stays in place while the page is scrolled covers at most half of it.
        var covered = await page.EvaluateAsync<int>(
            """
            () => {
              window.scrollTo(0, document.documentElement.scrollHeight / 2);
              const stuck = [...document.querySelectorAll("body *")].filter(el => {
                const at = getComputedStyle(el), box = el.getBoundingClientRect();
                return (at.position === "sticky" || at.position === "fixed") && el.checkVisibility() && box.width > innerWidth / 2
                  && box.bottom > 0 && box.top < innerHeight;
              });
              const rows = new Set();
              for (const el of stuck) {
                const box = el.getBoundingClientRect();
                for (let y = Math.max(0, Math.ceil(box.top)); y < Math.min(innerHeight, box.bottom); y++) rows.add(y);
              }
              return rows.size;
            }
            """
        );
        Assert.InRange(covered, 0, Height / 2);
    }
}
