using AngleSharp.Dom;
using Bunit;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Features.Projects;

namespace ShopPlanner.Web.Tests.Projects;

/// <summary>Where a project stands, at the top of its pages: told by its cuts, and corrected by hand.</summary>
public sealed class ProjectHeadTests : IAsyncLifetime
{
    private PlannedShop shop = null!;
    private BunitContext context = null!;

    public async ValueTask InitializeAsync()
    {
        shop = await PlannedShop.OpenAsync();
        context = PageTest.For(shop);
    }

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public async Task It_says_the_state_and_how_far_the_cutting_is()
    {
        Assert.Equal("Planning", State(await OpenAsync()).TextContent);
        var plan = await shop.PlanAsync();
        await shop.TickAsync(plan);
        var page = await OpenAsync();
        Assert.Equal("Cutting", State(page).TextContent);
        var cuts = (await shop.BoardAsync(plan)).Cuts.Length;
        Assert.Equal($"1 of {cuts} cuts done, 0 of 1 board or sheet finished", page.Find(".cut-bar span").TextContent);
    }

    [Fact]
    public async Task Built_it_is_finished_and_done_by_two_presses()
    {
        await shop.FinishAsync(await shop.PlanAsync());
        var page = await OpenAsync();
        Assert.Equal("Building", State(page).TextContent);
        await PressAsync(page, "Start finishing");
        page = await OpenAsync();
        Assert.Equal("Finishing", State(page).TextContent);
        await PressAsync(page, "Mark as done");
        page = await OpenAsync();
        Assert.Equal("Done", State(page).TextContent);
        Assert.Empty(page.FindAll(".project-state button"));
    }

    [Fact]
    public async Task Set_by_hand_it_says_so_and_what_it_would_be()
    {
        await shop.PlanAsync();
        var page = await OpenAsync();
        page.Find("[data-opens=project]").Click();
        Assert.Contains("Changes by itself", page.Markup);
        await page.FindAll(".field").Single(IsState).QuerySelector("select")!.TypedAsync("Cutting");
        page = await OpenAsync();
        Assert.Equal("Cutting", State(page).TextContent);
        page.Find("[data-opens=project]").Click();
        Assert.Contains("Set by hand. By its plans and cuts it would be: Buying", page.Markup);
    }

    [Fact]
    public async Task A_state_that_cuts_moved_meanwhile_is_not_written_over()
    {
        var plan = await shop.PlanAsync();
        var page = await OpenAsync();
        page.Find("[data-opens=project]").Click();
        await shop.TickAsync(plan);
        await page.FindAll(".field").Single(IsState).QuerySelector("select")!.TypedAsync("Building");
        Assert.Equal(ProjectState.Cutting, (await ReadAsync()).State);
    }

    private static bool IsState(IElement field) => field.QuerySelector("label")?.TextContent == "State";

    private static IElement State(IRenderedComponent<ProjectHead> page) => page.Find(".project-state .state");

    private static Task PressAsync(IRenderedComponent<ProjectHead> page, string words) =>
        page.FindAll(".project-state button").Single(button => button.TextContent == words).ClickAsync(new());

    private async Task<ProjectView> ReadAsync() =>
        (await shop.Server.Get<IProjectService>().GetAsync(shop.Project.Id, ShopServer.Cancel))!;

    private async Task<IRenderedComponent<ProjectHead>> OpenAsync()
    {
        var project = await ReadAsync();
        return context.Render<ProjectHead>(given => given.Add(head => head.Project, project));
    }
}
