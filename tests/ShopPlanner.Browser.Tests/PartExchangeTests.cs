using System.Text;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>Parts out of files and other projects, and out as a file.</summary>
public sealed class PartExchangeTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private const string Table =
        "Qty;Part;Material;Length (mm);Width (mm);Cost\n" + "2;Rail;pine-1x3;508;;1,20\nx;Panel;birch plywood 3/4;300;250,5;9\n";

    [Fact]
    public async Task A_file_is_looked_at_then_added_and_taken_back()
    {
        var page = await BeginAsync("Imported");
        await page.GetByRole(AriaRole.Button, new() { Name = "Import CSV" }).ClickAsync();
        await ChooseAsync(page, Table);
        await Expect(page.GetByText("2 rows, 1 to fix.")).ToBeVisibleAsync();
        await Expect(page.GetByText("Columns not used: Cost.")).ToBeVisibleAsync();
        await Expect(page.GetByText("‘x’ is not a number of pieces")).ToBeVisibleAsync();
        await Expect(Cell(page, "Part, row 1")).ToHaveValueAsync("");
        await ChooseAsync(page, Table.Replace("x;Panel", "1;Panel", StringComparison.Ordinal));
        await page.GetByRole(AriaRole.Button, new() { Name = "Add 2 rows" }).ClickAsync();
        await Expect(Cell(page, "Part, row 1")).ToHaveValueAsync("Rail");
        await Expect(Cell(page, "Length, row 1")).ToHaveValueAsync("20");
        await Expect(Cell(page, "Length, row 2")).ToHaveValueAsync("300 mm");
        await page.Locator("[data-note-undo]").ClickAsync();
        await Expect(Cell(page, "Part, row 1")).ToHaveValueAsync("");
    }

    [Fact]
    public async Task What_was_exported_is_imported_into_another_project()
    {
        var page = await BeginAsync("Exported");
        await page.GetByRole(AriaRole.Button, new() { Name = "Import CSV" }).ClickAsync();
        await ChooseAsync(page, "Part,Material,Length,Qty\nLeg ½,pine-1x3,34½,4\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add 1 row" }).ClickAsync();
        await Expect(Cell(page, "Part, row 1")).ToHaveValueAsync("Leg ½");
        var file = await page.RunAndWaitForDownloadAsync(() =>
            page.GetByRole(AriaRole.Link, new() { Name = "Export CSV" }).ClickAsync()
        );
        Assert.Equal("parts-exported.csv", file.SuggestedFilename);
        var content = await File.ReadAllBytesAsync((await file.PathAsync())!, TestContext.Current.CancellationToken);
        page = await BeginAsync("Read back");
        await page.GetByRole(AriaRole.Button, new() { Name = "Import CSV" }).ClickAsync();
        await ChooseAsync(page, content);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add 1 row" }).ClickAsync();
        await Expect(Cell(page, "Part, row 1")).ToHaveValueAsync("Leg ½");
        await Expect(Cell(page, "Length, row 1")).ToHaveValueAsync("34½");
    }

    [Fact]
    public async Task Chosen_parts_of_another_project_are_copied_in()
    {
        var page = await BeginAsync("Copied to");
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy from a project" }).ClickAsync();
        var form = page.Locator("form[data-form='copy-parts']");
        // The demo's projects are the oldest.
        var demo = await form.GetByLabel("Copy from").Locator("option").Last.TextContentAsync();
        await form.GetByLabel("Copy from").SelectOptionAsync(new SelectOptionValue { Label = demo });
        await form.Locator("input[type=checkbox]").Nth(0).CheckAsync();
        await form.Locator("input[type=checkbox]").Nth(1).CheckAsync();
        await form.GetByRole(AriaRole.Button, new() { Name = "Copy 2 parts" }).ClickAsync();
        await Expect(form).ToHaveCountAsync(0);
        await Expect(page.GetByText("2 parts copied.")).ToBeVisibleAsync();
        await Expect(Cell(page, "Part, row 2")).Not.ToHaveValueAsync("");
    }

    private async Task<IPage> BeginAsync(string name)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/projects?new=true");
        await Fields.SettledAsync(page);
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync(name);
        await page.GetByRole(AriaRole.Button, new() { Name = "Create project" }).ClickAsync();
        await Expect(Cell(page, "Part, row 1")).ToBeVisibleAsync();
        await Fields.SettledAsync(page);
        return page;
    }

    private static Task ChooseAsync(IPage page, string table) => ChooseAsync(page, Encoding.UTF8.GetBytes(table));

    // The framework listens to a file field a moment after it is drawn: what is chosen before that is not heard.
    private static async Task ChooseAsync(IPage page, byte[] content)
    {
        await page.WaitForFunctionAsync("() => document.querySelector('#parts-csv')?._blazorInputFileNextFileId !== undefined");
        await page.GetByLabel("CSV file, up to 5 MB")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "parts.csv",
                    MimeType = "text/csv",
                    Buffer = content,
                }
            );
    }

    private static ILocator Cell(IPage page, string name) => page.GetByLabel(name, new() { Exact = true });
}
