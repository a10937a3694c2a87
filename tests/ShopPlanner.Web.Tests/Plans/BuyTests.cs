using Bunit;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Plans;
using ShopPlanner.Web.Features.Plans;

namespace ShopPlanner.Web.Tests.Plans;

/// <summary>The shopping list as a live page: what is pressed is bought, what is typed goes into the price list.</summary>
public sealed class BuyTests : IAsyncLifetime
{
    private PlannedShop shop = null!;
    private BunitContext context = null!;
    private Guid plan;
    private IRenderedComponent<PlanBuy> page = null!;

    public async ValueTask InitializeAsync()
    {
        shop = await PlannedShop.OpenAsync();
        context = PageTest.For(shop);
        plan = await shop.PlanAsync();
        var view = (await shop.Server.Get<IPlanService>().GetAsync(plan, ShopServer.Cancel))!;
        page = context.Render<PlanBuy>(given => given.Add(buy => buy.Plan, view).Add(buy => buy.Sign, "$"));
        page.WaitForElement(".buy-line");
    }

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public async Task A_tick_buys_what_is_left_and_the_next_takes_it_back()
    {
        Assert.Equal(("false", "0 of 1"), Tick());
        await PressAsync("Bought: Pine 1x3, 8 ft");
        Assert.Equal(("true", "1 of 1"), Tick());
        Assert.Equal(["$0.00", "$6.48", "$6.48"], Sums());
        Assert.Contains("Paid $6.48 for 1", page.Markup);
        await PressAsync("Bought: Pine 1x3, 8 ft");
        Assert.Equal(("false", "0 of 1"), Tick());
        Assert.Equal(["$6.48", "$0.00", "$6.48"], Sums());
    }

    [Fact]
    public async Task One_more_than_the_plan_cuts_is_extra()
    {
        await PressAsync("One more: Pine 1x3, 8 ft");
        await PressAsync("One more: Pine 1x3, 8 ft");
        Assert.Equal(("true", "1 of 1, 1 extra"), Tick());
        await PressAsync("One less: Pine 1x3, 8 ft");
        Assert.Equal(("true", "1 of 1"), Tick());
    }

    [Fact]
    public async Task A_new_price_is_shown_bought_at_and_offers_to_plan_again()
    {
        Assert.Empty(page.FindAll(".notice a"));
        await TypeAsync("price", "7.29");
        Assert.Contains($"replaces={plan}", page.Find(".notice a").GetAttribute("href"));
        Assert.Contains("planned at $6.48 each", page.Find(".buy-what").TextContent);
        await PressAsync("Bought: Pine 1x3, 8 ft");
        Assert.Equal(["$0.00", "$7.29", "$6.48"], Sums());
        await TypeAsync("paid", "7.00");
        Assert.Equal("$7.00", Sums()[1]);
    }

    [Fact]
    public async Task What_is_not_in_stock_is_said_and_can_be_taken_back()
    {
        await PressAsync("Not in stock: Pine 1x3, 8 ft");
        Assert.Contains("not in stock", page.Find(".buy-what").TextContent);
        Assert.Equal("Plan again with what is there", page.Find(".notice a").TextContent);
        await PressAsync("Not in stock: Pine 1x3, 8 ft");
        Assert.Empty(page.FindAll(".notice a"));
    }

    [Fact]
    public async Task A_price_that_cannot_be_read_is_kept_and_said_beside_it()
    {
        await TypeAsync("price", "cheap");
        Assert.Contains("‘cheap’ is not a price", page.Find(".buy-price .fault").TextContent);
        var list = await shop.Server.Get<IBuyingService>().OfPlanAsync(plan, ShopServer.Cancel);
        Assert.Equal("6.48", $"{list!.Lines.Single().Price}");
    }

    private (string? Pressed, string Count) Tick() =>
        (page.Find(".buy-tick").GetAttribute("aria-pressed"), page.Find(".buy-some > span").TextContent);

    // Still to pay, spent, planned.
    private List<string> Sums() => [.. page.FindAll(".buy-sums dd").Take(3).Select(sum => sum.TextContent)];

    private Task PressAsync(string name) =>
        page.FindAll("button").Single(one => one.GetAttribute("aria-label") == name).PressAsync();

    private Task TypeAsync(string field, string text) => page.Find($"[data-field='{field}']").TypedAsync(text);
}
