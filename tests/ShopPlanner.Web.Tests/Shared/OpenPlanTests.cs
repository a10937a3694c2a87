using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Web.Features.Projects;

namespace ShopPlanner.Web.Tests.Shared;

/// <summary>The plan that a project's steps show.</summary>
public sealed class OpenPlanTests
{
    private static readonly Guid Project = Guid.NewGuid();

    [Theory]
    [InlineData(1, PlanState.Ready, PlanState.Cutting)]
    [InlineData(1, PlanState.Cut, PlanState.Ready, PlanState.Ready)]
    [InlineData(0, PlanState.Cut, PlanState.Cut)]
    [InlineData(1, PlanState.Withdrawn, PlanState.Cut)]
    [InlineData(-1, PlanState.Withdrawn)]
    [InlineData(-1)]
    public void What_is_being_cut_comes_before_what_can_be_and_what_was(int expected, params PlanState[] newestFirst)
    {
        var plans = newestFirst.Select(Plan).ToList();
        Assert.Equal(expected < 0 ? null : plans[expected], OpenPlan.Of(plans, Project));
        Assert.Null(OpenPlan.Of(plans, Guid.NewGuid()));
    }

    private static PlanSummary Plan(PlanState state) =>
        new(Guid.NewGuid(), "Bench", DateTime.UnixEpoch, state, PlanStatus.Proven, Money.Zero, 1, [Project]);
}
