using System.Net;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>The cuts by setting at the bench, ticked by plain forms. Two legs of 30 in from one board: its end is squared, then
/// the stop stands at 30 for both.</summary>
public sealed class BenchSettingsTests
{
    [Fact]
    public async Task Each_setting_is_shown_once_with_all_of_its_cuts()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var page = await browser.OpenAsync(Links.BenchSettings(await shop.PlanAsync()));
        Assert.Equal(["⅜″", "30″"], page.QuerySelectorAll(".bench-run .setting").Select(figure => figure.TextContent.Trim()));
        Assert.Equal([1, 2], page.QuerySelectorAll(".bench-run").Select(run => run.QuerySelectorAll("li").Length));
        Assert.Equal("page", page.QuerySelector(".bench-switch a:last-child")!.GetAttribute("aria-current"));
    }

    [Fact]
    public async Task A_tick_is_the_same_as_on_the_board_s_page_and_leads_back_to_the_next_cut()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var page = await browser.OpenAsync(Links.BenchSettings(plan));
        using var answer = await browser.SubmitAsync(page.FormOf("Done: cut 1, board 1"));
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Equal(Links.BenchSettings(plan) + "#next", answer.Headers.Location!.OriginalString);
        Assert.True((await shop.BoardAsync(plan)).Cuts[0].Made);
        var board = await browser.OpenAsync(Links.BenchPlan(plan, 1));
        Assert.Contains("made", board.QuerySelectorAll(".bench-cuts li")[0].ClassList);

        var again = await browser.OpenAsync(Links.BenchSettings(plan));
        Assert.Equal("cut 2", again.QuerySelector("li#next .n")!.TextContent);
        Assert.False(again.QuerySelectorAll(".bench-run")[0].HasAttribute("open"));
        using var undone = await browser.SubmitAsync(again.FormOf("Undo cut 1, board 1"));
        Assert.False((await shop.BoardAsync(plan)).Cuts[0].Made);
    }

    [Fact]
    public async Task When_all_is_cut_the_leftovers_are_measured()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        foreach (var cut in (await shop.BoardAsync(plan)).Cuts)
        {
            var page = await browser.OpenAsync(Links.BenchSettings(plan));
            using var answer = await browser.SubmitAsync(page.FormOf($"Done: cut {cut.Cut.N}, board 1"));
            Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        }

        var done = await browser.OpenAsync(Links.BenchSettings(plan));
        Assert.StartsWith("All cuts done", done.QuerySelector("#next")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(done.QuerySelector($"a[href='{Links.BenchFinish(plan, 1)}']"));
    }
}
