using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Projects;

/// <summary>The rules of states, without a shop: what happened tells a state, and a state set by hand holds until it is passed.</summary>
public sealed class ProjectStatesTests
{
    private const ProjectState Planning = ProjectState.Planning,
        Buying = ProjectState.Buying,
        Cutting = ProjectState.Cutting,
        Building = ProjectState.Building,
        Finishing = ProjectState.Finishing,
        Done = ProjectState.Done;

    private static readonly PlanFact Ready = Fact(PlanState.Ready, leftToBuy: 2),
        Bought = Fact(PlanState.Ready, leftToBuy: 0),
        Begun = Fact(PlanState.Cutting, leftToBuy: 2),
        Cut = Fact(PlanState.Cut, leftToBuy: 2),
        Canceled = Fact(PlanState.Withdrawn, leftToBuy: 2),
        Empty = Fact(PlanState.Ready, leftToBuy: 0) with { Progress = CutProgress.None };

    public static TheoryData<ProjectState, int> Happened =>
        new()
        {
            { Planning, 0 },
            { Buying, 1 },
            { Cutting, 2 },
            { Cutting, 3 },
            { Building, 4 },
            { Planning, 5 },
            { Planning, 6 },
            { Buying, 7 },
            { Cutting, 8 },
            { Buying, 9 },
            { Cutting, 10 },
            { Building, 11 },
        };

    // By number: facts are no constants.
    private static readonly PlanFact[][] Plans =
    [
        [],
        [Ready],
        [Bought],
        [Begun],
        [Cut],
        [Canceled],
        [Empty],
        [Cut, Ready],
        [Ready, Begun],
        [Ready, Bought],
        [Bought, Canceled],
        [Cut, Canceled],
    ];

    [Theory, MemberData(nameof(Happened))]
    public void What_happened_to_the_plans_tells_the_state(ProjectState state, int plans) =>
        Assert.Equal(state, ProjectStates.Told(new(Plans[plans], HoldsAllParts: true)));

    [Fact]
    public void Parts_that_no_plan_holds_are_planned_first_and_an_open_plan_comes_before_them()
    {
        Assert.Equal(Planning, ProjectStates.Told(new([Cut], HoldsAllParts: false)));
        Assert.Equal(Cutting, ProjectStates.Told(new([Cut, Begun], HoldsAllParts: false)));
    }

    [Fact]
    public void Only_the_newest_build_tells_and_a_canceled_one_does_not_begin_another()
    {
        Assert.Equal(Buying, ProjectStates.Told(new([Cut, Ready with { Build = 2 }], HoldsAllParts: true)));
        Assert.Equal(2, new ProjectFacts([Cut, Ready with { Build = 2 }], true).Build);
        Assert.Equal(1, new ProjectFacts([Cut, Canceled with { Build = 2 }], true).Build);
        Assert.Equal(1, new ProjectFacts([], true).Build);
    }

    // Set, where it stood then, what is told now, where it stands.
    [Theory]
    [InlineData(Cutting, Planning, Planning, Cutting)]
    [InlineData(Cutting, Planning, Buying, Cutting)]
    [InlineData(Cutting, Planning, Cutting, Cutting)]
    [InlineData(Cutting, Planning, Building, Building)]
    [InlineData(Planning, Building, Building, Planning)]
    [InlineData(Planning, Building, Cutting, Cutting)]
    [InlineData(Done, Building, Building, Done)]
    [InlineData(Done, Building, Cutting, Cutting)]
    [InlineData(Done, Building, Planning, Planning)]
    [InlineData(Finishing, Building, Buying, Buying)]
    [InlineData(Buying, Cutting, Cutting, Buying)]
    [InlineData(Buying, Cutting, Building, Building)]
    [InlineData(Buying, Cutting, Planning, Planning)]
    public void A_state_set_by_hand_holds_until_it_is_passed_or_what_it_rested_on_falls(
        ProjectState set,
        ProjectState then,
        ProjectState told,
        ProjectState stands
    ) => Assert.Equal(stands, ProjectStates.Of(told, 1, new HandState(set, then, 1)));

    [Fact]
    public void A_state_set_by_hand_ends_with_its_build()
    {
        Assert.Equal(Building, ProjectStates.Of(Building, 2, new HandState(Done, Building, 1)));
        Assert.Equal(Building, ProjectStates.Of(Building, 1, null));
    }

    [Theory]
    [InlineData(Planning, 1)]
    [InlineData(Finishing, 1)]
    [InlineData(Done, 2)]
    [InlineData(ProjectState.PutAway, 2)]
    public void What_is_done_is_built_again_and_what_is_under_way_goes_on(ProjectState state, int build) =>
        Assert.Equal(build, ProjectStates.NextBuild(state, 1));

    [Fact]
    public void Of_a_canceled_plan_what_was_cut_counts_and_another_build_does_not()
    {
        var (canceled, rest) = (Canceled with { Progress = new(3, 9, 1, 4) }, Begun with { Progress = new(1, 6, 0, 3) });
        Assert.Equal(new(4, 9, 1, 4), new ProjectFacts([canceled, rest], true).Progress);
        Assert.Equal(rest.Progress, new ProjectFacts([canceled, rest with { Build = 2 }], true).Progress);
    }

    private static PlanFact Fact(PlanState state, int leftToBuy) =>
        new()
        {
            Project = Guid.Empty,
            Plan = Guid.NewGuid(),
            State = state,
            LeftToBuy = leftToBuy,
            Progress = new(0, 4, 0, 2),
        };
}
