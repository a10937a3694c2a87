using System.Collections.Immutable;
using Bunit;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Plans;
using ShopPlanner.Web.Features.Plans;

namespace ShopPlanner.Web.Tests.Plans;

/// <summary>Waste and cost by project on the plan's page. Two legs of 30 in come from one board of 96 in × 2 1/2.</summary>
public sealed class PlanFiguresTests
{
    // 96 × 2 1/2 is 1.67 sq ft; 60 × 2 1/2 in parts, 35 1/4 × 2 1/2 to keep. What is left of 96 is 3/4 in: under a tenth of a
    // square foot, 0.78 percent.
    [Fact]
    public async Task Waste_is_told_as_a_share_and_as_an_area_and_offcuts_apart()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = await PlanOf(shop);
        var kept = Assert.Single(plan.Plan.Layouts[0].Leftovers, left => left.Keep);
        Assert.Equal(Length.FromInches(35, 1, 4), kept.Dx);
        var page = context.Render<PlanFigures>(given => given.Add(one => one.Plan, plan).Add(one => one.Sign, "$"));
        var row = page.Find(".wood-use tbody tr");
        Assert.Equal("Pine 1x3", row.QuerySelector("th")!.ChildNodes[0].TextContent.Trim());
        Assert.Equal("1.7 sq ft cut up, 1 sq ft in parts", row.QuerySelector("th .sub")!.TextContent);
        Assert.Equal(["0.6 sq ft", "1% under 0.1 sq ft"], row.QuerySelectorAll("td").Select(cell => cell.TextContent));
        Assert.Equal("1% under 0.1 sq ft", page.FindAll(".wood-use tfoot td")[1].TextContent);
    }

    [Fact]
    public async Task The_cost_of_one_project_is_the_plan_s()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = await PlanOf(shop);
        var page = context.Render<PlanFigures>(given => given.Add(one => one.Plan, plan).Add(one => one.Sign, "$"));
        Assert.Empty(page.FindAll(".project-costs"));
    }

    [Fact]
    public async Task Several_projects_share_the_cost_and_the_rule_is_one_press_away()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = OfTwo(await PlanOf(shop));
        var page = context.Render<PlanFigures>(given => given.Add(one => one.Plan, plan).Add(one => one.Sign, "$"));
        Assert.Equal(
            ["Boot-room bench$3.24", "Stool$3.24", "Total$6.48"],
            page.FindAll(".project-costs tr").Skip(1).Select(row => string.Concat(row.Children.Select(cell => cell.TextContent)))
        );
        Assert.Contains("by the area of their parts", page.Find("[aria-label='Cost by project'] .help-says").TextContent);
    }

    [Fact]
    public async Task The_head_says_the_waste_in_short()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = await PlanOf(shop);
        var page = context.Render<PlanHead>(given => given.Add(head => head.Plan, plan).Add(head => head.Sign, "$"));
        Assert.Contains("Waste1% · under 0.1 sq ft", page.Find(".summary").TextContent);
    }

    // The second leg is another project's.
    private static PlanView OfTwo(PlanView plan)
    {
        var (other, leg) = (Guid.CreateVersion7(), plan.Request.Parts[0]);
        var layout = plan.Plan.Layouts[0];
        ImmutableArray<Cutting.PlacedPiece> pieces = [layout.Pieces[0], layout.Pieces[1] with { Part = "S" }];
        return plan with
        {
            Order = plan.Order with { Projects = [.. plan.Order.Projects, other] },
            Request = plan.Request with { Parts = [leg with { Quantity = 1 }, leg with { Id = "S", Quantity = 1 }] },
            Plan = plan.Plan with { Layouts = [layout with { Pieces = pieces }] },
            Parts = plan.Parts.Add("S", plan.Parts[leg.Id] with { PartId = "S", ProjectId = other, Project = "Stool" }),
        };
    }

    private static async Task<PlanView> PlanOf(PlannedShop shop) =>
        (await shop.Server.Get<IPlanService>().GetAsync(await shop.PlanAsync(), ShopServer.Cancel))!;
}
