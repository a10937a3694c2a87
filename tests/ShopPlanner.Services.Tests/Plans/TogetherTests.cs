using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Verification;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>Several projects in one plan: what it saves, what each of them bears, who gets which wood.</summary>
public sealed class TogetherTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private ProjectView stand = null!;

    private TestShop Shop => given.Shop;

    private IPlanTogether Together => Shop.Get<IPlanTogether>();

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync(change: services => services.AddSingleton<ICutPlanner, ShopCutPlanner>());
        stand = await Some.ProjectAsync(Shop, "Plant stand");
        await Shop.Parts.SaveAsync(stand.Id, [Some.New(Some.Part("60", "A", "1"))], TestShop.Cancel);
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    // By hand: a board of 96 in holds three legs of 30 in, or one and the stand's 60 in. Four legs need two boards and the stand
    // one; together, three legs and then the fourth beside the 60 in, they need two.
    [Fact]
    public async Task The_saving_is_the_difference_to_one_after_another()
    {
        var plan = await PlanAsync(await LegsAsync(4));
        var compared = (await Together.OfAsync(plan.Summary.Id, TestShop.Cancel))!;
        Assert.Equal(
            [("Boot-room bench", 12.96m), ("Plant stand", 6.48m)],
            compared.Alone.Select(one => (one.Name, one.Cost.Amount))
        );
        Assert.Equal((19.44m, 12.96m), (compared.AloneCost.Amount, plan.Plan.Cost.Amount));
    }

    [Fact]
    public async Task Both_plans_are_there_to_be_looked_at_and_can_be_cut()
    {
        var plan = await PlanAsync(await LegsAsync(4));
        foreach (var project in plan.Order.Projects)
        {
            var alone = (await Together.AloneAsync(plan.Summary.Id, project, TestShop.Cancel))!;
            Assert.Empty(PlanVerifier.Check(alone.Request, alone.Plan));
            Assert.Equal([project], alone.Order.Projects);
            Assert.All(alone.Parts.Values, part => Assert.Equal((project, "A"), (part.ProjectId, part.Mark)));
            Assert.All(alone.Plan.Layouts, layout => Assert.Contains(layout.Stock, alone.Stocks));
        }

        Assert.Empty(PlanVerifier.Check(plan.Request, plan.Plan));
        Assert.Null(await Together.AloneAsync(plan.Summary.Id, Guid.NewGuid(), TestShop.Cancel));
        Assert.Null(await Together.AloneAsync(Guid.NewGuid(), stand.Id, TestShop.Cancel));
    }

    [Fact]
    public async Task A_plan_of_one_project_is_compared_with_nothing()
    {
        var plan = await given.PlanAsync();
        Assert.Null(await Together.OfAsync(plan.Summary.Id, TestShop.Cancel));
        Assert.Equal(0, Shop.CountRows()["PlanComparisons"]);
    }

    [Fact]
    public async Task Shares_of_cost_and_wood_add_up_to_the_plan()
    {
        await given.OffcutAsync("41 3/8");
        var plan = await PlanAsync(await LegsAsync(7));
        var shares = PlanShares.Of(plan);
        Assert.Equal(["Boot-room bench", "Plant stand"], shares.Select(share => share.Name));
        Assert.Equal(plan.Plan.Cost, shares.Aggregate(Money.Zero, (sum, share) => sum + share.Cost));
        var cut = plan.Plan.Layouts.Sum(layout => Face(plan, layout.Stock) * layout.Copies);
        Assert.Equal(cut, shares.Sum(share => share.Wood.Cut.ToSquareFeet()), 12);
        Assert.Equal(
            [7, 1],
            plan.Order.Projects.Select(project =>
                PlanShares
                    .Taken(plan)
                    .SelectMany(taken => taken.For)
                    .Where(one => one.Name == shares.Single(share => share.Project == project).Name)
                    .Sum(one => one.Pieces)
            )
        );
    }

    [Fact]
    public async Task What_is_cut_first_is_cut_from_the_bin()
    {
        await given.OffcutAsync("62");
        var order = await LegsAsync(2);
        var first = await PlanAsync(order with { FromHand = [stand.Id] });
        Assert.Equal("Plant stand", ForOf(first, "B1").Name);
        Assert.Equal([stand.Id, given.Project.Id], Compared(first).Alone.Select(one => one.Project));
        await Shop.Plans.WithdrawAsync(first.Summary.Id, TestShop.Cancel);
        var other = await PlanAsync(order with { FromHand = [given.Project.Id] });
        Assert.Equal("Boot-room bench", ForOf(other, "B1").Name);
    }

    [Fact]
    public async Task Only_a_project_of_the_plan_can_be_cut_first()
    {
        var order = given.Order() with { FromHand = [stand.Id] };
        var refused = await Shop.Plans.PreviewAsync(order, TestShop.Cancel);
        Assert.Equal(("FromHand", OutcomeKind.Faulty), (refused.Faults.Single().Field, refused.Kind));
    }

    [Fact]
    public async Task A_canceled_plan_gives_the_wood_back_and_takes_it_again()
    {
        await given.OffcutAsync("95");
        var plan = await PlanAsync(await LegsAsync(1));
        Assert.Equal(plan.Summary.Id, await PromisedAsync());
        Assert.True((await Shop.Plans.WithdrawAsync(plan.Summary.Id, TestShop.Cancel)).Ok);
        Assert.Null(await PromisedAsync());
        Assert.NotNull(await Together.OfAsync(plan.Summary.Id, TestShop.Cancel));
        Assert.True((await Shop.Plans.ReinstateAsync(plan.Summary.Id, TestShop.Cancel)).Ok);
        Assert.Equal(plan.Summary.Id, await PromisedAsync());
    }

    [Fact]
    public async Task A_second_store_has_to_be_worth_the_trip()
    {
        var cheap = (await Shop.Stores.CreateAsync("Far mill", Some.Inch, CommandId.New(), TestShop.Cancel)).Value!;
        cheap = (await Shop.Stores.SavePriceAsync(cheap.Id, Some.Price(price: "5.00"), CommandId.New(), TestShop.Cancel)).Value!;
        var order = (await LegsAsync(4)) with { Stores = [given.Store.Id, cheap.Id] };
        Assert.Equal(10m, (await PlanAsync(order)).Plan.Cost.Amount);
        cheap = (await Shop.Stores.SaveAsync(cheap with { TripCost = "3", TripMinutes = "50" }, TestShop.Cancel)).Value!;
        Assert.Equal(("3.00", "50"), (cheap.TripCost, cheap.TripMinutes));
        var counted = await PlanAsync(order with { CountTrips = true });
        Assert.Equal(12.96m, counted.Plan.Cost.Amount);
        var baskets = Compared(counted).Baskets;
        Assert.Equal(
            [("Corner lumber", 12.96m, 0), ("Far mill", 13m, 50)],
            baskets.Select(one => (one.Stores.Single(), one.Total.Amount, one.Minutes))
        );
        Assert.DoesNotContain(counted.Request.Stock, stock => counted.Stocks[stock.Id].Store == "Far mill");
    }

    [Theory]
    [InlineData("far", "", "TripCost")]
    [InlineData("", "1.5", "TripMinutes")]
    [InlineData("", "1441", "TripMinutes")]
    public async Task A_trip_that_is_no_figure_is_refused(string cost, string minutes, string field)
    {
        var saved = await Shop.Stores.SaveAsync(given.Store with { TripCost = cost, TripMinutes = minutes }, TestShop.Cancel);
        Assert.Equal(field, saved.Faults.Single().Field);
    }

    private static decimal Face(PlanView plan, string id)
    {
        var stock = plan.Request.Stock.Single(one => one.Id == id);
        return Area.Of(stock.Length, stock.Width).ToSquareFeet();
    }

    private static (string Name, int Pieces) ForOf(PlanView plan, string tag) =>
        PlanShares.Taken(plan).Single(taken => taken.Stock.Tag == tag).For.Single();

    private PlanComparison Compared(PlanView plan) =>
        Together.OfAsync(plan.Summary.Id, TestShop.Cancel).GetAwaiter().GetResult()!;

    private async Task<PlanOrder> LegsAsync(int legs)
    {
        var row = (await Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows.Single();
        var edit = new PartEdit(row.Texts with { Quantity = $"{legs}" }, row.Version);
        Assert.True((await Shop.Parts.SaveAsync(given.Project.Id, [edit], TestShop.Cancel)).Ok);
        return given.Order() with { Projects = [given.Project.Id, stand.Id] };
    }

    private async Task<PlanView> PlanAsync(PlanOrder order) => await given.PlanAsync(order);

    private async Task<Guid?> PromisedAsync() => (await Shop.Stock.ListAsync(TestShop.Cancel)).Single().PromisedPlanId;
}
