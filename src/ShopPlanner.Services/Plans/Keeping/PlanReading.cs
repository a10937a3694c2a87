using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Staleness;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Plans.Keeping;

/// <summary>Reads plans with what changed since.</summary>
internal static class PlanReading
{
    public static async Task<IReadOnlyList<PlanSummary>> ListAsync(ShopContext db, bool withWithdrawn, CancellationToken cancel)
    {
        var now = await Snapshot.LoadAsync(db, cancel);
        var plans = await db
            .Plans.AsNoTracking()
            .Where(plan => withWithdrawn || plan.State != PlanState.Withdrawn)
            .OrderByDescending(plan => plan.Number)
            .ToListAsync(cancel);
        var cut = await CutPiecesAsync(db, cancel);
        return [.. plans.Select(PlanRecord.Read).Select(record => record.Summary(PlanChanges.Find(record, now, cut).Length > 0))];
    }

    public static async Task<PlanView?> FindAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Plans.AsNoTracking().SingleOrDefaultAsync(plan => plan.Id == id, cancel) is not { } stored)
            return null;
        var record = PlanRecord.Read(stored);
        return record.View(PlanChanges.Find(record, await Snapshot.LoadAsync(db, cancel), await CutPiecesAsync(db, cancel)));
    }

    // Pieces cut up by a finish that stands. Each belongs to one plan only: it was promised to it.
    private static async Task<IReadOnlySet<Guid>> CutPiecesAsync(ShopContext db, CancellationToken cancel) =>
        (
            await db
                .Entries.AsNoTracking()
                .Where(entry =>
                    entry.Kind == StockEntryKind.Cut && db.Finishes.Any(finish => finish.Id == entry.FinishId && finish.Standing)
                )
                .Select(entry => entry.PieceId)
                .ToListAsync(cancel)
        ).ToHashSet();
}
