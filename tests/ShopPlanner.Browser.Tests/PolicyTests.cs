using ShopPlanner.Browser.Tests.Kept;

namespace ShopPlanner.Browser.Tests;

/// <summary>The content policy holds on every page, and no page wants what it forbids.</summary>
public sealed class PolicyTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    public static TheoryData<string> Routes() => [.. FieldPages.Routes];

    [Theory]
    [MemberData(nameof(Routes))]
    public async Task Nothing_of_a_page_is_refused(string route)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        var refused = new List<string>();
        page.Console += (_, line) =>
        {
            if (line.Text.Contains("Content Security Policy", StringComparison.OrdinalIgnoreCase))
                refused.Add(line.Text);
        };
        await Places.GoAsync(page, route);
        Assert.Empty(refused);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_style_sheet_written_into_a_page_does_nothing()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await Places.GoAsync(page, "/workings");
        var colour = await page.EvaluateAsync<string>(
            """
            () => {
              document.head.append(Object.assign(document.createElement("style"), { textContent: "h1 { color: rgb(1, 2, 3) }" }));
              return getComputedStyle(document.querySelector("h1")).color;
            }
            """
        );
        Assert.NotEqual("rgb(1, 2, 3)", colour);
        await page.Context.CloseAsync();
    }
}
