using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using ShopPlanner.Services.Common;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>Finishing a board, and taking that back, by plain forms.</summary>
public sealed class FinishTests
{
    private const string Finish = "Finish this board";

    [Fact]
    public async Task The_form_begins_with_the_leftovers_as_planned()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var form = (await browser.OpenAsync(Links.BenchFinish(await shop.PlanAsync(), 1, allCutsMade: true))).FormOf(Finish);

        var fields = PlainBrowser.FieldsOf(form).ToLookup(field => field.Key, field => field.Value);

        // 96 in less two legs of 30 in leaves 36 in less kerfs and the squared end.
        Assert.StartsWith("35", fields["Leftovers[0].Length"].Single());
        Assert.Equal("true", fields["Leftovers[0].Keep"].Single());
    }

    [Fact]
    public async Task Finished_as_measured_the_leftover_is_in_the_bin_with_its_tag_on_the_page()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var form = (await browser.OpenAsync(Links.BenchFinish(plan, 1, allCutsMade: true))).FormOf(Finish);

        using var answer = await browser.PostAsync(
            form.GetAttribute("action")!,
            PlainBrowser.FieldsOf(form).With(("Leftovers[0].Length", "35 1/4"))
        );

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        var piece = Assert.Single(await shop.StockAsync());
        Assert.Equal((StockPlace.Bin, 35.25m), (piece.Place, piece.Length.Ticks / (decimal)Core.Measures.Length.TicksPerInch));
        var page = await browser.OpenAsync(answer.Headers.Location!.OriginalString.Split('#')[0]);
        Assert.Contains($"Write {piece.Tag} on the 35 ¼″ × 2 ½″ piece", page.Body!.TextContent);
    }

    [Fact]
    public async Task Stopped_before_the_last_cut_what_lies_there_is_left_and_its_parts_are_not_cut()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();

        var page = await browser.OpenAsync(Links.BenchFinish(plan, 1));
        Assert.Contains("Not cut: A1 Leg, A2 Leg.", page.Body!.TextContent, StringComparison.Ordinal);
        using var answer = await browser.SubmitAsync(page.FormOf(Finish));

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Equal(
            "96",
            Core.Measures.LengthFormat.Exact(Assert.Single(await shop.StockAsync()).Length, Core.Measures.LengthUnit.Inch)
        );
        // Nothing was cut off: it is as it was bought.
        Assert.Equal(Cutting.StockEdges.Near, Assert.Single(await shop.StockAsync()).Condition.Untrimmed);
        var finished = await browser.OpenAsync(answer.Headers.Location!.OriginalString.Split('#')[0]);
        Assert.Contains("Not cut: A1 Leg, A2 Leg. Plan the rest", finished.Body!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(finished.QuerySelector($"a[href='{Links.NewPlan([shop.Project.Id], plan)}']"));
        Assert.All(finished.QuerySelectorAll(".bench-cuts li"), cut => Assert.EndsWith("not done", cut.TextContent.Trim()));
    }

    [Fact]
    public async Task Sent_twice_it_enters_the_leftover_once()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var form = (await browser.OpenAsync(Links.BenchFinish(plan, 1, allCutsMade: true))).FormOf(Finish);

        using var first = await browser.SubmitAsync(form);
        using var second = await browser.SubmitAsync(form);

        Assert.Equal((HttpStatusCode.SeeOther, HttpStatusCode.SeeOther), (first.StatusCode, second.StatusCode));
        Assert.Single(await shop.StockAsync());
    }

    [Fact]
    public async Task Finished_on_the_way_to_the_next_board_its_page_has_the_tags_to_write_first()
    {
        await using var shop = await PlannedShop.OpenAsync(legs: 8);
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var form = (await browser.OpenAsync(Links.BenchFinish(plan, 1, allCutsMade: true))).FormOf("Finish, then board 2");

        var kept = ("Leftovers[0].Keep", "true");
        using var answer = await browser.PostAsync(
            form.GetAttribute("action")!,
            PlainBrowser.FieldsOf(form).With(("Next", "2"), ("Leftovers[0].Length", "5"), ("Leftovers[0].Width", "2 1/2"), kept)
        );

        Assert.Equal(Links.BenchAfter(plan, 2, 1) + "#earlier", answer.Headers.Location!.OriginalString);
        var page = await browser.OpenAsync(Links.BenchAfter(plan, 2, 1));
        Assert.StartsWith("Board 2 of ", page.QuerySelector("h1")!.TextContent.Trim());
        var earlier = page.QuerySelector("#earlier")!.TextContent;
        Assert.Contains("Board 1: finished", earlier);
        var piece = Assert.Single(await shop.StockAsync());
        Assert.Contains($"Write {piece.Tag} on the", earlier);
        Assert.Null((await browser.OpenAsync(Links.BenchPlan(plan, 2))).QuerySelector("#earlier"));
    }

    [Theory]
    [InlineData("1")]
    [InlineData("7")]
    [InlineData("-2")]
    public async Task A_next_board_that_is_none_leads_to_the_finished_one(string next)
    {
        await using var shop = await PlannedShop.OpenAsync(legs: 8);
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var form = (await browser.OpenAsync(Links.BenchFinish(plan, 1, allCutsMade: true))).FormOf(Finish);
        using var answer = await browser.PostAsync(
            form.GetAttribute("action")!,
            PlainBrowser.FieldsOf(form).With(("Next", next))
        );
        Assert.Equal(Links.BenchPlan(plan, 1) + "#next", answer.Headers.Location!.OriginalString);
    }

    [Fact]
    public async Task Left_before_its_last_cut_a_board_is_only_finished()
    {
        await using var shop = await PlannedShop.OpenAsync(legs: 8);
        using var browser = shop.Server.Browse();
        var page = await browser.OpenAsync(Links.BenchFinish(await shop.PlanAsync(), 1));
        Assert.DoesNotContain(page.QuerySelectorAll("button"), button => button.TextContent.Contains("Finish, then"));
    }

    [Theory]
    [InlineData("35 1/0")]
    [InlineData("about <b>35</b>")]
    [InlineData("120")]
    [InlineData("")]
    public async Task A_bad_measure_keeps_what_was_typed_says_why_beside_it_and_changes_nothing(string typed)
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var form = (await browser.OpenAsync(Links.BenchFinish(plan, 1, allCutsMade: true))).FormOf(Finish);
        var fields = PlainBrowser.FieldsOf(form).With(("Leftovers[0].Length", typed));

        using var answer = await browser.PostAsync(form.GetAttribute("action")!, fields);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var field = Field(await PlainBrowser.ReadAsync(answer), "Leftovers[0].Length");
        Assert.Equal((typed, "true"), (field.Value, field.GetAttribute("aria-invalid")));
        Assert.False(
            string.IsNullOrWhiteSpace(field.Owner!.GetElementById(field.GetAttribute("aria-describedby")!)!.TextContent)
        );
        Assert.False((await shop.BoardAsync(plan)).Finished);
        Assert.Empty(await shop.StockAsync());
    }

    [Fact]
    public async Task After_a_bad_measure_the_same_page_finishes_with_a_good_one()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var form = (await browser.OpenAsync(Links.BenchFinish(plan, 1, allCutsMade: true))).FormOf(Finish);
        using var bad = await browser.PostAsync(
            form.GetAttribute("action")!,
            PlainBrowser.FieldsOf(form).With(("Leftovers[0].Length", "long"))
        );
        var again = (await PlainBrowser.ReadAsync(bad)).FormOf(Finish);

        using var good = await browser.PostAsync(
            again.GetAttribute("action")!,
            PlainBrowser.FieldsOf(again).With(("Leftovers[0].Length", "35"))
        );

        Assert.Equal(HttpStatusCode.SeeOther, good.StatusCode);
        Assert.Single(await shop.StockAsync());
    }

    [Fact]
    public async Task What_is_not_kept_does_not_enter_the_bin()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var form = (await browser.OpenAsync(Links.BenchFinish(plan, 1, allCutsMade: true))).FormOf(Finish);

        using var answer = await browser.PostAsync(
            form.GetAttribute("action")!,
            PlainBrowser.FieldsOf(form).Without("Leftovers[0].Keep")
        );

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.True((await shop.BoardAsync(plan)).Finished);
        Assert.Empty(await shop.StockAsync());
    }

    [Fact]
    public async Task Reopened_the_leftover_is_out_of_the_bin_again()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        using var finished = await browser.SubmitAsync(
            (await browser.OpenAsync(Links.BenchFinish(plan, 1, allCutsMade: true))).FormOf(Finish)
        );

        using var answer = await browser.SubmitAsync(
            (await browser.OpenAsync(Links.BenchPlan(plan, 1))).FormOf("Reopen this board")
        );

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.False((await shop.BoardAsync(plan)).Finished);
        Assert.Empty(await shop.StockAsync());
    }

    private static IHtmlInputElement Field(IHtmlDocument page, string name) =>
        page.QuerySelectorAll<IHtmlInputElement>("input").Single(input => input.Name == name);
}
