namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>
/// A request and its twin, whose least costs are known to be equal or in order, planned apart. Neither bound may pass the other's
/// cost, proven or not: one that did would be false. Where both are proven the costs themselves must agree.
/// </summary>
public sealed class TwinTests
{
    private const int Requests = 30;

    // Rounds in place of a clock: a slow machine plans the same.
    private static readonly SearchControl Rounds = new() { Iterations = 300, Workers = 1 };

    private static readonly Lazy<List<EarlierPlan>> Plain = new(() => [.. RandomRequests.From(7_001, Requests).Select(Planned)]);
    private static readonly Lazy<List<EarlierPlan>> Kerfless = new(() =>
        [.. Plain.Value.Select(one => Planned(Twins.WithoutKerf(one.Request)))]
    );

    public static TheoryData<string> Same => [.. Twins.Equal.Keys];

    public static TheoryData<string> Less => [.. Twins.Cheaper.Keys];

    [Theory]
    [MemberData(nameof(Same))]
    public void The_least_cost_stays_the_same(string twin) =>
        Compare(
            twin.Contains("kerf", StringComparison.Ordinal) ? Kerfless.Value : Plain.Value,
            Twins.Equal[twin],
            (before, after) =>
            {
                Assert.True(
                    before.CostLowerBound <= after.Cost,
                    $"bound {before.CostLowerBound} of the request, its twin {after.Cost}"
                );
                Assert.True(
                    after.CostLowerBound <= before.Cost,
                    $"bound {after.CostLowerBound} of the twin, the request {before.Cost}"
                );
                return before.Cost == before.CostLowerBound && after.Cost == after.CostLowerBound;
            }
        );

    [Theory]
    [MemberData(nameof(Less))]
    public void The_least_cost_is_no_higher(string twin) =>
        Compare(
            Plain.Value,
            Twins.Cheaper[twin],
            (before, after) =>
            {
                Assert.True(
                    after.CostLowerBound <= before.Cost,
                    $"bound {after.CostLowerBound} of the twin, the request {before.Cost}"
                );
                var proven = before.Cost == before.CostLowerBound && after.Cost == after.CostLowerBound;
                if (proven)
                    Assert.True(after.Cost <= before.Cost, $"{after.Cost} for less, {before.Cost} for more");
                return proven;
            }
        );

    [Fact]
    public void Size_alone_changes_nothing_that_is_found() =>
        Assert.All(
            Plain.Value,
            one =>
            {
                var twin = Planned(Twins.Equal["seven times as large"](one.Request)).Plan;
                Assert.Equal(
                    (one.Plan.Status, one.Plan.Cost, one.Plan.CostLowerBound),
                    (twin.Status, twin.Cost, twin.CostLowerBound)
                );
            }
        );

    // Most are proven, or the test would say little.
    private static void Compare(List<EarlierPlan> all, Func<CutRequest, CutRequest> twin, Func<CutPlan, CutPlan, bool> isProven)
    {
        var proven = all.Count(one => isProven(one.Plan, Planned(twin(one.Request)).Plan));
        Assert.True(proven * 2 > all.Count, $"{proven} of {all.Count} are proven");
    }

    private static EarlierPlan Planned(CutRequest request)
    {
        var plan = Some.Planned(request, Rounds);
        Assert.True(plan.CostLowerBound <= plan.Cost);
        Assert.All(plan.Unplaced, part => Assert.Equal("none", part.Part));
        return new(request, plan);
    }
}
