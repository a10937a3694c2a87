using System.Collections.Immutable;
using Bunit;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Features.Bench;
using ShopPlanner.Web.Features.Plans;

namespace ShopPlanner.Web.Tests.Plans;

/// <summary>Cuts by the store, parts cut long and practice pieces on the plan's pages and at the bench.</summary>
public sealed class StoreCutTests
{
    [Fact]
    public async Task The_store_s_cuts_stand_before_those_at_home()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = FirstCutByStore(await PlanOf(shop));
        var page = context.Render<CutSteps>(given => given.Add(one => one.Plan, plan).Add(one => one.Index, 0));
        Assert.Equal(["Cuts at the store", "Cuts at home"], page.FindAll("h3").Select(head => head.TextContent));
        Assert.Equal("1", page.FindAll("ol")[0].QuerySelectorAll("li .n").Single().TextContent);
    }

    [Fact]
    public async Task Without_a_store_there_is_one_list()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = await PlanOf(shop);
        var page = context.Render<CutSteps>(given => given.Add(one => one.Plan, plan).Add(one => one.Index, 0));
        Assert.Equal(["Cuts in order"], page.FindAll("h3").Select(head => head.TextContent));
    }

    [Fact]
    public async Task The_list_for_the_counter_names_sheet_cut_figure_and_sizes()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = FirstCutByStore(await PlanOf(shop));
        var page = context.Render<PlanBuy>(given => given.Add(buy => buy.Plan, plan).Add(buy => buy.Sign, "$"));
        var cut = page.WaitForElement(".store-cuts li");
        Assert.StartsWith("Board 1 Pine 1x3, 8 ft", page.Find(".store-cuts h4").TextContent, StringComparison.Ordinal);
        Assert.Equal(
            ("1", LengthFormat.WithUnit(plan.Plan.Layouts[0].Cuts[0].At, plan.Plan.Unit)),
            (cut.Children[0].TextContent, cut.Children[1].TextContent)
        );
        Assert.StartsWith("Crosscut the board. 1a ", cut.Children[2].TextContent, StringComparison.Ordinal);
        Assert.Contains("Up to ⅛″ off is fine", page.Find(".store-cuts p").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_head_counts_them_apart()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = FirstCutByStore(await PlanOf(shop));
        var page = context.Render<PlanHead>(given => given.Add(head => head.Plan, plan).Add(head => head.Sign, "$"));
        var cuts = plan.Plan.Layouts[0].Cuts.Length;
        Assert.Contains("At the store1 cut", page.Find(".summary").TextContent, StringComparison.Ordinal);
        Assert.Contains($"{cuts - 1} cut", page.Find(".summary").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task At_the_bench_they_are_a_list_of_their_own()
    {
        await using var shop = await PlannedShop.OpenAsync();
        var stock = await shop.BoardAsync(await shop.PlanAsync());
        Assert.Equal("Cuts in order", Assert.Single(BenchWords.Places(stock)).Title);
        ImmutableArray<BenchCut> cuts = [.. stock.Cuts.Select((cut, i) => cut with { Cut = cut.Cut with { ByStore = i == 0 } })];
        var places = BenchWords.Places(stock with { Cuts = cuts }).ToList();
        Assert.Equal(
            [("Cuts at the store", 1), ("Cuts at home", cuts.Length - 1)],
            places.Select(place => (place.Title, place.Cuts.Count))
        );
    }

    [Fact]
    public async Task A_part_cut_long_shows_its_finished_size_and_what_is_cut_and_practice_is_marked()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var parts = shop.Server.Get<IPartService>();
        var row = (await parts.GetAsync(shop.Project.Id, ShopServer.Cancel))!.Rows[0];
        Assert.True(
            (
                await parts.SaveAsync(
                    shop.Project.Id,
                    [new(row.Texts with { LongBy = "1/2", Practice = "1" }, row.Version)],
                    ShopServer.Cancel
                )
            ).Ok
        );
        var plan = await PlanOf(shop);
        var page = context.Render<PlanParts>(given => given.Add(one => one.Plan, plan));
        Assert.Equal("Cut 30 ½″ long, trim to 30″ later.", page.Find(".trim").TextContent);
        var rows = page.FindAll(".parts-table tbody tr")
            .Select(one => string.Join('|', one.QuerySelectorAll("td").Select(cell => cell.TextContent.Trim())))
            .ToList();
        Assert.Contains("|30″|", rows[0], StringComparison.Ordinal);
        Assert.StartsWith("pA|Test piece for A|1|30 ½″|", rows[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_plan_keeps_to_is_said_before_it_is_made()
    {
        await using var shop = await PlannedShop.OpenAsync();
        var request = (await PlanOf(shop)).Request with
        {
            Carry = new(Length.FromInches(72), LengthText.Longest),
            Store = new(2, Length.Zero),
        };
        request = request with
        {
            Saw = request.Saw with { WidestRip = Length.FromInches(24), LongestCrosscut = Length.FromInches(12) },
        };
        Assert.Equal(
            ["rips up to 24″ wide", "crosscuts up to 12″", "pieces up to 72″ long in the car", "2 store cuts per board or sheet"],
            OrderDraft.Limits(request)
        );
    }

    private static async Task<PlanView> PlanOf(PlannedShop shop) =>
        (await shop.Server.Get<IPlanService>().GetAsync(await shop.PlanAsync(), ShopServer.Cancel))!;

    private static PlanView FirstCutByStore(PlanView plan)
    {
        var layout = plan.Plan.Layouts[0];
        ImmutableArray<Cut> cuts = [layout.Cuts[0] with { ByStore = true }, .. layout.Cuts.Skip(1)];
        return plan with
        {
            Request = plan.Request with { Store = new StoreCuts(1, Length.FromInches(0, 1, 8)) },
            Plan = plan.Plan with { Layouts = [layout with { Cuts = cuts }, .. plan.Plan.Layouts.Skip(1)] },
        };
    }
}
