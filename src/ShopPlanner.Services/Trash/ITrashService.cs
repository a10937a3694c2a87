using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Trash;

/// <summary>A project in the trash.</summary>
/// <param name="Id">The project.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Code">Stands before its marks where several projects meet.</param>
/// <param name="Parts">Rows of its parts list.</param>
/// <param name="Plans">Plans that were canceled with it.</param>
/// <param name="DeletedUtc">When it was put there.</param>
/// <param name="GoneUtc">When the program removes it for good.</param>
public sealed record TrashedProject(
    Guid Id,
    string Name,
    string Code,
    int Parts,
    int Plans,
    DateTime DeletedUtc,
    DateTime GoneUtc
);

/// <summary>What deleting a project does.</summary>
/// <param name="Canceled">Open plans of this project alone: they are canceled, and what was promised to them is free.</param>
/// <param name="Kept">Open plans that cover other projects too: they stay, and say that they are out of date.</param>
/// <param name="HalfCut">Tags of pieces that a canceled plan has begun and not finished: they stay promised to it.</param>
/// <param name="Freed">Pieces of rack and bin that become free.</param>
public sealed record Deletion(
    ImmutableArray<PlanSummary> Canceled,
    ImmutableArray<PlanSummary> Kept,
    ImmutableArray<string> HalfCut,
    int Freed
);

/// <summary>A plan that was canceled with its project and did not come back with it.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Why">What stands in the way: the pieces that are gone or taken.</param>
public sealed record StillCanceled(PlanSummary Plan, ImmutableArray<Fault> Why);

/// <summary>A project that was brought back.</summary>
/// <param name="Id">The project.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Reinstated">Plans that came back with it.</param>
/// <param name="StillCanceled">Plans that did not.</param>
public sealed record RestoredProject(
    Guid Id,
    string Name,
    ImmutableArray<PlanSummary> Reinstated,
    ImmutableArray<StillCanceled> StillCanceled
);

/// <summary>Deletes projects: they lie in the trash for thirty days, as they were, and are then removed for good. What was
/// cut for them stays in the ledger, and backups keep them.</summary>
public interface ITrashService
{
    /// <summary>How many days a project lies in the trash.</summary>
    const int Days = 30;

    /// <summary>Returns what deleting a project would do; null when there is no such project.</summary>
    Task<Deletion?> PreviewAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>Puts a project into the trash and cancels the plans that are for it alone. Done again, it changes
    /// nothing.</summary>
    Task<Outcome<TrashedProject>> DeleteAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>Returns what is in the trash, the last deleted first.</summary>
    Task<IReadOnlyList<TrashedProject>> ListAsync(CancellationToken cancel = default);

    /// <summary>Returns those of a plan's projects that are in the trash.</summary>
    Task<IReadOnlyList<TrashedProject>> ListOfPlanAsync(Guid planId, CancellationToken cancel = default);

    /// <summary>Brings a project back, and the plans that were canceled with it where their pieces are free. Done again, it
    /// changes nothing.</summary>
    Task<Outcome<RestoredProject>> RestoreAsync(Guid projectId, CancellationToken cancel = default);
}
