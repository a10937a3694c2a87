using System.Net;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Paper;

/// <summary>Labels and templates as pages and files.</summary>
public sealed class PaperTests
{
    [Fact]
    public async Task Labels_of_a_plan_are_a_file_that_no_browser_keeps_and_the_sheet_is_remembered()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var page = Links.Labels(plan: await shop.PlanAsync());

        using var answer = await browser.GetAsync(File(page, "&sheet=a4-65&start=3&right=1 mm&down=-0.5 mm"));

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
        Assert.True(answer.Headers.CacheControl!.NoStore);
        Assert.Contains(
            answer.Headers.GetValues("Set-Cookie"),
            cookie => cookie.StartsWith("shop-planner-labels=", StringComparison.Ordinal)
        );
        var form = await TextAsync(browser, page);
        Assert.Contains("Labels: Boot-room bench", form, StringComparison.Ordinal);
        Assert.Contains("2 labels, one for each part", form, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_wrong_is_told_beside_what_was_typed()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var page = Links.Labels(project: shop.Project.Id);

        var form = await TextAsync(browser, File(page, "&sheet=letter-30&start=31&right=left&only=Z9"));

        Assert.Contains("‘31’ is no label of the sheet: write a number from 1 to 30.", form, StringComparison.Ordinal);
        Assert.Contains("‘left’ is not a distance", form, StringComparison.Ordinal);
        form = await TextAsync(browser, File(page, "&sheet=letter-30&only=Z9"));
        Assert.Contains("‘Z9’ is no mark here", form, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Templates_are_listed_with_their_sheets_and_printed_one_or_all()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var begun = await shop.Server.Get<IIdeaService>().BeginAsync("bookcase", "", CommandId.New(), ShopServer.Cancel);
        var page = Links.TemplatesPage(begun.Value!.Id);

        var list = await TextAsync(browser, page + "?paper=letter");
        Assert.Contains("Side: shelf pin holes, front row", list, StringComparison.Ordinal);
        Assert.Contains("All templates, 13 sheets (PDF)", list, StringComparison.Ordinal);
        using var all = await browser.GetAsync(Links.TemplatesFile(begun.Value.Id, PaperSize.Letter, null, null));
        using var one = await browser.GetAsync(Links.TemplatesFile(begun.Value.Id, PaperSize.A4, "96 mm", "1"));
        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.OK), (all.StatusCode, one.StatusCode));
        Assert.True(all.Headers.CacheControl!.NoStore);
        using var none = await browser.GetAsync(Links.TemplatesFile(begun.Value.Id, PaperSize.A4, null, "99"));
        Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
        Assert.Contains("‘x’ is not a length", await TextAsync(browser, page + "?pull=x"), StringComparison.Ordinal);
        var without = await TextAsync(browser, Links.TemplatesPage(shop.Project.Id));
        Assert.Contains("Templates are made from a design", without, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_codes_address_shows_the_steps_of_its_part()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var begun = await shop.Server.Get<IIdeaService>().BeginAsync("bookcase", "", CommandId.New(), ShopServer.Cancel);

        var all = await TextAsync(browser, Links.BenchSteps(begun.Value!.Id));
        var own = await TextAsync(browser, Links.BenchSteps(begun.Value.Id, "E1"));
        var unknown = await TextAsync(browser, Links.BenchSteps(begun.Value.Id, "Q9"));

        Assert.InRange(Steps(own), 1, Steps(all) - 1);
        Assert.Contains("Steps of part <b>E1</b>", own, StringComparison.Ordinal);
        Assert.Equal(Steps(all), Steps(unknown));
    }

    private static int Steps(string page) => page.Split("work-step ").Length - 1;

    private static string File(string page, string more) =>
        page.Replace(Links.LabelsPage, Links.LabelsFile, StringComparison.Ordinal) + more;

    private static async Task<string> TextAsync(PlainBrowser browser, string address)
    {
        using var first = await browser.GetAsync(address);
        using var answer = first.Headers.Location is { } moved ? await browser.GetAsync(moved.ToString()) : first;
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(ShopServer.Cancel));
    }
}
