using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;

namespace ShopPlanner.Browser.Tests.Pages;

/// <summary>Every page against the rules of all pages. A page is opened once for all of them: opening takes longest.</summary>
[Collection(OneShop.Name)]
public sealed class EveryPageTests(BrowserFixture browser)
{
    public static TheoryData<string> Routes() => [.. FieldPages.Routes];

    [Fact]
    public void Every_page_is_known_to_these_tests() => Assert.Equal(FieldPages.Routes, Places.Known);

    [Theory]
    [MemberData(nameof(Routes))]
    public async Task A_page_keeps_the_rules(string route)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        var refused = Refused(page);
        await Places.GoAsync(page, route);
        var broken = refused.ToList();
        await AccessRule.BeginAsync(page);
        broken.AddRange(await ZoomRule.BrokenAsync(page));
        var hasForms = await page.Locator("main [data-opens]").CountAsync() > 0;
        // With its forms open a page holds all that it holds with them closed, and is looked at everywhere.
        broken.AddRange(await AccessRule.BrokenAsync(page, "closed", hasForms ? [AccessRule.Phone] : []));
        await page.SetViewportSizeAsync(Screen.Desktop.Width, Screen.Desktop.Height);
        if (!FieldPages.IsPlain(route))
            await Fields.OpenAllAsync(page);
        broken.AddRange(await JoinedWordsRule.BrokenAsync(page));
        broken.AddRange(await FocusRule.BrokenAsync(page));
        if (hasForms)
            broken.AddRange(await AccessRule.BrokenAsync(page, "open"));
        Assert.True(broken.Count == 0, string.Join("\n", broken));
        await page.Context.CloseAsync();
    }

    // What the content policy refused: no page wants what it forbids.
    private static List<string> Refused(IPage page)
    {
        var refused = new List<string>();
        page.Console += (_, line) =>
        {
            if (line.Text.Contains("Content Security Policy", StringComparison.OrdinalIgnoreCase))
                refused.Add(line.Text);
        };
        return refused;
    }
}
