using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>New stock without a price beside offcuts that have one: a plan costs what the prices say, and wood decides the rest.</summary>
public sealed class UnpricedStockTests
{
    private static readonly CutStock Kept = Some.Stock("B1", "40", price: 2.5m, quantity: 1, offcut: true);

    [Fact]
    public void An_offcut_with_a_price_stays_in_the_bin_while_new_stock_costs_nothing()
    {
        var plan = Planned([Kept, Some.Stock("s", "96")], [Some.Part("A", "30")]);
        Assert.Equal((Money.Zero, PlanStatus.Proven), (plan.Cost, plan.Status));
        Assert.Equal("s", Assert.Single(plan.Layouts).Stock);
    }

    [Fact]
    public void Where_new_stock_runs_out_the_offcuts_price_is_the_cost()
    {
        var plan = Planned([Kept, Some.Stock("s", "96", quantity: 1)], [Some.Part("A", "90"), Some.Part("B", "30")]);
        Assert.Equal((Money.From(2.5m), Money.Zero, 2), (plan.Cost, plan.CostLowerBound, plan.Layouts.Length));
        Assert.Empty(plan.Unplaced);
    }

    [Fact]
    public void Planning_again_counts_the_same_money()
    {
        var request = Request([Kept, Some.Stock("s", "96", quantity: 1)], [Some.Part("A", "90"), Some.Part("B", "30")]);
        var plan = Some.Planned(request);
        var again = Some.Planned(request, Some.Short with { Earlier = new(request, plan) });
        Assert.Equal((plan.Cost, plan.CostLowerBound), (again.Cost, again.CostLowerBound));
    }

    [Fact]
    public void An_offcut_without_a_price_is_cut_before_new_stock()
    {
        var plan = Planned([Some.Stock("B1", "40", quantity: 1, offcut: true), Some.Stock("s", "96")], [Some.Part("A", "30")]);
        Assert.Equal("B1", Assert.Single(plan.Layouts).Stock);
    }

    [Fact]
    public void Progress_tells_the_money_too()
    {
        var told = new List<SearchProgress>();
        var request = Request([Kept, Some.Stock("s", "96", quantity: 1)], [Some.Part("A", "90"), Some.Part("B", "30")]);
        Some.Planned(request, Some.Short with { Progress = told.Add });
        Assert.Equal(Money.From(2.5m), told[^1].Cost);
    }

    private static CutPlan Planned(IEnumerable<CutStock> stock, IEnumerable<CutPart> parts) =>
        Some.Planned(Request(stock, parts));

    private static CutRequest Request(IEnumerable<CutStock> stock, IEnumerable<CutPart> parts) =>
        Some.Request([Some.Board()], stock, parts);
}
