using System.Globalization;
using System.Net;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Security;

/// <summary>
/// What a page elsewhere may try. Expected statuses: the refusal must come before anything is changed or opened.
/// </summary>
public sealed class ForeignPageTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private const string Foreign = "http://elsewhere.example";

    private static readonly string[] Upgrade =
    [
        "Connection: Upgrade",
        "Upgrade: websocket",
        "Sec-WebSocket-Version: 13",
        "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==",
    ];

    private string Own => string.Create(CultureInfo.InvariantCulture, $"localhost:{web.Port}");

    private string OwnOrigin => "http://" + Own;

    private string OtherPort => string.Create(CultureInfo.InvariantCulture, $"http://localhost:{web.Port + 1}");

    public static TheoryData<string, string> Refusals() =>
        new()
        {
            { "negotiate", "foreign" },
            { "negotiate", "other port" },
            { "negotiate", "null" },
            { "negotiate", "none" },
            { "upgrade", "foreign" },
            { "upgrade", "other port" },
            { "upgrade", "null" },
            { "upgrade", "none" },
            { "form", "foreign" },
            { "form", "other port" },
            { "form", "null" },
            { "form", "none" },
        };

    [Theory]
    [MemberData(nameof(Refusals))]
    public async Task A_request_that_is_not_of_our_own_page_is_refused(string what, string from)
    {
        var answer = await TryAsync(what, Own, Origin(from));
        Assert.Equal(403, answer.Status);
        Assert.False(answer.SetsCookie);
    }

    [Theory]
    [InlineData("negotiate")]
    [InlineData("upgrade")]
    [InlineData("form")]
    [InlineData("page")]
    public async Task A_name_made_to_point_here_is_refused_even_where_host_and_origin_agree(string what)
    {
        var answer = await TryAsync(what, "rebound.example", "http://rebound.example");
        Assert.Equal(421, answer.Status);
        Assert.False(answer.SetsCookie);
    }

    [Fact]
    public async Task Our_own_page_may_open_the_live_connection()
    {
        Assert.Equal(200, (await TryAsync("negotiate", Own, OwnOrigin)).Status);
        Assert.Equal(101, (await TryAsync("upgrade", Own, OwnOrigin)).Status);
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("127.0.0.1")]
    [InlineData("[::1]")]
    [InlineData("workshop.example")]
    [InlineData("WORKSHOP.example:8443")]
    public async Task Names_of_this_computer_and_configured_ones_are_served(string host) =>
        Assert.Equal(200, (await TryAsync("page", host, null)).Status);

    [Fact]
    public async Task The_machines_own_name_is_served()
    {
        Assert.Equal(200, (await TryAsync("page", Environment.MachineName, null)).Status);
        Assert.Equal(200, (await TryAsync("page", Environment.MachineName + ".local", null)).Status);
    }

    [Fact]
    public async Task The_refusal_names_the_setting_and_shows_the_name_as_text()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Host = "tablet.example";
        var answer = await web.Client.SendAsync(request, TestContext.Current.CancellationToken);
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.MisdirectedRequest, answer.StatusCode);
        Assert.Contains("--host tablet.example", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_without_its_token_is_refused_and_changes_nothing()
    {
        var plan = await Planned.OneAsync(web);
        using var form = new HttpRequestMessage(HttpMethod.Post, $"/bench/{plan}/cuts")
        {
            Content = new FormUrlEncodedContent(
                new Dictionary<string, string>
                {
                    ["Command"] = Guid.NewGuid().ToString(),
                    ["Number"] = "1",
                    ["Cut"] = "1",
                    ["Made"] = "true",
                }
            ),
        };
        form.Headers.Add("Origin", OwnOrigin);
        var answer = await web.Client.SendAsync(form, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(
            PlanState.Ready,
            (await web.Service<IPlanService>().GetAsync(plan, TestContext.Current.CancellationToken))!.Summary.State
        );
    }

    [Fact]
    public async Task No_address_that_changes_anything_answers_to_get()
    {
        var plan = await Planned.OneAsync(web);
        foreach (var path in new[] { "cuts", "finished", "reopened" })
        {
            var answer = await web.SendAsync(
                "GET",
                $"/bench/{plan}/{path}?Command={Guid.NewGuid()}&Number=1&Cut=1&Made=true",
                Own,
                null
            );
            Assert.InRange(answer.Status, 404, 405);
        }

        Assert.Equal(
            PlanState.Ready,
            (await web.Service<IPlanService>().GetAsync(plan, TestContext.Current.CancellationToken))!.Summary.State
        );
    }

    [Fact]
    public async Task Looking_at_every_page_changes_no_project()
    {
        var before = await web.Service<IProjectService>().ListAsync(true, TestContext.Current.CancellationToken);
        foreach (
            var page in new[]
            {
                Links.Home,
                Links.Projects,
                Links.Parts(before[0].Id),
                Links.Stock,
                Links.Stores,
                Links.Plans,
                Links.NewPlan(),
                Links.Bench,
                Links.Shop,
            }
        )
            Assert.Equal(HttpStatusCode.OK, (await web.Client.GetAsync(page, TestContext.Current.CancellationToken)).StatusCode);
        Assert.Equal(before, await web.Service<IProjectService>().ListAsync(true, TestContext.Current.CancellationToken));
    }

    private string? Origin(string from) =>
        from switch
        {
            "foreign" => Foreign,
            "other port" => OtherPort,
            "null" => "null",
            _ => null,
        };

    private Task<RawAnswer> TryAsync(string what, string host, string? origin) =>
        what switch
        {
            "negotiate" => web.SendAsync("POST", "/_blazor/negotiate?negotiateVersion=1", host, origin, "Content-Length: 0"),
            "upgrade" => web.SendAsync("GET", "/_blazor", host, origin, Upgrade),
            "form" => web.SendAsync(
                "POST",
                $"/bench/{Guid.NewGuid()}/cuts",
                host,
                origin,
                "Content-Type: application/x-www-form-urlencoded",
                "Content-Length: 0"
            ),
            _ => web.SendAsync("GET", "/projects", host, origin),
        };
}
