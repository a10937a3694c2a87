using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Pages;

/// <summary>The demo's half cut project tells how far it is, in the same true words, wherever it or its plan is listed.</summary>
public sealed class ProgressTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    [Fact]
    public async Task Every_place_tells_the_cuts_and_boards_of_the_bench()
    {
        var plan = (await web.Service<IPlanService>().ListAsync(cancel: Cancel)).Single();
        var stocks = (await web.Service<IBenchService>().GetAsync(plan.Id, Cancel))!.Stocks;
        var cuts = stocks.SelectMany(stock => stock.Cuts).ToList();
        var (made, finished) = (cuts.Count(cut => cut.Made), stocks.Count(stock => stock.Finished));
        Assert.InRange(made, 1, cuts.Count - 1);
        var words = $"{made} of {cuts.Count} cuts done, {finished} of {stocks.Length} boards and sheets finished";
        var project = plan.Projects.Single();

        Assert.Equal(2, await CountAsync(Links.Home, words));
        foreach (var address in new[] { Links.Projects, Links.Plans, Links.Bench, Links.Plan(plan.Id) })
            Assert.Equal((address, 1), (address, await CountAsync(address, words)));
        foreach (var address in new[] { Links.Parts(project), Links.Buy(project), Links.Cuts(project), Links.Idea(project) })
            Assert.Equal((address, 1), (address, await CountAsync(address, words)));
    }

    [Fact]
    public async Task The_state_stands_beside_it_and_nothing_is_told_of_a_project_without_a_plan()
    {
        var projects = await web.Service<IProjectService>().ListAsync(cancel: Cancel);
        var page = await OpenAsync(Links.Projects);
        var rows = page.QuerySelectorAll("li.row");
        Assert.Equal(projects.Count, rows.Length);
        foreach (var row in rows)
            Assert.Equal(
                row.QuerySelector(".name")!.TextContent == "Plant stand" ? ("Cutting", 1) : ("Planning", 0),
                (row.QuerySelector(".state")!.TextContent, row.QuerySelectorAll(".cut-bar progress").Length)
            );
    }

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private async Task<int> CountAsync(string address, string words)
    {
        var text = string.Join(
            ' ',
            (await OpenAsync(address)).QuerySelector("main")!.TextContent.Split().Where(word => word != "")
        );
        return text.Split(words).Length - 1;
    }

    private async Task<IHtmlDocument> OpenAsync(string address) =>
        new HtmlParser().ParseDocument(await web.Client.GetStringAsync(address, Cancel));
}
