using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Keeping;

/// <summary>Reads lists of plans from what stands beside their documents.</summary>
internal static class PlanHeaders
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
}
