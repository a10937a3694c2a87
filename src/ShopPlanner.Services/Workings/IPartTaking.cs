using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Services.Workings;

/// <summary>A project's own parts, to be added up.</summary>
/// <param name="ProjectId">The project.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Unit">The project's.</param>
/// <param name="Parts">Of its parts list; of its design where the list is empty.</param>
public sealed record ProjectParts(Guid ProjectId, string Name, LengthUnit Unit, TakenParts Parts);

/// <summary>Takes a project's parts for the workings that add them up.</summary>
public interface IPartTaking
{
    /// <summary>The parts as they stand now; null where the project is gone.</summary>
    Task<ProjectParts?> TakeAsync(Guid projectId, CancellationToken cancel = default);
}
