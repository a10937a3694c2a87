using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Bench.Wrong;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>A cut goes wrong, told and planned again by plain forms. Two legs of 30 in from a board of 96 in.</summary>
public sealed class WrongCutPageTests
{
    private const string Again = "Plan the rest again";
    private const string Accept = "Cut by the new plan";

    [Fact]
    public async Task Every_cut_that_is_next_or_done_leads_to_saying_that_it_went_wrong()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var (next, _) = await LegCutAsync(shop, plan);
        await TickToAsync(shop, plan, next);
        var page = await browser.OpenAsync(Links.BenchPlan(plan));
        for (var cut = 1; cut <= next; cut++)
            Assert.NotNull(page.QuerySelector($"a[href='{Links.BenchWrong(plan, 1, cut)}']"));
    }

    [Fact]
    public async Task The_new_plan_and_its_cost_are_seen_before_anything_is_changed()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var (cut, mark) = await LegCutAsync(shop, plan);
        await TickToAsync(shop, plan, cut - 1);

        using var answer = await browser.SubmitAsync((await browser.OpenAsync(Links.BenchWrong(plan, 1, cut))).FormOf(Again));

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var text = (await PlainBrowser.ReadAsync(answer)).Body!.TextContent;
        Assert.Contains("Costs nothing more", text, StringComparison.Ordinal);
        Assert.Contains($"{mark} Leg is needed again.", text, StringComparison.Ordinal);
        Assert.Equal(PlanState.Cutting, await StateAsync(shop, plan));
        Assert.Empty(await shop.StockAsync());
    }

    [Fact]
    public async Task Accepted_and_sent_twice_the_new_plan_is_there_once_and_is_undone_again()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var (cut, _) = await LegCutAsync(shop, plan);
        await TickToAsync(shop, plan, cut - 1);
        using var look = await browser.SubmitAsync((await browser.OpenAsync(Links.BenchWrong(plan, 1, cut))).FormOf(Again));
        var accept = (await PlainBrowser.ReadAsync(look)).FormOf(Accept);

        using var first = await browser.SubmitAsync(accept);
        using var second = await browser.SubmitAsync(accept);

        Assert.Equal((HttpStatusCode.SeeOther, HttpStatusCode.SeeOther), (first.StatusCode, second.StatusCode));
        Assert.Equal(first.Headers.Location, second.Headers.Location);
        var plans = await shop.Server.Get<IPlanService>().ListAsync(cancel: ShopServer.Cancel);
        Assert.Equal([PlanState.Ready, PlanState.Cut], plans.Select(one => one.State));
        var page = await browser.OpenAsync(first.Headers.Location!.OriginalString.Split('#')[0]);
        Assert.Contains("Needed again", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.QuerySelectorAll(".write-tag .tag"));

        using var undone = await browser.SubmitAsync(page.FormOf("Undo: back to the plan before"));
        Assert.Equal(Links.BenchPlan(plan, 1) + "#next", undone.Headers.Location!.OriginalString);
        Assert.Equal(PlanState.Cutting, await StateAsync(shop, plan));
        Assert.Empty(await shop.StockAsync());
    }

    [Fact]
    public async Task Noted_the_board_goes_on_and_says_what_is_needed_again()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var (cut, mark) = await LegCutAsync(shop, plan);
        var form = (await browser.OpenAsync(Links.BenchWrong(plan, 1, cut))).FormOf("Note it and go on cutting");

        using var answer = await browser.PostAsync($"{Links.BenchWrongCuts(plan)}/noted", PlainBrowser.FieldsOf(form));

        Assert.Equal(Links.BenchWrongCuts(plan) + "#next", answer.Headers.Location!.OriginalString);
        var board = await browser.OpenAsync(Links.BenchPlan(plan));
        Assert.Contains($"1 cut went wrong. Needed again: {mark}.", Spaced(board.Body!.TextContent), StringComparison.Ordinal);
        Assert.False((await shop.BoardAsync(plan)).Finished);
    }

    [Theory]
    [InlineData("Pieces[0].Length", "130", "larger than what it was cut from")]
    [InlineData("Pieces[0].Length", "0", "more than zero")]
    [InlineData("Pieces[0].Width", "9", "wider than the board")]
    public async Task A_size_that_cannot_be_is_told_beside_its_field(string field, string typed, string said)
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var (cut, _) = await LegCutAsync(shop, plan);
        var form = (await browser.OpenAsync(Links.BenchWrong(plan, 1, cut))).FormOf(Again);

        using var answer = await browser.PostAsync(
            form.GetAttribute("action")!,
            PlainBrowser.FieldsOf(form).With((field, typed), ("Pieces[0].IsWrong", "true"), ("Pieces[0].Keep", "true"))
        );

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var input = (await PlainBrowser.ReadAsync(answer))
            .QuerySelectorAll<IHtmlInputElement>("input")
            .Single(one => one.Name == field);
        Assert.Equal((typed, "true"), (input.Value, input.GetAttribute("aria-invalid")));
        Assert.Contains(said, input.ParentElement!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_cut_short_or_odd_is_answered_in_words_and_changes_nothing()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var (cut, _) = await LegCutAsync(shop, plan);
        var fields = PlainBrowser.FieldsOf((await browser.OpenAsync(Links.BenchWrong(plan, 1, cut))).FormOf(Again));
        foreach (
            var name in fields.Select(one => one.Key).Where(name => name != "__RequestVerificationToken").Distinct().ToList()
        )
        foreach (var odd in (string[])["", "-1", "abc", "99999999999999999999", "\u202e1"])
        foreach (var verb in (string[])["look", "accepted"])
        {
            using var answer = await browser.PostAsync($"{Links.BenchWrongCuts(plan)}/{verb}", fields.With((name, odd)));
            Assert.True((int)answer.StatusCode is 200 or 400 or 404 or 409 or 422, $"{verb} {name}={odd}: {answer.StatusCode}");
        }

        Assert.Equal(PlanState.Ready, await StateAsync(shop, plan));
        Assert.Empty(await shop.StockAsync());
    }

    // The first cut that gives a leg, and the leg's mark.
    private static async Task<(int Cut, string Mark)> LegCutAsync(PlannedShop shop, Guid plan)
    {
        var wrong = shop.Server.Get<IWrongCutService>();
        foreach (var cut in (await shop.BoardAsync(plan)).Cuts)
            if ((await wrong.OfCutAsync(plan, 1, cut.Cut.N, ShopServer.Cancel))!.Given is [{ IsOfCut: true } leg, ..])
                return (cut.Cut.N, leg.Mark);
        throw new InvalidOperationException("no cut of the board gives a leg");
    }

    private static async Task TickToAsync(PlannedShop shop, Guid plan, int cut)
    {
        var bench = shop.Server.Get<IBenchService>();
        for (var n = 1; n <= cut; n++)
            Assert.True((await bench.SetCutAsync(plan, 0, 1, n, true, "test", CommandId.New(), ShopServer.Cancel)).Ok);
    }

    private static async Task<PlanState> StateAsync(PlannedShop shop, Guid plan) =>
        (await shop.Server.Get<IPlanService>().GetAsync(plan, ShopServer.Cancel))!.Summary.State;

    private static string Spaced(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
