using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Projects;

/// <summary>A project.</summary>
/// <param name="Id">Never changes.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Code">One to three capital letters that no other project has; stands before marks where several projects meet:
/// <c>BB A1</c>.</param>
/// <param name="Unit">Unit of its parts.</param>
/// <param name="Note">Free text.</param>
/// <param name="PartKinds">Rows of its parts list.</param>
/// <param name="Pieces">Physical pieces of all rows without faults.</param>
/// <param name="FaultyRows">Rows that cannot be planned yet.</param>
/// <param name="Version">Rises by one with every save.</param>
public sealed record ProjectView(
    Guid Id,
    string Name,
    string Code,
    LengthUnit Unit,
    string Note,
    int PartKinds,
    int Pieces,
    int FaultyRows,
    int Version
)
{
    /// <summary>Whether it has an idea that its parts can be made from.</summary>
    public bool HasIdea { get; init; }

    /// <summary>Where it stands, and how far its cutting is.</summary>
    public ProjectStanding Standing { get; init; } = ProjectStanding.New;

    /// <summary>Its state.</summary>
    public ProjectState State => Standing.State;
}

/// <summary>Keeps projects.</summary>
public interface IProjectService
{
    /// <summary>Returns the projects, newest first; archived ones only when asked.</summary>
    Task<IReadOnlyList<ProjectView>> ListAsync(bool withPutAway = false, CancellationToken cancel = default);

    /// <summary>One project, or null.</summary>
    Task<ProjectView?> GetAsync(Guid id, CancellationToken cancel = default);

    /// <summary>Begins a project; its code is made from its name.</summary>
    Task<Outcome<ProjectView>> CreateAsync(string name, LengthUnit unit, CommandId command, CancellationToken cancel = default);

    /// <summary>Changes name, code, unit or note; a conflict when <c>Version</c> is not the one stored. Changing the unit
    /// leaves sizes as they are: texts of the parts are rewritten exactly in the new unit.</summary>
    Task<Outcome<ProjectView>> SaveAsync(ProjectView project, CancellationToken cancel = default);

    /// <summary>
    /// Sets a project's state by hand; archived ones come back by it. It holds until a plan, a purchase or a cut moves the
    /// project
    /// past it. It gives way, too, when the project falls back behind where it stands now, and when it is planned again after it
    /// was done. The state that plans and cuts tell anyhow is not set: those go on moving it.
    /// </summary>
    Task<Outcome<ProjectView>> MoveAsync(Guid id, ProjectState state, CancellationToken cancel = default);

    /// <summary>Takes a project out of the archive: it stands where it stood, or where its plans and cuts put it since.</summary>
    Task<Outcome<ProjectView>> RestoreAsync(Guid id, CancellationToken cancel = default);
}
