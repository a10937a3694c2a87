using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;

namespace ShopPlanner.Browser.Tests.Pages;

/// <summary>At 200 % a screen has half the pixels each way: the page still fits its width, and leaves room to work in.</summary>
internal static class ZoomRule
{
    // A desktop of 1280 by 800.
    private const int Width = 640,
        Height = 400;

    /// <summary>What is broken.</summary>
    /// <param name="page">The page; its size is changed.</param>
    public static async Task<List<string>> BrokenAsync(IPage page)
    {
        await page.SetViewportSizeAsync(Width, Height);
        await Fields.DrawnAsync(page);
        var broken = new List<string>();
        var wide = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth");
        if (wide != Width)
            broken.Add($"At twice the size the page is {wide} pixels wide, and the screen {Width}");
        var covered = await CoveredAsync(page);
        if (covered > Height / 2)
            broken.Add($"At twice the size {covered} of {Height} rows are covered by what stays in place");
        return broken;
    }

    private static Task<int> CoveredAsync(IPage page) =>
        page.EvaluateAsync<int>(
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
}
