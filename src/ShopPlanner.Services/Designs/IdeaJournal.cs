using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Designs;

/// <summary>The steps of an idea, in the database, so that undoing works after a restart and on every device.</summary>
internal static class IdeaJournal
{
    /// <summary>Older steps are forgotten.</summary>
    private const int KeptSteps = 100;

    // A slider moved on, a word typed to its end: one step, not ten.
    private static readonly TimeSpan OneMove = TimeSpan.FromSeconds(3);

    /// <summary>Changes the row, with a step to take it back; nothing where nothing changes.</summary>
    public static async Task ChangeAsync(
        ShopContext db,
        StoredIdea row,
        (string Document, string Changed) to,
        string title,
        DateTime now,
        CancellationToken cancel
    )
    {
        if ((row.Document, row.Changed) == to)
            return;
        await Of(db, row.ProjectId).Where(step => step.Undone).ExecuteDeleteAsync(cancel);
        var (last, _) = await EndsAsync(db, row.ProjectId, cancel);
        if (last is not null && last.Title == title && now - last.WhenUtc <= OneMove)
            (last.DocumentAfter, last.ChangedAfter, last.WhenUtc) = (to.Document, to.Changed, now);
        else
            await AddAsync(db, row, to, title, now, cancel);
        (row.Document, row.Changed) = to;
    }

    /// <summary>What undoing and redoing would do now.</summary>
    public static Task<(StoredIdeaStep? Undo, StoredIdeaStep? Redo)> EndsAsync(
        ShopContext db,
        Guid projectId,
        CancellationToken cancel
    ) => UndoSteps.EndsAsync(Of(db, projectId), cancel);

    private static async Task AddAsync(
        ShopContext db,
        StoredIdea row,
        (string Document, string Changed) to,
        string title,
        DateTime now,
        CancellationToken cancel
    )
    {
        var number = await db.NextAsync(Counters.IdeaSteps, cancel);
        await UndoSteps.MakeRoomAsync(Of(db, row.ProjectId), KeptSteps, cancel);
        db.IdeaSteps.Add(
            new StoredIdeaStep
            {
                Id = Guid.CreateVersion7(),
                ProjectId = row.ProjectId,
                Number = number,
                Title = title,
                WhenUtc = now,
                DocumentBefore = row.Document,
                ChangedBefore = row.Changed,
                DocumentAfter = to.Document,
                ChangedAfter = to.Changed,
            }
        );
    }

    private static IQueryable<StoredIdeaStep> Of(ShopContext db, Guid projectId) =>
        db.IdeaSteps.Where(step => step.ProjectId == projectId);
}
