using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Projects;

/// <summary>Where a project stands.</summary>
/// <param name="State">Its state. A person can set it by <see cref="IProjectService.MoveAsync"/>.</param>
/// <param name="Told">Where its plans and cuts alone put it.</param>
/// <param name="Progress">How far the cutting is, over all its plans; a plan that it shares with other projects counts
/// whole.</param>
public sealed record ProjectStanding(ProjectState State, ProjectState Told, CutProgress Progress)
{
    /// <summary>A project that was just begun.</summary>
    public static ProjectStanding New { get; } = new(ProjectState.Planning, ProjectState.Planning, CutProgress.None);

    /// <summary>Whether a person set the state, and plans and cuts tell another.</summary>
    public bool IsByHand => State != Told && State != ProjectState.PutAway;

    /// <summary>Which time it is built, from 1.</summary>
    internal int Build { get; init; } = 1;
}
