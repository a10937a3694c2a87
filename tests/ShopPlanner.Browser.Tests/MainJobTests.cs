using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>
/// The main job as a builder does it: change a part, plan the cuts, print, cut at the bench, find the leftover in the bin.
/// </summary>
public sealed partial class MainJobTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task A_changed_part_is_planned_printed_cut_and_its_leftover_lies_in_the_bin()
    {
        var page = await browser.OpenAsync(Screen.Tablet);
        await ChangeFirstPartAsync(page, "17 1/2");
        var plan = await PlanAsync(page);
        await LooksRightAsync(page);
        await PrintsAsync(page);
        var tags = await CutFirstStockAsync(plan);
        await page.GotoAsync("/rack-and-bin");
        foreach (var tag in tags)
            await Expect(page.GetByText(tag, new() { Exact = true }).First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_plan_says_so_when_a_part_changed_since()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        var plan = await PlanAsync(page);
        await ChangeFirstPartAsync(page, "17 3/4");
        await page.GotoAsync(plan);
        await Expect(page.GetByText("This plan is out of date")).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Plan again" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_length_that_cannot_be_read_is_kept_and_named()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await ChangeFirstPartAsync(page, "12 1/0");
        await Expect(page.GetByText("divided by zero")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await LiveAsync(page);
        await Expect(FirstLength(page)).ToHaveValueAsync("12 1/0");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = Undo() }).ClickAsync();
        await Expect(FirstLength(page)).Not.ToHaveValueAsync("12 1/0");
    }

    [Fact]
    public async Task A_hundred_thousand_pasted_rows_are_refused_in_words_and_the_page_lives_on()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await OpenFirstPartsAsync(page);
        // The page's script may still be on its way: what is pasted before that is nobody's.
        await page.WaitForFunctionAsync(
            """
            () => {
              const copied = new DataTransfer();
              copied.setData("text/plain", "\tLeg\tPine 1x3\t34 1/2\t\t4\n".repeat(100000));
              document.querySelector("input[data-col='Mark']")
                .dispatchEvent(new ClipboardEvent("paste", { clipboardData: copied, bubbles: true, cancelable: true }));
              return document.querySelector("main [role=alert]") !== null;
            }
            """,
            null,
            new() { PollingInterval = 500 }
        );
        await Expect(page.GetByText("are too many: a parts list holds at most 5000")).ToBeVisibleAsync();
        await FirstLength(page).FillAsync("17 5/8");
        await Expect(page.GetByText("Saved", new() { Exact = true })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_part_cut_long_and_practised_says_so_on_the_plan()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await OpenFirstPartsAsync(page);
        await TypeAsync(page, "Cut long by, row 1", "1/2");
        await TypeAsync(page, "Test pieces, row 1", "1");
        var plan = await PlanAsync(page);
        await page.GotoAsync(plan + "/parts");
        await Expect(page.GetByText(TrimLater()).First).ToBeVisibleAsync();
        await Expect(page.GetByText("Test piece for").First).ToBeVisibleAsync();
        await page.GotoAsync(plan);
        await Expect(page.GetByText("later)").First).ToBeVisibleAsync();
    }

    private static ILocator FirstLength(IPage page) => page.GetByLabel("Length, row 1", new() { Exact = true });

    private static async Task ChangeFirstPartAsync(IPage page, string length)
    {
        await OpenFirstPartsAsync(page);
        await TypeAsync(page, "Length, row 1", length);
    }

    private static async Task OpenFirstPartsAsync(IPage page)
    {
        await page.GotoAsync("/projects");
        await page.GetByRole(AriaRole.Link, new() { NameRegex = Bench() }).First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Table, new() { Name = "Parts" })).ToBeVisibleAsync();
        await LiveAsync(page);
    }

    private static async Task TypeAsync(IPage page, string cell, string text)
    {
        var field = page.GetByLabel(cell, new() { Exact = true });
        await field.FillAsync(text);
        await field.PressAsync("Tab");
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved");
    }

    // Until the page is live its fields are shut; a busy machine takes its time over that.
    private static Task LiveAsync(IPage page) =>
        page.Locator("fieldset.until-live:not([disabled])")
            .First.WaitForAsync(new() { State = WaitForSelectorState.Attached, Timeout = 60_000 });

    // Its plan takes the place of the one that another test made.
    private static async Task<string> PlanAsync(IPage page)
    {
        await page.GotoAsync("/projects");
        var parts = await page.GetByRole(AriaRole.Link, new() { NameRegex = Bench() }).First.GetAttributeAsync("href");
        await page.GotoAsync($"/plans/new?projects={parts!.Split('/')[2]}");
        await LiveAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan the cuts" }).ClickAsync();
        await page.ArriveAsync(PlanAddress(), 60_000);
        return new Uri(page.Url).AbsolutePath;
    }

    private static async Task LooksRightAsync(IPage page)
    {
        await Expect(page.Locator("svg[role=img]").First).ToBeVisibleAsync();
        await Expect(page.GetByText("Total to buy")).ToBeVisibleAsync();
        await page.ScreenshotAsync(
            new() { Path = Path.Combine(AppContext.BaseDirectory, "TestResults", "plan.png"), FullPage = true }
        );
    }

    private static async Task PrintsAsync(IPage page)
    {
        var download = await page.RunAndWaitForDownloadAsync(() =>
            page.GetByRole(AriaRole.Link, new() { NameRegex = Packet() }).First.ClickAsync()
        );
        var content = await File.ReadAllBytesAsync((await download.PathAsync())!, TestContext.Current.CancellationToken);
        Assert.Equal("%PDF-", Encoding.ASCII.GetString(content, 0, 5));
    }

    // Without script: the bench must work on whatever browser lies in the shop.
    private async Task<IReadOnlyList<string>> CutFirstStockAsync(string plan)
    {
        var bench = await browser.OpenAsync(Screen.Tablet, script: false);
        await bench.GotoAsync(plan.Replace("/plans/", "/bench/", StringComparison.Ordinal) + "/1");
        var made = bench.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true });
        while (await made.CountAsync() > 0)
            await made.First.ClickAsync();
        await bench.GetByRole(AriaRole.Link, new() { Name = "Measure the leftovers" }).ClickAsync();
        await bench.GetByLabel("Length").Locator("visible=true").Last.FillAsync("1/4 in");
        await bench.GetByLabel("Width").Locator("visible=true").Last.FillAsync("1 in");
        await bench.GetByLabel("Keep it").Locator("visible=true").Last.CheckAsync();
        await bench.GetByRole(AriaRole.Button, new() { NameRegex = Finish() }).ClickAsync();
        await Expect(bench.GetByText("Finished", new() { Exact = true }).First).ToBeVisibleAsync();
        var tags = await bench.Locator(".write-tag .tag").AllInnerTextsAsync();
        Assert.NotEmpty(tags);
        return tags;
    }

    [GeneratedRegex("/plans/[0-9a-f-]{36}$")]
    private static partial Regex PlanAddress();

    [GeneratedRegex("Mudroom bench")]
    private static partial Regex Bench();

    [GeneratedRegex("^Cut .* long, trim to .* later")]
    private static partial Regex TrimLater();

    [GeneratedRegex("^Packet")]
    private static partial Regex Packet();

    [GeneratedRegex("^Finish this (board|sheet)")]
    private static partial Regex Finish();

    [GeneratedRegex("^Undo")]
    private static partial Regex Undo();
}
