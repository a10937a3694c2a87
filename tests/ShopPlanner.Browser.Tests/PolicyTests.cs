namespace ShopPlanner.Browser.Tests;

/// <summary>The content policy holds.</summary>
[Collection(OneShop.Name)]
public sealed class PolicyTests(BrowserFixture browser)
{
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
