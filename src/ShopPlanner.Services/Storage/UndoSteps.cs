using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage;

/// <summary>Steps kept in the database.</summary>
internal static class UndoSteps
{
    /// <summary>Returns what undoing and redoing would do now: the last step that stands, and the first that is undone.</summary>
    public static async Task<(T? Undo, T? Redo)> EndsAsync<T>(IQueryable<T> steps, CancellationToken cancel)
        where T : class, IUndoStep =>
        (
            await steps.Where(step => !step.Undone).OrderByDescending(step => step.Number).FirstOrDefaultAsync(cancel),
            await steps.Where(step => step.Undone).OrderBy(step => step.Number).FirstOrDefaultAsync(cancel)
        );
}
