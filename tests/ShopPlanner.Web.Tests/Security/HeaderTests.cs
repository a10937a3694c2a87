using System.Text.RegularExpressions;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Security;

/// <summary>What every answer tells the browser, and that nothing is fetched from anywhere else.</summary>
public sealed partial class HeaderTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    public static TheoryData<string> Pages() =>
        [
            Links.Home,
            Links.Projects,
            Links.Stock,
            Links.Stores,
            Links.Plans,
            Links.NewPlan(),
            Links.Bench,
            Links.Shop,
            "/nowhere",
        ];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_page_carries_the_policy(string page)
    {
        var answer = await web.Client.GetAsync(page, TestContext.Current.CancellationToken);
        var policy = string.Join(' ', answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'self'", policy, StringComparison.Ordinal);
        Assert.Matches("script-src 'self' 'nonce-[^']+';", policy);
        Assert.Contains("; style-src 'self'; style-src-attr 'unsafe-inline'; ", policy, StringComparison.Ordinal);
        Assert.Contains("object-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("form-action 'self'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-eval", policy, StringComparison.Ordinal);
        Assert.Equal(["nosniff"], answer.Headers.GetValues("X-Content-Type-Options"));
        Assert.Equal(["same-origin"], answer.Headers.GetValues("Referrer-Policy"));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task No_page_has_a_style_sheet_or_a_script_of_its_own_but_the_import_map(string page)
    {
        var html = await web.Client.GetStringAsyncAnyStatus(page);
        Assert.DoesNotContain("<style", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch("""<[^>]+\son[a-z]+=""", html);
        Assert.All(
            Script().Matches(html),
            script =>
                Assert.True(
                    script.Value.Contains("src=", StringComparison.Ordinal)
                        || script.Value.Contains("importmap", StringComparison.Ordinal),
                    script.Value
                )
        );
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Nothing_is_loaded_from_elsewhere(string page)
    {
        var html = await web.Client.GetStringAsyncAnyStatus(page);
        Assert.DoesNotMatch(Outside(), html);
        foreach (var sheet in Sheet().Matches(html).Select(match => match.Groups["href"].Value).Distinct())
            Assert.DoesNotMatch(
                Outside(),
                await web.Client.GetStringAsync("/" + sheet.TrimStart('/'), TestContext.Current.CancellationToken)
            );
    }

    [Fact]
    public async Task Fonts_and_styles_are_served_by_the_program_itself()
    {
        var cancel = TestContext.Current.CancellationToken;
        Assert.Equal(
            "font/woff2",
            (await web.Client.GetAsync("/assets/fonts/SourceSans3-Regular.woff2", cancel)).Content.Headers.ContentType?.MediaType
        );
        var html = await web.Client.GetStringAsync("/shop", cancel);
        var sheets = Sheet().Matches(html).Select(match => match.Groups["href"].Value).ToList();
        Assert.True(sheets.Count >= 10);
        foreach (var sheet in sheets)
            Assert.Equal(
                "text/css",
                (await web.Client.GetAsync("/" + sheet.TrimStart('/'), cancel)).Content.Headers.ContentType?.MediaType
            );
    }

    [Fact]
    public async Task The_forms_cookie_has_a_name_of_its_own_and_no_script_can_read_it()
    {
        var plan = await Planned.OneAsync(web);
        using var fresh = new HttpClient { BaseAddress = web.Client.BaseAddress };
        var answer = await fresh.GetAsync(Links.BenchPlan(plan), TestContext.Current.CancellationToken);
        var cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"));
        Assert.StartsWith("shop-planner-forms=", cookie, StringComparison.Ordinal);
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
    }

    [GeneratedRegex("<script[^>]*>")]
    private static partial Regex Script();

    [GeneratedRegex("""<link[^>]*rel="stylesheet"[^>]*href="(?<href>[^"]+)""")]
    private static partial Regex Sheet();

    [GeneratedRegex("""(src|href|action)=["'](https?:)?//|url\(\s*["']?(https?:)?//|@import""", RegexOptions.IgnoreCase)]
    private static partial Regex Outside();
}

internal static class ClientExtensions
{
    /// <summary>The page, whatever its status.</summary>
    public static async Task<string> GetStringAsyncAnyStatus(this HttpClient client, string page) =>
        await (await client.GetAsync(page, TestContext.Current.CancellationToken)).Content.ReadAsStringAsync(
            TestContext.Current.CancellationToken
        );
}
