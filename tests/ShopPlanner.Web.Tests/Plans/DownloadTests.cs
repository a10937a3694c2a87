using System.Net;
using System.Text;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Plans;

/// <summary>Files that a plan gives.</summary>
public sealed class DownloadTests
{
    [Theory]
    [InlineData("packet.pdf?paper=letter", "application/pdf", ".pdf")]
    [InlineData("packet.pdf?paper=a4", "application/pdf", ".pdf")]
    [InlineData("packet.pdf", "application/pdf", ".pdf")]
    [InlineData("plan.json", "application/json", ".json")]
    [InlineData("request.json", "application/json", ".json")]
    public async Task Each_is_a_file_to_save_that_no_browser_guesses_about_or_keeps(string file, string type, string ending)
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();

        using var answer = await browser.GetAsync($"{Links.Plans}/{await shop.PlanAsync()}/{file}");

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(type, answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
        Assert.EndsWith(ending, answer.Content.Headers.ContentDisposition.FileName!.Trim('"'));
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.True(answer.Headers.CacheControl!.NoStore);
    }

    [Fact]
    public async Task Letter_and_A4_are_two_papers()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();

        var letter = await PacketAsync(browser, $"{Links.Plans}/{plan}/packet.pdf?paper=letter");
        var a4 = await PacketAsync(browser, $"{Links.Plans}/{plan}/packet.pdf?paper=a4");

        Assert.StartsWith("%PDF", letter);
        // ISO 216 A4, 210 x 297 mm, and US Letter, 8 1/2 x 11 in, in points of 1/72 in.
        Assert.Contains("612 792", letter);
        Assert.Contains("595", a4);
        Assert.DoesNotContain("612 792", a4);
    }

    [Fact]
    public async Task The_documents_are_of_the_open_formats()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();

        using var request = await browser.GetAsync(Links.PlanDocument(plan, answer: false));
        using var answer = await browser.GetAsync(Links.PlanDocument(plan, answer: true));

        Assert.Empty(CutRequestJson.Read(await request.Content.ReadAsStreamAsync(ShopServer.Cancel)).Faults);
        Assert.Empty(CutPlanJson.Read(await answer.Content.ReadAsStreamAsync(ShopServer.Cancel)).Faults);
    }

    [Theory]
    [InlineData("packet.pdf")]
    [InlineData("plan.json")]
    [InlineData("request.json")]
    public async Task An_unknown_plan_has_no_files(string file)
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();

        using var answer = await browser.GetAsync($"{Links.Plans}/{Guid.NewGuid()}/{file}");

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    private static async Task<string> PacketAsync(PlainBrowser browser, string address)
    {
        using var answer = await browser.GetAsync(address);
        return Encoding.Latin1.GetString(await answer.Content.ReadAsByteArrayAsync(ShopServer.Cancel));
    }
}
