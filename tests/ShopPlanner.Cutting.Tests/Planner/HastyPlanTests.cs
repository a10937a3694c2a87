namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>A plan made in haste is often dear. What it says of the least cost must hold all the same for plans made at leisure.</summary>
public sealed class HastyPlanTests
{
    private const int Requests = 30;
    private static readonly SearchControl Haste = new()
    {
        Iterations = 1,
        Workers = 1,
        Cancel = new(canceled: true),
    };
    private static readonly SearchControl Leisure = new() { Iterations = 1500, Workers = 1 };

    [Fact]
    public void No_later_plan_costs_less_than_an_early_bound()
    {
        var (mended, n) = (0, 0);
        foreach (var request in RandomRequests.From(5_003, Requests, mostParts: 14))
        {
            var (hasty, best) = (Some.Planned(request, Haste), Some.Planned(request, Leisure));
            Assert.True(
                hasty.CostLowerBound <= best.Cost,
                $"request {n}: bound {hasty.CostLowerBound} in haste, cost {best.Cost} at leisure"
            );
            Assert.True(best.Cost <= hasty.Cost, $"request {n}: cost {hasty.Cost} in haste, {best.Cost} at leisure");
            mended += best.Cost < hasty.Cost ? 1 : 0;
            n++;
        }

        Assert.True(mended * 10 >= Requests, $"only {mended} of {Requests} plans became cheaper");
    }
}
