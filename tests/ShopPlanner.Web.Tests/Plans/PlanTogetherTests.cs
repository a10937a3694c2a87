using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Plans;
using ShopPlanner.Web.Features.Plans;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Plans;

/// <summary>What a plan of two projects saves. Two legs of 30 in and one of 20 in come from one board of 6.48; alone, each
/// project buys a board.</summary>
public sealed class PlanTogetherTests : IAsyncLifetime
{
    private PlannedShop shop = null!;
    private BunitContext context = null!;
    private PlanView plan = null!;

    public async ValueTask InitializeAsync()
    {
        shop = await PlannedShop.OpenAsync();
        context = PageTest.For(shop);
        var stand = await shop.AddAsync("Plant stand");
        var id = await shop.PlanAsync(shop.Order() with { Projects = [shop.Project.Id, stand.Id], FromHand = [stand.Id] });
        plan = (await shop.Server.Get<IPlanService>().GetAsync(id, ShopServer.Cancel))!;
    }

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public void The_saving_stands_first_and_shares_add_up()
    {
        var page = Open();
        page.WaitForAssertion(() => Assert.Contains("$6.48 · 50%", page.Find(".summary .large dd").TextContent));
        Assert.Equal(
            ["Boot-room bench$6.48$4.86", "Plant stand — cut first, from the rack and bin$6.48$1.62", "Total$12.96$6.48"],
            page.FindAll("[aria-label='By project'] tr")
                .Skip(1)
                .Select(row => string.Concat(row.Children.Take(3).Select(cell => Words(cell.TextContent))))
        );
        Assert.Contains(
            "Boot-room bench (2 pieces), Plant stand (1 piece)",
            Words(page.Find("[aria-label='Who gets what'] tbody tr").TextContent)
        );
    }

    [Fact]
    public void Each_project_alone_is_a_link_away()
    {
        var page = Open();
        var link = page.WaitForElement("[aria-label='By project'] tbody a").GetAttribute("href");
        Assert.Equal(Links.PlanAlone(plan.Summary.Id, shop.Project.Id), link);
        context.Services.GetRequiredService<NavigationManager>().NavigateTo(link!);
        var alone = Open();
        alone.WaitForAssertion(() => Assert.Contains("Boot-room bench, planned alone", alone.Markup));
        Assert.Contains("Nothing is held for this plan", alone.Markup);
        Assert.Contains("$6.48", alone.Find(".summary .large dd").TextContent);
    }

    private static string Words(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private IRenderedComponent<PlanTogether> Open() =>
        context.Render<PlanTogether>(given => given.Add(one => one.Plan, plan).Add(one => one.Sign, "$"));
}
