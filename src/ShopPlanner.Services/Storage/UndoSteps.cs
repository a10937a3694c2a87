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

    /// <summary>Makes room for one more step: those that are undone cannot come again, and the oldest are forgotten.</summary>
    /// <param name="steps">Of one list.</param>
    /// <param name="most">How many are kept with the one that is added.</param>
    /// <param name="cancel">Stops asking.</param>
    public static async Task MakeRoomAsync<T>(IQueryable<T> steps, int most, CancellationToken cancel)
        where T : class, IUndoStep
    {
        var kept = await steps
            .Where(step => !step.Undone)
            .OrderByDescending(step => step.Number)
            .Select(step => step.Number)
            .Skip(most - 2)
            .FirstOrDefaultAsync(cancel);
        await steps.Where(step => step.Undone || step.Number < kept).ExecuteDeleteAsync(cancel);
    }
}
