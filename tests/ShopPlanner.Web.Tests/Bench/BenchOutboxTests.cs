using System.Collections.Immutable;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using ShopPlanner.Services.Plans;
using ShopPlanner.Web.Features.Bench;
using ShopPlanner.Web.Features.Bench.Outbox;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>What the bench's pages kept until there was a network, as it is sent.</summary>
public sealed class BenchOutboxTests
{
    private static readonly Guid Tablet = new("0b6f1d52-3a54-4c6e-9d7d-2f3c6f0a1b11");

    [Fact]
    public async Task Marks_are_done_once_each_and_the_answer_says_how_the_plan_stands()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var cut = (await shop.BoardAsync(plan)).Cuts[0].Cut.N;
        var (made, cleared) = (Cut(plan, cut, true, 1), Cut(plan, cut, false, 2));
        foreach (var commands in new[] { new[] { made }, [made, cleared], [made], [made, cleared] })
            Assert.All((await HeardAsync(browser, plan, commands)).Answers, answer => Assert.True(answer.Ok, answer.Say));
        Assert.False((await shop.BoardAsync(plan)).Cuts[0].Made);
        var heard = await HeardAsync(browser, plan, [Cut(plan, cut, true, 3)]);
        Assert.Equal([cut], heard.Plan!.Stocks[0].Made);
        Assert.EndsWith("good", heard.Plan.Form, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Leftovers_measured_on_a_tablet_go_in_the_bin_and_a_bad_size_is_told()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var page = await browser.OpenAsync(Links.BenchFinish(plan, 1, allCutsMade: true));
        var fields = PlainBrowser
            .FieldsOf(page.FormOf("Finish this board"))
            .Where(field => field.Key != "__RequestVerificationToken")
            .ToDictionary(field => field.Key, field => field.Value);
        var wrong = new Dictionary<string, string>(fields) { ["Leftovers[0].Length"] = "35 x" };
        var refused = await HeardAsync(browser, plan, [Finish(plan, wrong, 1)]);
        Assert.Contains("‘35 x’", Assert.Single(refused.Answers).Say);
        Assert.False((await shop.BoardAsync(plan)).Finished);
        var done = await HeardAsync(browser, plan, [Finish(plan, fields, 2)]);
        Assert.True(Assert.Single(done.Answers).Ok, done.Answers[0].Say);
        Assert.True((await shop.BoardAsync(plan)).Finished);
        Assert.Single(await shop.StockAsync(), piece => piece.Tag.StartsWith('B'));
    }

    [Fact]
    public async Task A_cut_made_by_a_canceled_plan_counts_and_the_page_says_so()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var cut = (await shop.BoardAsync(plan)).Cuts[0].Cut.N;
        Assert.True((await shop.Server.Get<IPlanService>().WithdrawAsync(plan, ShopServer.Cancel)).Ok);
        var heard = await HeardAsync(browser, plan, [Cut(plan, cut, true, 1)]);
        Assert.True(heard.Answers[0].Ok, heard.Answers[0].Say);
        Assert.EndsWith("canceled", heard.Plan!.Form, StringComparison.Ordinal);
        var page = await browser.OpenAsync(Links.BenchPlan(plan));
        Assert.Contains("Cut by this plan: board 1, 1 cut", page.Body!.TextContent);
    }

    [Fact]
    public async Task What_cannot_be_done_is_answered_in_words_and_stops_nothing()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var cut = (await shop.BoardAsync(plan)).Cuts[0].Cut.N;
        var heard = await HeardAsync(
            browser,
            plan,
            [Cut(plan, 999, true, 1), new(Guid.NewGuid(), 2, "sweep"), Cut(plan, cut, true, 3)]
        );
        Assert.Equal([false, false, true], heard.Answers.Select(answer => answer.Ok));
        Assert.Contains("is not a cut of this layout", heard.Answers[0].Say);
        Assert.Contains("Load it again", heard.Answers[1].Say);
    }

    [Theory]
    [InlineData("""{"sender":"00000000-0000-0000-0000-000000000000","commands":[]}""")]
    [InlineData("""{"sender":"0b6f1d52-3a54-4c6e-9d7d-2f3c6f0a1b11"}""")]
    [InlineData("""{"sender":"0b6f1d52-3a54-4c6e-9d7d-2f3c6f0a1b11","commands":[null]}""")]
    [InlineData("""{"sender":"0b6f1d52-3a54-4c6e-9d7d-2f3c6f0a1b11","commands":[{"id":"x"}]}""")]
    [InlineData("not json")]
    public async Task What_is_no_sending_is_refused(string body)
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        using var answer = await browser.SendFormAsync(
            Links.BenchCommands,
            new StringContent(body, System.Text.Encoding.UTF8, "application/json")
        );
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    private static BenchCommand Cut(Guid plan, int cut, bool made, long number) =>
        new(Guid.CreateVersion7(), number, "cut")
        {
            Plan = plan,
            Stock = 1,
            Cut = cut,
            Done = made,
        };

    private static BenchCommand Finish(Guid plan, Dictionary<string, string> fields, long number) =>
        new(Guid.CreateVersion7(), number, "finish")
        {
            Plan = plan,
            Stock = 1,
            Fields = fields.ToImmutableDictionary(),
        };

    private static async Task<BenchHeard> HeardAsync(PlainBrowser browser, Guid plan, BenchCommand[] commands)
    {
        using var answer = await browser.SendFormAsync(
            Links.BenchCommands,
            JsonContent.Create(new BenchSending(Tablet, plan, null, [.. commands]), options: BenchPlanStanding.Format)
        );
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.True(answer.Headers.Contains(BenchOutboxEndpoints.Mark));
        return JsonSerializer.Deserialize<BenchHeard>(
            await answer.Content.ReadAsStringAsync(ShopServer.Cancel),
            BenchPlanStanding.Format
        )!;
    }
}
