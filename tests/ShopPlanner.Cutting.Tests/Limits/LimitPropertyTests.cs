using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.Limits;

/// <summary>What holds for every plan with limits, however odd they are.</summary>
public sealed class LimitPropertyTests
{
    private static readonly SearchControl Brief = new() { Time = TimeSpan.FromMilliseconds(80), Workers = 1 };
    private static readonly SearchControl Rounds = new() { Iterations = 100, Workers = 1 };

    private static readonly Gen<Length?> Reach = Gen.Int[-600, 900]
        .Select(mm => mm < 60 ? (Length?)null : Length.FromMillimetres(mm));

    private static readonly Gen<StoreCuts?> Store = Gen.Select(Gen.Int[0, 4], Gen.Int[-60, 80])
        .Select((most, tenths) => most == 0 ? null : new StoreCuts(most, Length.FromMillimetres(Math.Max(0, tenths) / 10m)));

    private static readonly Gen<CarryLimit?> Carry = Gen.Select(Gen.Int[-300, 1500], Gen.Int[100, 900])
        .Select(
            (longest, widest) =>
                longest < 200
                    ? null
                    : new CarryLimit(Length.FromMillimetres(longest), Length.FromMillimetres(Math.Min(longest, widest)))
        );

    private static readonly Gen<CutRequest> Requests = Gen.Select(PlanPropertyTests.Requests, Reach, Reach, Store, Carry)
        .Select(
            (request, rip, crosscut, store, carry) =>
                request with
                {
                    Saw = request.Saw with { WidestRip = rip, LongestCrosscut = crosscut },
                    Store = store,
                    Carry = carry,
                }
        );

    [Fact]
    public void Every_plan_passes_the_verifier_and_costs_no_less_than_without_limits()
    {
        var (byStore, atHome) = (0, 0);
        Requests.Sample(
            request =>
            {
                var plan = Some.Planned(request, Brief);
                if (plan.Layouts.Any(layout => layout.StoreCuts().Length > 0))
                    byStore++;
                if (plan.Unplaced.Any(part => part.Reason.Contains("than your saw makes", StringComparison.Ordinal)))
                    atHome++;
                if (plan.Unplaced.IsEmpty)
                    Assert.True(plan.Cost >= Some.Planned(Free(request), Brief).CostLowerBound);
            },
            iter: 200,
            threads: 1
        );
        Assert.True(
            byStore >= 20 && atHome >= 10,
            $"only {byStore} plans with store cuts, {atHome} with parts that the saw cannot cut"
        );
    }

    // Parts without room may be placed by luck; a part that no stock yields must be named by its limit.
    [Fact]
    public void New_stock_without_end_leaves_nothing_out_but_what_a_limit_forbids() =>
        Requests.Sample(
            request =>
            {
                var endless = request with
                {
                    Stock = [.. request.Stock.Select(stock => stock with { Offcut = false, Quantity = null })],
                };
                Assert.DoesNotContain(
                    Some.Planned(endless, Brief).Unplaced,
                    part => part.Reason.Contains("no room left", StringComparison.Ordinal)
                );
            },
            iter: 60,
            threads: 1
        );

    [Fact]
    public void Limits_that_nothing_comes_near_change_no_plan() =>
        PlanPropertyTests.Requests.Sample(
            request =>
            {
                var far = request with
                {
                    Saw = request.Saw with { WidestRip = Some.Of("96"), LongestCrosscut = Some.Of("120") },
                    Store = new(2, Some.Of("1/8")),
                    Carry = new(Some.Of("120"), Some.Of("120")),
                };
                Assert.Equal(Drawn(Some.Planned(request, Rounds)), Drawn(Some.Planned(far, Rounds)));
            },
            iter: 40,
            threads: 1
        );

    private static CutRequest Free(CutRequest request) =>
        request with
        {
            Saw = request.Saw with { WidestRip = null, LongestCrosscut = null },
            Store = null,
            Carry = null,
        };

    private static IEnumerable<string> Drawn(CutPlan plan) =>
        plan.Layouts.Select(layout =>
            $"{layout.Stock} {layout.Copies}: {string.Join(' ', layout.Pieces)} {string.Join(' ', layout.Cuts)}"
        );
}
