using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Keeping;

/// <summary>Reads lists of plans from what stands beside their documents.</summary>
internal static class PlanHeaders
{
    /// <summary>All plans, newest first; withdrawn ones only when asked.</summary>
    public static Task<IReadOnlyList<PlanSummary>> ListAsync(ShopContext db, bool withWithdrawn, CancellationToken cancel) =>
        SummariesAsync(db, db.Plans.Where(plan => withWithdrawn || plan.State != PlanState.Withdrawn), cancel);

    /// <summary>A project's plans that were not withdrawn, newest first.</summary>
    public static Task<IReadOnlyList<PlanSummary>> ListOfAsync(ShopContext db, Guid projectId, CancellationToken cancel) =>
        SummariesAsync(
            db,
            from own in db.PlanProjects
            join plan in db.Plans on own.PlanId equals plan.Id
            where own.ProjectId == projectId && plan.State != PlanState.Withdrawn
            select plan,
            cancel
        );

    /// <summary>The plans that something is left to cut of, newest first.</summary>
    public static Task<IReadOnlyList<PlanSummary>> ListOpenAsync(ShopContext db, CancellationToken cancel) =>
        SummariesAsync(db, db.Plans.Where(plan => plan.State == PlanState.Ready || plan.State == PlanState.Cutting), cancel);

    /// <summary>How far the cutting of a plan is.</summary>
    public static async Task<CutProgress> ProgressAsync(ShopContext db, StoredPlan plan, CancellationToken cancel) =>
        new(
            await db.Cuts.CountAsync(cut => cut.PlanId == plan.Id && cut.Made, cancel),
            plan.Cuts,
            await db.Finishes.CountAsync(finish => finish.PlanId == plan.Id && finish.Standing, cancel),
            plan.Stocks
        );

    /// <summary>One plan's line in a list; null where there is none.</summary>
    public static async Task<PlanSummary?> FindSummaryAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        (await SummariesAsync(db, db.Plans.Where(plan => plan.Id == id), cancel)).SingleOrDefault();

    /// <summary>Returns which plan of these projects, and of no others, one is: the first, the second; plans that were withdrawn
    /// count.</summary>
    /// <param name="db">The database.</param>
    /// <param name="number">The plan's number.</param>
    /// <param name="projects">Its projects.</param>
    /// <param name="cancel">Stops the reading.</param>
    public static Task<int> VersionAsync(ShopContext db, long number, IEnumerable<Guid> projects, CancellationToken cancel)
    {
        var wanted = projects.Distinct().ToList();
        return db
            .Plans.Where(plan => plan.Number <= number)
            .Where(plan => db.PlanProjects.Count(own => own.PlanId == plan.Id) == wanted.Count)
            .Where(plan => db.PlanProjects.Count(own => own.PlanId == plan.Id && wanted.Contains(own.ProjectId)) == wanted.Count)
            .CountAsync(cancel);
    }

    private static async Task<IReadOnlyList<PlanSummary>> SummariesAsync(
        ShopContext db,
        IQueryable<StoredPlan> plans,
        CancellationToken cancel
    )
    {
        var rows = await plans
            .OrderByDescending(plan => plan.Number)
            .Select(plan => new
            {
                plan.Id,
                plan.Name,
                plan.MadeUtc,
                plan.State,
                plan.Status,
                plan.Cost,
                plan.Stocks,
                plan.Cuts,
                Made = db.Cuts.Count(cut => cut.PlanId == plan.Id && cut.Made),
                Finished = db.Finishes.Count(finish => finish.PlanId == plan.Id && finish.Standing),
                Projects = db
                    .PlanProjects.Where(own => own.PlanId == plan.Id)
                    .OrderBy(own => own.Position)
                    .Select(own => own.ProjectId)
                    .ToList(),
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
                [.. row.Projects]
            )
            {
                Progress = new(row.Made, row.Cuts, row.Finished, row.Stocks),
            }),
        ];
    }
}
