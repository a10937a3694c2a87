using ShopPlanner.Services.Common;

namespace ShopPlanner.Web.Features.Projects;

/// <summary>How the state of a project looks; its word stands beside it.</summary>
internal static class StateClass
{
    /// <summary>Returns the style class of a state.</summary>
    public static string Of(ProjectState state) =>
        state switch
        {
            ProjectState.Planning => "",
            ProjectState.Done => "done",
            ProjectState.PutAway => "off",
            _ => "on",
        };
}
