using System.Net;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Trash;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>The bench's pages as documents.</summary>
public sealed class BenchPageTests
{
    [Fact]
    public async Task The_list_names_what_is_ready_to_cut()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        Assert.Contains("Nothing to cut", (await browser.OpenAsync(Links.Bench)).Body!.TextContent);

        var plan = await shop.PlanAsync();

        var page = await browser.OpenAsync(Links.Bench);
        Assert.NotNull(page.QuerySelector($"a[href='{Links.BenchPlan(plan)}']"));
    }

    [Fact]
    public async Task A_board_s_page_works_without_its_script_and_shows_the_next_cut_with_its_figure()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var page = await browser.OpenAsync(Links.BenchPlan(await shop.PlanAsync()));

        Assert.All(page.QuerySelectorAll("script[src]"), script => Assert.Equal("module", script.GetAttribute("type")));
        Assert.NotNull(page.FormOf("Done"));
        Assert.Equal("Board 1 of 1", page.QuerySelector("h1")!.TextContent.Trim());
        Assert.NotNull(page.QuerySelector("svg.line-drawing"));
        Assert.NotEmpty(page.QuerySelector("#next .setting")!.TextContent.Trim());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_plan_made_before_a_change_says_so_on_top_begun_or_not(bool begun)
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        if (begun)
            using (await browser.SubmitAsync((await browser.OpenAsync(Links.BenchPlan(plan))).FormOf("Done"))) { }
        Assert.Null((await browser.OpenAsync(Links.BenchPlan(plan))).QuerySelector(".notice.warn"));
        var parts = shop.Server.Get<IPartService>();
        var row = (await parts.GetAsync(shop.Project.Id, ShopServer.Cancel))!.Rows[0];
        Assert.True(
            (
                await parts.SaveAsync(
                    shop.Project.Id,
                    [new PartEdit(row.Texts with { Length = "31" }, row.Version)],
                    ShopServer.Cancel
                )
            ).Ok
        );

        var page = await browser.OpenAsync(Links.BenchPlan(plan));

        Assert.Contains("out of date", page.QuerySelector(".notice.warn")!.TextContent);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    public async Task A_board_that_is_not_there_is_not_found(int number)
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();

        using var answer = await browser.GetAsync(Links.BenchPlan(plan, number));

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task A_plan_whose_project_was_deleted_says_so_and_goes_on_when_it_is_back()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var trash = shop.Server.Get<ITrashService>();
        var plan = await shop.PlanAsync();
        using (await browser.SubmitAsync((await browser.OpenAsync(Links.BenchPlan(plan))).FormOf("Done"))) { }
        var open = await browser.OpenAsync(Links.BenchPlan(plan));
        Assert.True((await trash.DeleteAsync(shop.Project.Id, ShopServer.Cancel)).Ok);

        var page = await browser.OpenAsync(Links.BenchPlan(plan));
        Assert.Contains("Boot-room bench was deleted", page.QuerySelector(".notice.warn")!.TextContent);
        Assert.NotNull(page.QuerySelector($".notice.warn a[href='{Links.Trash}']"));
        Assert.Empty(page.QuerySelectorAll("form"));
        using var late = await browser.SubmitAsync(open.FormOf("Done"));
        Assert.Equal(HttpStatusCode.Conflict, late.StatusCode);
        Assert.Contains(
            "restore the project from the trash, then mark this again",
            (await PlainBrowser.ReadAsync(late)).Body!.TextContent
        );

        Assert.True((await trash.RestoreAsync(shop.Project.Id, ShopServer.Cancel)).Ok);
        Assert.Null((await browser.OpenAsync(Links.BenchPlan(plan))).QuerySelector(".notice.warn"));
        Assert.True((await shop.BoardAsync(plan)).Cuts[0].Made);
        using var again = await browser.SubmitAsync(open.FormOf("Done"));
        Assert.Equal(HttpStatusCode.SeeOther, again.StatusCode);
    }

    [Fact]
    public async Task A_plan_given_up_is_not_cut()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        Assert.True((await shop.Server.Get<IPlanService>().WithdrawAsync(plan, ShopServer.Cancel)).Ok);

        var page = await browser.OpenAsync(Links.BenchPlan(plan));

        Assert.Contains("canceled", page.QuerySelector(".notice.warn")!.TextContent);
        Assert.Empty(page.QuerySelectorAll("form"));
    }
}
