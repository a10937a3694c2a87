using Bunit;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Features.Plans;

namespace ShopPlanner.Web.Tests.Plans;

/// <summary>The top of a plan's page and its sides.</summary>
public sealed class PlanHeadTests
{
    [Fact]
    public async Task The_summary_says_the_cost_and_how_good_it_is_known_to_be()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = await Read(shop);
        var page = context.Render<PlanHead>(given => given.Add(head => head.Plan, plan).Add(head => head.Sign, "$"));

        // One board of 6.48 is needed and enough.
        Assert.Equal("$6.48", page.Find(".summary .large dd").TextContent);
        Assert.Contains("Proven cheapest", page.Find(".summary").TextContent);
    }

    [Fact]
    public async Task Out_of_date_it_says_what_changed_and_offers_to_plan_again_in_its_place()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var id = await shop.PlanAsync();
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
        var plan = (await shop.Server.Get<IPlanService>().GetAsync(id, ShopServer.Cancel))!;

        var page = context.Render<PlanHead>(given => given.Add(head => head.Plan, plan).Add(head => head.Sign, "$"));

        Assert.Contains(plan.Changes[0], page.Find(".notice.warn").TextContent);
        Assert.Contains($"replaces={id}", page.Find(".notice.warn a").GetAttribute("href"));
    }

    [Fact]
    public async Task Withdrawn_it_can_be_taken_up_again()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plans = shop.Server.Get<IPlanService>();
        var id = await shop.PlanAsync();
        var plan = (await plans.GetAsync(id, ShopServer.Cancel))!;
        var page = context.Render<PlanHead>(given => given.Add(head => head.Plan, plan));

        page.FindAll("button").Single(button => button.TextContent.Trim() == "Cancel plan").Click();
        Assert.Equal(PlanState.Withdrawn, (await plans.GetAsync(id, ShopServer.Cancel))!.Summary.State);
        var withdrawn = (await plans.GetAsync(id, ShopServer.Cancel))!;
        page.Render(given => given.Add(head => head.Plan, withdrawn));
        page.FindAll("button").Single(button => button.TextContent.Trim() == "Restore plan").Click();

        Assert.Equal(PlanState.Ready, (await plans.GetAsync(id, ShopServer.Cancel))!.Summary.State);
    }

    [Fact]
    public async Task The_shopping_list_adds_up_by_store()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var plan = await Read(shop);

        var page = context.Render<PlanBuy>(given => given.Add(buy => buy.Plan, plan).Add(buy => buy.Sign, "$"));

        Assert.Equal("Corner lumber", page.WaitForElement("section h2").TextContent);
        Assert.Contains("$6.48", page.Find(".buy-sum").TextContent);
        Assert.Contains("30″ + 30″", page.Find(".lengths").TextContent);
    }

    private static async Task<PlanView> Read(PlannedShop shop) =>
        (await shop.Server.Get<IPlanService>().GetAsync(await shop.PlanAsync(), ShopServer.Cancel))!;
}
