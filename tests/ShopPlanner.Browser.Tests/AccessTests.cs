using Deque.AxeCore.Commons;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;

namespace ShopPlanner.Browser.Tests;

/// <summary>
/// Every page against the rules of axe-core for WCAG 2.0 to 2.2, levels A and AA, on three screens, light and dark, with its forms
/// closed and open.
/// </summary>
public sealed class AccessTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private const int Height = 900;
    private static readonly int[] Widths = [1280, 820, 390];

    public static TheoryData<string> Routes() => [.. FieldPages.Routes];

    [Theory]
    [MemberData(nameof(Routes))]
    public async Task A_page_keeps_the_rules_of_access(string route)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await Places.GoAsync(page, route);
        await page.EvaluateAsync(new BundledAxeScriptProvider().GetScript());
        var broken = await BrokenAsync(page, "closed");
        if (await page.Locator("main [data-opens]").CountAsync() > 0)
        {
            await page.SetViewportSizeAsync(Widths[0], Height);
            await Fields.OpenAllAsync(page);
            broken.AddRange(await BrokenAsync(page, "open"));
        }

        Assert.True(broken.Count == 0, string.Join("\n", broken));
    }

    private static async Task<List<string>> BrokenAsync(IPage page, string forms)
    {
        var broken = new List<string>();
        foreach (var width in Widths)
        foreach (var look in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            await page.SetViewportSizeAsync(width, Height);
            await page.EmulateMediaAsync(new() { ColorScheme = look });
            await Fields.DrawnAsync(page);
            broken.AddRange((await RunAsync(page)).Select(one => $"At {width}, {look}, forms {forms}: {one}"));
        }

        return broken;
    }

    // The script is read once a page: reading it takes longer than running it.
    private static Task<string[]> RunAsync(IPage page) =>
        page.EvaluateAsync<string[]>(
            """
            async () => {
              const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
              const found = await axe.run(document, { runOnly: { type: "tag", values: tags }, resultTypes: ["violations"] });
              return found.violations.map(one => `${one.id}: ${one.help}: ` + one.nodes.slice(0, 3).map(node => node.html).join("; "));
            }
            """
        );
}
