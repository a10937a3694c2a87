using System.Net;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>Ticks of cuts, sent by plain forms.</summary>
public sealed class TickTests
{
    [Fact]
    public async Task A_tick_is_kept_and_the_next_cut_moves_on()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var first = (await shop.BoardAsync(plan)).Cuts[0].Cut.N;

        var page = await browser.OpenAsync(Links.BenchPlan(plan));
        using var answer = await browser.SubmitAsync(page.FormOf("Done"));

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.True((await shop.BoardAsync(plan)).Cuts[0].Made);
        var again = await browser.OpenAsync(answer.Headers.Location!.OriginalString.Split('#')[0]);
        Assert.Contains("made", again.QuerySelectorAll(".bench-cuts li")[0].ClassList);
        Assert.NotEqual(first.ToString(), PlainBrowser.FieldsOf(again.FormOf("Done")).Single(field => field.Key == "Cut").Value);
    }

    [Fact]
    public async Task A_tick_sent_again_late_does_not_undo_what_came_after()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var page = await browser.OpenAsync(Links.BenchPlan(plan, 1));
        var tick = page.FormOf("Done");
        using var ticked = await browser.SubmitAsync(tick);
        var number = (await shop.BoardAsync(plan)).Cuts[0].Cut.N;
        var taken = await browser.OpenAsync(Links.BenchPlan(plan, 1));
        using var cleared = await browser.SubmitAsync(taken.FormOf($"Undo cut {number}"));
        Assert.False((await shop.BoardAsync(plan)).Cuts[0].Made);

        using var late = await browser.SubmitAsync(tick);

        Assert.Equal(HttpStatusCode.SeeOther, late.StatusCode);
        Assert.False((await shop.BoardAsync(plan)).Cuts[0].Made);
    }

    [Fact]
    public async Task A_page_shown_anew_gives_each_button_a_new_command()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();

        var one = PlainBrowser.FieldsOf((await browser.OpenAsync(Links.BenchPlan(plan, 1))).FormOf("Done"));
        var other = PlainBrowser.FieldsOf((await browser.OpenAsync(Links.BenchPlan(plan, 1))).FormOf("Done"));

        Assert.NotEqual(one.Single(field => field.Key == "Command"), other.Single(field => field.Key == "Command"));
    }

    [Fact]
    public async Task Without_the_page_s_token_nothing_is_done()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var form = (await browser.OpenAsync(Links.BenchPlan(plan, 1))).FormOf("Done");

        using var answer = await browser.PostAsync(
            form.GetAttribute("action")!,
            PlainBrowser.FieldsOf(form).Without("__RequestVerificationToken")
        );

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.All((await shop.BoardAsync(plan)).Cuts, cut => Assert.False(cut.Made));
    }

    [Theory]
    [InlineData("Cut", "999")]
    [InlineData("Number", "7")]
    public async Task A_cut_or_board_that_is_not_there_is_refused_in_words(string field, string value)
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var form = (await browser.OpenAsync(Links.BenchPlan(plan, 1))).FormOf("Done");

        using var answer = await browser.PostAsync(
            form.GetAttribute("action")!,
            PlainBrowser.FieldsOf(form).With((field, value))
        );

        Assert.InRange((int)answer.StatusCode, 400, 499);
        Assert.Contains("Nothing was changed", (await PlainBrowser.ReadAsync(answer)).Body!.TextContent);
        Assert.All((await shop.BoardAsync(plan)).Cuts, cut => Assert.False(cut.Made));
    }
}
