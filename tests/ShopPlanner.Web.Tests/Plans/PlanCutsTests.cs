using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Web.Features.Plans;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Plans;

/// <summary>A plan's boards at one look, and its cuts by board or by setting. Two legs of 30 in from one board.</summary>
public sealed class PlanCutsTests
{
    [Fact]
    public async Task The_overview_leads_to_each_board_and_says_what_it_is()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = await PlanOf(shop);
        var page = context.Render<PlanCuts>(given => given.Add(one => one.Plan, plan));
        var link = Assert.Single(page.FindAll(".thumbs a"));
        Assert.Equal($"{Links.Plan(plan.Summary.Id)}#layout-0", link.GetAttribute("href"));
        Assert.Equal("Board 1 8 ft", Said(link));
        Assert.Equal("Pine 1x3", page.Find(".overview h2").TextContent);
        Assert.Equal("-1", page.Find("#layout-0").GetAttribute("tabindex"));
        Assert.Equal(["A1", "A2"], page.FindAll(".thumb.wide-only text").Select(text => text.TextContent));
    }

    [Fact]
    public async Task Copies_are_told_as_times_and_what_is_on_hand_by_its_tag()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = await PlanOf(shop);
        var layout = plan.Plan.Layouts[0];
        var stock = plan.Stocks[layout.Stock] with { Tag = "B7", Store = null };
        plan = plan with
        {
            Plan = plan.Plan with { Layouts = [layout with { Copies = 3 }] },
            Stocks = plan.Stocks.SetItem(layout.Stock, stock),
        };
        var page = context.Render<PlanOverview>(given => given.Add(one => one.Plan, plan));
        Assert.Equal("Boards 1–3 ×3 B7", Said(page.Find(".thumbs a")));
    }

    [Fact]
    public async Task What_is_cut_is_marked()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var id = await shop.PlanAsync();
        var bench = shop.Server.Get<IBenchService>();
        Assert.True((await bench.SetCutAsync(id, 0, 1, 1, true, "Tablet", CommandId.New(), ShopServer.Cancel)).Ok);
        Assert.Equal("Board 1 8 ft begun", await StateAsync(context, bench, id));
        var finished = new FinishedStock(0, 1, AllCutsMade: true, [new MeasuredLeftover(0, "35", "", Keep: true)]);
        Assert.True((await bench.FinishAsync(id, finished, "Tablet", CommandId.New(), ShopServer.Cancel)).Ok);
        Assert.Equal("Board 1 8 ft ✓ cut", await StateAsync(context, bench, id));
    }

    [Fact]
    public async Task By_setting_every_cut_is_listed_under_its_figure()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = await PlanOf(shop);
        var navigation = context.Services.GetRequiredService<NavigationManager>();
        navigation.NavigateTo($"{Links.Plan(plan.Summary.Id)}?by=setting");
        var page = context.Render<PlanCuts>(given => given.Add(one => one.Plan, plan));
        Assert.Empty(page.FindAll(".layout"));
        Assert.Equal("By setting", page.Find("[aria-label='Order of the cuts'] [aria-current]").TextContent);
        Assert.Equal(["⅜″", "30″"], page.FindAll(".run-head .setting").Select(figure => figure.TextContent.Trim()));
        Assert.Equal(plan.Plan.Layouts.Sum(layout => layout.Cuts.Length), page.FindAll(".runs ul li").Count);
        var link = page.FindAll(".runs ul a")[^1];
        Assert.Equal($"{Links.Plan(plan.Summary.Id)}#layout-0", link.GetAttribute("href"));
        Assert.Equal("Board 1, cut 3", Said(link));
    }

    [Fact]
    public async Task A_turned_part_says_so_in_the_table_and_where_it_is_cut()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = await PlanOf(shop);
        var layout = plan.Plan.Layouts[0];
        plan = plan with
        {
            Plan = plan.Plan with
            {
                Layouts = [layout with { Pieces = [layout.Pieces[0] with { Turned = true }, layout.Pieces[1]] }],
            },
        };
        var parts = context.Render<PlanParts>(given => given.Add(one => one.Plan, plan));
        Assert.Equal("↔ turned: 1 of 2", parts.Find(".trim").TextContent);
        var cuts = context.Render<CutSteps>(given => given.Add(one => one.Plan, plan).Add(one => one.Index, 0));
        Assert.Single(cuts.FindAll("li"), step => step.TextContent.Contains("Leg (↔ turned)", StringComparison.Ordinal));
    }

    private static async Task<string> StateAsync(BunitContext context, IBenchService bench, Guid id)
    {
        var view = (await bench.GetAsync(id, ShopServer.Cancel))!;
        var page = context.Render<PlanOverview>(given => given.Add(one => one.Plan, view.Plan).Add(one => one.Bench, view));
        return Said(page.Find(".thumbs a"));
    }

    // As it is read aloud: without the drawing, which is hidden from those who cannot see it.
    private static string Said(IElement link) =>
        string.Join(
            ' ',
            link.ChildNodes.Where(node => node is not IElement { LocalName: "div" })
                .SelectMany(node => node.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        );

    private static async Task<PlanView> PlanOf(PlannedShop shop) =>
        (await shop.Server.Get<IPlanService>().GetAsync(await shop.PlanAsync(), ShopServer.Cancel))!;
}
