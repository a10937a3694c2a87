using ShopPlanner.Services.Making.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Making;

/// <summary>The changes of a project's work, in the database, so that undoing works after a restart and on every
/// device.</summary>
internal static class WorkJournal
{
    /// <summary>Older changes are forgotten.</summary>
    private const int KeptChanges = 100;

    /// <summary>Changes a project's work, with a step to take it back; nothing where nothing changes.</summary>
    public static async Task ChangeAsync(ShopContext db, Guid projectId, WorkDocument to, string title, CancellationToken cancel)
    {
        var row = await db.Works.FindAsync([projectId], cancel);
        var (before, after) = (row?.Document ?? WorkDocument.Empty.Write(), to.Write());
        if (before == after)
            return;
        await UndoSteps.MakeRoomAsync(Of(db, projectId), KeptChanges, cancel);
        db.WorkChanges.Add(
            new StoredWorkChange
            {
                Id = Guid.CreateVersion7(),
                ProjectId = projectId,
                Number = await db.NextAsync(Counters.WorkChanges, cancel),
                Title = title,
                Before = before,
                After = after,
            }
        );
        if (row is null)
            db.Works.Add(new StoredWork { ProjectId = projectId, Document = after });
        else
            row.Document = after;
        await db.SaveChangesAsync(cancel);
    }

    /// <summary>What undoing and redoing would do now.</summary>
    public static Task<(StoredWorkChange? Undo, StoredWorkChange? Redo)> EndsAsync(
        ShopContext db,
        Guid projectId,
        CancellationToken cancel
    ) => UndoSteps.EndsAsync(Of(db, projectId), cancel);

    private static IQueryable<StoredWorkChange> Of(ShopContext db, Guid projectId) =>
        db.WorkChanges.Where(change => change.ProjectId == projectId);
}
