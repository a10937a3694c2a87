using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Features.Home;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Home;

public sealed class NextThingTests
{
    private static readonly ProjectView Project = new(Guid.NewGuid(), "Bench", "B", LengthUnit.Inch, "", 3, 9, 0, 1);

    private static readonly PlanSummary Plan = new(
        Guid.NewGuid(),
        "Bench",
        DateTime.UnixEpoch,
        PlanState.Ready,
        PlanStatus.Proven,
        Money.Zero,
        1,
        [Project.Id]
    );

    [Fact]
    public void Without_parts_they_are_added_first() =>
        Assert.Equal(("Add its parts", Links.Parts(Project.Id)), For(Project with { PartKinds = 0 }));

    [Fact]
    public void Rows_that_cannot_be_read_come_before_planning() =>
        Assert.Equal(("Check 2 rows", Links.Parts(Project.Id)), For(Project with { FaultyRows = 2 }));

    [Fact]
    public void Without_a_plan_the_cuts_are_planned() =>
        Assert.Equal(("Plan the cuts", Links.NewPlan([Project.Id])), For(Project));

    [Fact]
    public void With_a_plan_it_is_bought_for_and_cut()
    {
        Assert.Equal(("See what to buy", Links.Buy(Project.Id)), For(At(ProjectState.Buying), Plan));
        Assert.Equal(("Start cutting", Links.BenchPlan(Plan.Id)), For(At(ProjectState.Cutting), Plan));
        var (begun, cut) = (Plan with { State = PlanState.Cutting }, Plan with { State = PlanState.Cut });
        Assert.Equal(("Keep cutting", Links.BenchPlan(Plan.Id)), For(At(ProjectState.Cutting), begun));
        Assert.Equal(("Build it", Links.Build(Project.Id)), For(At(ProjectState.Building), cut));
        Assert.Equal(("Plan the cuts", Links.NewPlan([Project.Id])), For(Project, Plan with { State = PlanState.Withdrawn }));
    }

    [Fact]
    public void What_is_not_cut_or_was_added_since_is_planned()
    {
        var cut = Plan with { State = PlanState.Cut, Progress = new(3, 4, 1, 1) };
        Assert.Equal(("Plan the rest", Links.NewPlan([Project.Id], cut.Id)), For(At(ProjectState.Building), cut));
        var whole = cut with { Progress = new(4, 4, 1, 1) };
        Assert.Equal(("Plan the rest", Links.NewPlan([Project.Id])), For(At(ProjectState.Planning), whole));
        Assert.Equal(("Finish it", Links.Finish(Project.Id)), For(At(ProjectState.Finishing), whole));
    }

    [Fact]
    public void Parts_are_made_from_an_idea_where_there_is_one() =>
        Assert.Equal(("Make the parts list", Links.Idea(Project.Id)), For(Project with { PartKinds = 0, HasIdea = true }));

    private static ProjectView At(ProjectState state) => Project with { Standing = ProjectStanding.New with { State = state } };

    private static (string Words, string Link) For(ProjectView project, params PlanSummary[] plans)
    {
        var next = NextThing.For(project, plans);
        return (next.Words, next.Link);
    }
}
