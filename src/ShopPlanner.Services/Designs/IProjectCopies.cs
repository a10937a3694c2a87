using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Designs;

/// <summary>Makes a second project out of one.</summary>
public interface IProjectCopies
{
    /// <summary>Makes a new project like another: its parts, its idea with the steps to undo, its saved figures and its
    /// note, under a name and a code of its own. It has no plans, and nothing of it is cut.</summary>
    Task<Outcome<ProjectView>> DuplicateAsync(Guid projectId, CommandId command, CancellationToken cancel = default);
}
