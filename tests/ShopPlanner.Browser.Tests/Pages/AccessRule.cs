using Deque.AxeCore.Commons;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;

namespace ShopPlanner.Browser.Tests.Pages;

/// <summary>
/// The rules of axe-core for WCAG 2.0 to 2.2, levels A and AA, on three screens, light and dark.
/// </summary>
internal static class AccessRule
{
    private const int Height = 900;

    /// <summary>The narrowest screen, where most is in each other's way.</summary>
    public const int Phone = 390;

    private static readonly int[] Widths = [1280, 820, Phone];

    /// <summary>Reads the script, once a page: reading it takes longer than running it.</summary>
    public static Task BeginAsync(IPage page) => page.EvaluateAsync(new BundledAxeScriptProvider().GetScript());

    /// <summary>What is broken, at every width and look.</summary>
    /// <param name="page">The page; its size and look are changed.</param>
    /// <param name="forms">Whether its forms are open or closed, for the report.</param>
    /// <param name="widths">Where it is looked at; all screens unless told otherwise.</param>
    public static async Task<List<string>> BrokenAsync(IPage page, string forms, params int[] widths)
    {
        var broken = new List<string>();
        foreach (var width in widths is [] ? Widths : widths)
        {
            await page.SetViewportSizeAsync(width, Height);
            // What stays in sight lies over what is scrolled past: targets are measured where the page begins.
            await page.EvaluateAsync("scrollTo(0, 0)");
            foreach (var look in new[] { ColorScheme.Light, ColorScheme.Dark })
            {
                await page.EmulateMediaAsync(new() { ColorScheme = look });
                await Fields.DrawnAsync(page);
                broken.AddRange((await RunAsync(page, look)).Select(one => $"At {width}, {look}, forms {forms}: {one}"));
            }
        }

        return broken;
    }

    // A look changes colours and nothing else: in the dark, the one rule that looks at colours is held against the page.
    private static Task<string[]> RunAsync(IPage page, ColorScheme look) =>
        page.EvaluateAsync<string[]>(
            """
            async isDark => {
              const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
              const rules = isDark ? { type: "rule", values: ["color-contrast"] } : { type: "tag", values: tags };
              const found = await axe.run(document, { runOnly: rules, resultTypes: ["violations"] });
              return found.violations.map(one => `${one.id}: ${one.help}: ` + one.nodes.slice(0, 3).map(node => node.html).join("; "));
            }
            """,
            look == ColorScheme.Dark
        );
}
