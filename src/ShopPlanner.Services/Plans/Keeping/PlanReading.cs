using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Staleness;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Keeping;

/// <summary>Reads plans: lists from what stands beside their documents, one plan with what changed since.</summary>
internal static class PlanReading
{
    public static async Task<IReadOnlyList<PlanSummary>> ListAsync(
        ShopContext db,
        bool withWithdrawn,
        CancellationToken cancel
    ) =>
        await SummariesAsync(
            db.Plans.Where(plan => withWithdrawn || plan.State != PlanState.Withdrawn).OrderByDescending(plan => plan.Number),
            cancel
        );

    /// <summary>One plan's line in a list; null where there is none.</summary>
    public static async Task<PlanSummary?> FindSummaryAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        (await SummariesAsync(db.Plans.Where(plan => plan.Id == id), cancel)).SingleOrDefault();

    public static async Task<PlanView?> FindAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Plans.AsNoTracking().SingleOrDefaultAsync(plan => plan.Id == id, cancel) is not { } stored)
            return null;
        var record = PlanRecord.Read(stored);
        return record.View(await ChangesAsync(db, record, cancel));
    }

    // A plan that is cut or given up is history: nothing is held against it.
    private static async Task<ImmutableArray<string>> ChangesAsync(ShopContext db, PlanRecord record, CancellationToken cancel) =>
        PlanChanges.IsHistory(record)
            ? []
            : PlanChanges.Find(
                record,
                await Snapshot.ForPlanAsync(db, record, cancel),
                await CutPiecesAsync(db, record.Stored.Id, cancel)
            );

    private static async Task<IReadOnlyList<PlanSummary>> SummariesAsync(IQueryable<StoredPlan> plans, CancellationToken cancel)
    {
        var rows = await plans
            .Select(plan => new
            {
                plan.Id,
                plan.Name,
                plan.MadeUtc,
                plan.State,
                plan.Status,
                plan.Cost,
                plan.Stocks,
                plan.Projects,
            })
            .ToListAsync(cancel);
        return
        [
            .. rows.Select(row => new PlanSummary(
                row.Id,
                Bidi.Isolate(row.Name),
                row.MadeUtc,
                row.State,
                row.Status,
                row.Cost,
                row.Stocks,
                PlanHeader.Projects(row.Projects)
            )),
        ];
    }

    // Pieces of the plan cut up by a finish that stands.
    private static async Task<IReadOnlySet<Guid>> CutPiecesAsync(ShopContext db, Guid planId, CancellationToken cancel) =>
        await db
            .Entries.Where(entry =>
                entry.Kind == StockEntryKind.Cut
                && db.Finishes.Any(finish => finish.Id == entry.FinishId && finish.PlanId == planId && finish.Standing)
            )
            .Select(entry => entry.PieceId)
            .ToHashSetAsync(cancel);
}
