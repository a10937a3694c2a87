using System.IO.Compression;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using ShopPlanner.Browser.Tests.Pages;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>What goes out to others, seen as they see it: a folder opened without the program.</summary>
[Collection(OneShop.Name)]
public sealed class PublishedPlanTests(BrowserFixture browser) : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("shop-planner-published-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_published_plan_is_whole_and_keeps_the_rules_of_access()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync(await Places.AddressAsync(page, "idea publish"));
        await Fields.SettledAsync(page);
        await page.GetByLabel("License")
            .SelectOptionAsync(new SelectOptionValue { Label = "Creative Commons Attribution 4.0 International (CC-BY-4.0)" });
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("license=CC-BY-4.0"));
        var download = await page.RunAndWaitForDownloadAsync(() =>
            page.GetByRole(AriaRole.Link, new() { Name = "Download the plan (zip)" }).ClickAsync()
        );
        ZipFile.ExtractToDirectory(await download.PathAsync(), folder);
        await page.Context.CloseAsync();

        var published = await browser.OpenAsync(Screen.Desktop);
        var failed = new List<string>();
        published.RequestFailed += (_, request) => failed.Add(request.Url);
        published.Request += (_, request) =>
            failed.AddRange(new[] { request.Url }.Where(url => !url.StartsWith("file:", StringComparison.Ordinal)));
        await published.GotoAsync(new Uri(Path.Combine(folder, "index.html")).AbsoluteUri);
        await Expect(published.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Bookcase");
        var blank = await published.EvaluateAsync<string[]>(
            """
            async () => {
              await document.fonts.ready;
              const images = [...document.images];
              images.forEach(image => { image.loading = "eager"; });
              await Promise.all(images.map(image => image.decode().catch(() => {})));
              const letters = document.fonts.check("1rem 'Source Sans 3'") ? [] : ["letters"];
              return [...letters, ...images.filter(image => image.naturalWidth === 0).map(image => image.src)];
            }
            """
        );
        Assert.Empty(blank);
        Assert.Empty(failed);
        await AccessRule.BeginAsync(published);
        Assert.Empty(await AccessRule.BrokenAsync(published, "none"));
        var wide = await published.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth");
        Assert.True(wide <= 0, $"at 390 px the page is {wide} px too wide");
        await published.Context.CloseAsync();
    }

    [Fact]
    public async Task A_pasted_bill_is_shown_line_by_line_and_taken_into_the_list()
    {
        var page = await browser.OpenAsync(Screen.Tablet);
        await page.GotoAsync((await Places.AddressAsync(page, "idea")).Replace("/idea", "/parts", StringComparison.Ordinal));
        await Fields.SettledAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Paste a stock bill" }).ClickAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Stock bill" })
            .FillAsync("Of pine:\n4 posts, 3/4 by 2-1/2 by 30 in.\n4 hinges\nrail, 3/4 x 22");
        var lines = page.GetByRole(AriaRole.Region, new() { Name = "The bill line by line" });
        await Expect(lines).ToContainTextAsync("30″ long");
        await Expect(lines).ToContainTextAsync("Check");
        await Expect(lines).ToContainTextAsync("4 hinges");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add 2 parts" }).ClickAsync();
        await Expect(page.GetByText("2 parts added from the bill.")).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Form, new() { Name = "Paste a stock bill" })).ToHaveCountAsync(0);
        await page.Context.CloseAsync();
    }
}
