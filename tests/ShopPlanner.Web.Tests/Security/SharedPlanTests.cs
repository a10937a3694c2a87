using System.Text.RegularExpressions;
using ShopPlanner.Services.Access;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Web.Tests.Security;

/// <summary>A plan that is shared by link: one plan, for reading, until the link ends.</summary>
public sealed partial class SharedPlanTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Whoever_has_the_link_reads_the_packet_until_it_is_ended()
    {
        var plan = await Planned.OneAsync(web);
        var shares = web.Service<IShareService>();
        var offer = shares.Share(Guid.CreateVersion7(), plan, "Two shelves", 7).Value!;
        var link = $"/shared/{offer.Token}";
        using var page = await web.Client.GetAsync(link, Cancel);
        var text = await page.Content.ReadAsStringAsync(Cancel);
        Assert.Equal(System.Net.HttpStatusCode.OK, page.StatusCode);
        Assert.Contains("Two shelves", text, StringComparison.Ordinal);
        // Nothing on it leads into the shop.
        Assert.All(Address().Matches(text), one => Assert.StartsWith(link, one.Groups["to"].Value, StringComparison.Ordinal));
        Assert.True(page.Headers.CacheControl!.NoStore);
        Assert.Equal("no-referrer", page.Headers.GetValues("Referrer-Policy").Single());
        Assert.Contains("noindex", page.Headers.GetValues("X-Robots-Tag").Single(), StringComparison.Ordinal);
        var packet = await web.Client.GetByteArrayAsync(link + "/packet.pdf", Cancel);
        Assert.StartsWith("%PDF", System.Text.Encoding.ASCII.GetString(packet, 0, 4), StringComparison.Ordinal);
        Assert.True(shares.End(offer.Share.Id).Ok);
        Assert.Equal(await NothingAsync("/shared/ffff"), await NothingAsync(link));
        Assert.Equal(await NothingAsync("/shared/ffff"), await NothingAsync(link + "/packet.pdf"));
    }

    [Fact]
    public async Task A_withdrawn_plan_is_shown_to_nobody()
    {
        var plan = await Planned.OneAsync(web);
        var offer = web.Service<IShareService>().Share(Guid.CreateVersion7(), plan, "Two shelves", 7).Value!;
        Assert.True((await web.Service<IPlanService>().WithdrawAsync(plan, Cancel)).Ok);
        Assert.Equal(await NothingAsync("/shared/ffff"), await NothingAsync($"/shared/{offer.Token}"));
    }

    // The same for a link that was guessed, has ended or was cut short.
    private async Task<string> NothingAsync(string address)
    {
        using var answer = await web.Client.GetAsync(address, Cancel);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, answer.StatusCode);
        return Changing().Replace(await answer.Content.ReadAsStringAsync(Cancel), "");
    }

    [GeneratedRegex("<a [^>]*href=\"(?<to>[^\"]*)\"")]
    private static partial Regex Address();

    // Each answer has one-time words of its own.
    [GeneratedRegex("nonce=\"[^\"]*\"|<!--Blazor.*?-->|CfDJ[^\"]*")]
    private static partial Regex Changing();
}
