using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Projects;

/// <summary>A row at one moment, its place in the list included.</summary>
internal sealed record PartMoment(PartTexts Texts, long Position, int Version)
{
    public static PartMoment Of(StoredPart part) => new(part.Texts, part.Position, part.Version);
}

/// <summary>The steps of a parts list, in the database, so that undoing works after a restart and on every device.</summary>
internal static class PartJournal
{
    /// <summary>Older steps are forgotten.</summary>
    private const int KeptSteps = 200;

    /// <summary>Adds a step; steps that were undone before it cannot come again.</summary>
    public static async Task AddAsync(
        ShopContext db,
        Guid projectId,
        string title,
        IReadOnlyList<PartMoment> before,
        IReadOnlyList<PartMoment> after,
        CancellationToken cancel
    )
    {
        var number = await db.NextAsync(Counters.PartSteps, cancel);
        await UndoSteps.MakeRoomAsync(Of(db, projectId), KeptSteps, cancel);
        db.PartSteps.Add(
            new StoredPartStep
            {
                Id = Guid.CreateVersion7(),
                ProjectId = projectId,
                Number = number,
                Title = title,
                Before = PartRowsDocument.Write(before),
                After = PartRowsDocument.Write(after),
            }
        );
    }

    /// <summary>What undoing and redoing would do now.</summary>
    public static Task<(StoredPartStep? Undo, StoredPartStep? Redo)> EndsAsync(
        ShopContext db,
        Guid projectId,
        CancellationToken cancel
    ) => UndoSteps.EndsAsync(Of(db, projectId), cancel);

    /// <summary>Forgets all steps, e.g. since their texts are in another unit than the project's now.</summary>
    public static Task ForgetAsync(ShopContext db, Guid projectId, CancellationToken cancel) =>
        Of(db, projectId).ExecuteDeleteAsync(cancel);

    private static IQueryable<StoredPartStep> Of(ShopContext db, Guid projectId) =>
        db.PartSteps.Where(step => step.ProjectId == projectId);
}
