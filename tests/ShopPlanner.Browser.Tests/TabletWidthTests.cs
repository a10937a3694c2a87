using ShopPlanner.Browser.Tests.Kept;

namespace ShopPlanner.Browser.Tests;

/// <summary>Beside the rail of an upright tablet every column can be read.</summary>
[Collection(OneShop.Name)]
public sealed class TabletWidthTests(BrowserFixture browser)
{
    public static TheoryData<int> Widths() => [701, 768, 820, 900, 1024];

    [Theory]
    [MemberData(nameof(Widths))]
    public async Task The_rack_and_the_bin_are_as_high_as_their_rows(int width)
    {
        var page = await browser.OpenAsync(new Screen("tablet", width, 1180, true));
        await Places.GoAsync(page, "/rack-and-bin");
        var rows = await page.EvaluateAsync<double[]>(
            "() => [...document.querySelectorAll('.stock-table tbody tr')].map(row => row.getBoundingClientRect().height)"
        );
        Assert.NotEmpty(rows);
        Assert.All(rows, height => Assert.InRange(height, 40, 130));
        Assert.Empty(await BrokenWordsAsync(page, ".stock-table td"));
        await page.Context.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Widths))]
    public async Task Every_cell_of_the_parts_is_in_sight(int width)
    {
        var page = await browser.OpenAsync(new Screen("tablet", width, 1180, true));
        await Places.GoAsync(page, "/projects/{Id:guid}/parts");
        var hidden = await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll(".sheet input")]
              .filter(cell => cell.getBoundingClientRect().right > document.documentElement.clientWidth
                || cell.getBoundingClientRect().left < 0)
              .map(cell => cell.getAttribute("aria-label"))
            """
        );
        Assert.Empty(hidden);
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"));
        await page.Context.CloseAsync();
    }

    // Cells whose text is broken within a word.
    private static Task<string[]> BrokenWordsAsync(Microsoft.Playwright.IPage page, string cells) =>
        page.EvaluateAsync<string[]>(
            """
            cells => [...document.querySelectorAll(cells)].filter(cell => {
              const words = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT), range = document.createRange();
              for (let text; (text = words.nextNode());)
                for (const { 0: word, index } of text.data.matchAll(/\S+/g)) {
                  range.setStart(text, index);
                  range.setEnd(text, index + word.length);
                  if (range.getClientRects().length > 1) return true;
                }
              return false;
            }).map(cell => cell.textContent.trim())
            """,
            cells
        );
}
