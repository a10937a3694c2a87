using System.Net;
using System.Text.RegularExpressions;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>The bench's forms as a browser without script sends them.</summary>
public sealed partial class BenchFormTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    [Fact]
    public async Task A_cut_is_ticked_and_the_page_shows_the_next_one()
    {
        var plan = await Planned.MakeAsync(web);
        var answer = await SendAsync(await FormAsync(plan, "Cut made"));
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Equal($"{Links.BenchPlan(plan, 1)}#next", answer.Headers.Location!.ToString());
        Assert.True((await BenchAsync(plan)).Stocks[0].Cuts[0].Made);
    }

    [Fact]
    public async Task The_same_form_sent_twice_does_no_harm()
    {
        var plan = await Planned.MakeAsync(web);
        var form = await FormAsync(plan, "Cut made");
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(form)).StatusCode);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(form)).StatusCode);
        Assert.Equal(1, (await BenchAsync(plan)).Stocks.Sum(stock => stock.Cuts.Count(cut => cut.Made)));
    }

    [Fact]
    public async Task A_late_copy_of_a_tick_does_not_undo_what_came_after()
    {
        var plan = await Planned.MakeAsync(web);
        var tick = await FormAsync(plan, "Cut made");
        await SendAsync(tick);
        await SendAsync(await FormAsync(plan, "Not made"));
        await SendAsync(tick);
        Assert.False((await BenchAsync(plan)).Stocks[0].Cuts[0].Made);
    }

    [Fact]
    public async Task A_board_finished_twice_puts_its_leftovers_into_the_bin_once()
    {
        var plan = await Planned.MakeAsync(web);
        var before = await BinAsync();
        var form = await FinishFormAsync(plan, "300 mm", "");
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(form)).StatusCode);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(form)).StatusCode);
        var tags = (await BenchAsync(plan)).Stocks[0].Binned;
        Assert.Equal(tags.Order(), (await BinAsync()).Except(before).Order());
        Assert.NotEmpty(tags);
        var page = await web.Client.GetStringAsync(Links.BenchPlan(plan, 1), TestContext.Current.CancellationToken);
        Assert.All(tags, tag => Assert.Contains($"<span class=\"tag\">{tag}</span>", page, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_finished_board_is_opened_again()
    {
        var plan = await Planned.MakeAsync(web);
        await SendAsync(await FinishFormAsync(plan, "300 mm", ""));
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(await FormAsync(plan, "Open it again"))).StatusCode);
        Assert.False((await BenchAsync(plan)).Stocks[0].Finished);
    }

    [Fact]
    public async Task A_wrong_size_is_shown_with_what_was_typed_and_nothing_is_finished()
    {
        var plan = await Planned.MakeAsync(web);
        var answer = await SendAsync(await FinishFormAsync(plan, "12 1/0", ""));
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("value=\"12 1/0\"", page, StringComparison.Ordinal);
        Assert.Contains("is not a length", page, StringComparison.Ordinal);
        Assert.Contains("aria-invalid=\"true\"", page, StringComparison.Ordinal);
        Assert.False((await BenchAsync(plan)).Stocks[0].Finished);
    }

    [Fact]
    public async Task A_board_that_is_not_there_is_refused_in_words()
    {
        var plan = await Planned.MakeAsync(web);
        var form = await FormAsync(plan, "Cut made");
        form.Fields["Number"] = "999";
        var answer = await SendAsync(form);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("That was not done", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_bench_loads_no_script_and_opens_no_connection()
    {
        var plan = await Planned.MakeAsync(web);
        foreach (var page in new[] { Links.Bench, Links.BenchPlan(plan), Links.BenchFinish(plan, 1) })
            Assert.DoesNotContain("<script", await web.Client.GetStringAsync(page, TestContext.Current.CancellationToken), StringComparison.OrdinalIgnoreCase);
    }

    private async Task<BenchView> BenchAsync(Guid plan) => (await web.Service<IBenchService>().GetAsync(plan, TestContext.Current.CancellationToken))!;

    private async Task<List<string>> BinAsync() =>
        [.. (await web.Service<IStockService>().ListAsync(TestContext.Current.CancellationToken)).Where(piece => piece.Place == StockPlace.Bin).Select(piece => piece.Tag)];

    private async Task<SentForm> FormAsync(Guid plan, string button) =>
        SentForm.Find(await web.Client.GetStringAsync(Links.BenchPlan(plan, 1), TestContext.Current.CancellationToken), button);

    // The extra row holds what was measured; the planned leftovers are swept up.
    private async Task<SentForm> FinishFormAsync(Guid plan, string length, string width)
    {
        var form = SentForm.Find(await web.Client.GetStringAsync(Links.BenchFinish(plan, 1), TestContext.Current.CancellationToken), "Finish");
        foreach (var name in form.Fields.Keys.Where(name => name.EndsWith(".Keep", StringComparison.Ordinal)).ToList()) form.Fields.Remove(name);
        var extra = form.Fields.Single(field => field.Key.EndsWith(".Index", StringComparison.Ordinal) && field.Value == "-1").Key[..^".Index".Length];
        (form.Fields[extra + ".Length"], form.Fields[extra + ".Width"], form.Fields[extra + ".Keep"]) = (length, width.Length > 0 ? width : WidthOf(form), "true");
        return form;
    }

    private static string WidthOf(SentForm form) => form.Fields.FirstOrDefault(field => Width().IsMatch(field.Key) && field.Value.Length > 0).Value ?? "";

    private async Task<HttpResponseMessage> SendAsync(SentForm form)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, form.Action) { Content = new FormUrlEncodedContent(form.Fields) };
        request.Headers.Add("Origin", web.Client.BaseAddress!.GetLeftPart(UriPartial.Authority));
        return await web.Client.SendAsync(request, TestContext.Current.CancellationToken);
    }

    [GeneratedRegex(@"\.Width$")]
    private static partial Regex Width();
}
