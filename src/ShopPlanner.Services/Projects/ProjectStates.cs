using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Projects;

/// <summary>A state that a person set.</summary>
/// <param name="State">What was set.</param>
/// <param name="Told">Where plans and cuts put the project then.</param>
/// <param name="Build">The build in which it was set.</param>
internal sealed record HandState(ProjectState State, ProjectState Told, int Build)
{
    /// <summary>The state that a person set for a stored project; null where nobody did.</summary>
    public static HandState? Of(StoredProject project) =>
        project.SetState is { } state ? new(state, project.SetFrom, project.SetBuild) : null;

    /// <summary>Writes a state set by hand into a stored project; null takes it back.</summary>
    public static void Put(StoredProject project, HandState? hand) =>
        (project.SetState, project.SetFrom, project.SetBuild) = (
            hand?.State,
            hand?.Told ?? ProjectState.Planning,
            hand?.Build ?? 0
        );
}

/// <summary>
/// Where a project stands. What happened to its plans tells a state, and is never stored: undoing what happened takes the state
/// back. A state that a person set holds until something moves the project past it. It gives way, too, when the project falls
/// back behind where it stood when the state was set (a board was reopened, a plan canceled, parts were added), and when
/// the project is built again. What gave way by a fall holds again once that is made good.
/// </summary>
internal static class ProjectStates
{
    /// <summary>Returns where a project's plans and cuts put it; finishing and done are never told by those.</summary>
    /// <param name="facts">What happened.</param>
    public static ProjectState Told(ProjectFacts facts)
    {
        var plans = facts.OfBuild.Where(plan => plan.Stands).ToList();
        var open = plans.Where(plan => plan.IsOpen).ToList();
        if (open.Any(plan => plan.State == PlanState.Cutting))
            return ProjectState.Cutting;
        if (open.Count > 0)
            return open.Any(plan => plan.LeftToBuy > 0) ? ProjectState.Buying : ProjectState.Cutting;
        return facts.HoldsAllParts && plans.Any(plan => plan.State == PlanState.Cut)
            ? ProjectState.Building
            : ProjectState.Planning;
    }

    /// <summary>Returns where a project stands that is not archived.</summary>
    /// <param name="told">Where its plans and cuts put it.</param>
    /// <param name="build">Which time it is built.</param>
    /// <param name="hand">The state that a person set; null where nobody did.</param>
    public static ProjectState Of(ProjectState told, int build, HandState? hand) =>
        hand is not null && hand.Build == build && Holds(told, hand) ? hand.State : told;

    /// <summary>Returns in which build a project is planned next: one that is done, or archived, is built again.</summary>
    /// <param name="state">Where it stands.</param>
    /// <param name="build">Which time it is built now.</param>
    public static int NextBuild(ProjectState state, int build) =>
        state is ProjectState.Done or ProjectState.PutAway ? build + 1 : build;

    private static bool Holds(ProjectState told, HandState hand) => told == hand.Told || (told > hand.Told && told <= hand.State);
}
