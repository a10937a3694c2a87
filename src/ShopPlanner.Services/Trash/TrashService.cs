using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Trash;

internal sealed class TrashService(ShopWork work, PlanWithdrawal withdrawal, TimeProvider clock) : ITrashService
{
    public Task<Deletion?> PreviewAsync(Guid projectId, CancellationToken cancel = default) =>
        work.ReadAsync(
            async db =>
                await db.Projects.AnyAsync(project => project.Id == projectId, cancel)
                    ? await PreviewAsync(db, projectId, cancel)
                    : null,
            cancel
        );

    public Task<Outcome<TrashedProject>> DeleteAsync(Guid projectId, CancellationToken cancel = default) =>
        work.WriteAsync(db => DeleteAsync(db, projectId, cancel), cancel);

    public Task<IReadOnlyList<TrashedProject>> ListAsync(CancellationToken cancel = default) =>
        work.ReadAsync(db => ListAsync(db, TrashedProjects.Of(db), cancel), cancel);

    public Task<IReadOnlyList<TrashedProject>> ListOfPlanAsync(Guid planId, CancellationToken cancel = default) =>
        work.ReadAsync(
            db =>
                ListAsync(
                    db,
                    TrashedProjects
                        .Of(db)
                        .Where(project => db.PlanProjects.Any(own => own.PlanId == planId && own.ProjectId == project.Id)),
                    cancel
                ),
            cancel
        );

    public Task<Outcome<RestoredProject>> RestoreAsync(Guid projectId, CancellationToken cancel = default) =>
        work.WriteAsync(db => RestoreAsync(db, projectId, cancel), cancel);

    private async Task<Deletion> PreviewAsync(ShopContext db, Guid projectId, CancellationToken cancel)
    {
        var plans = await PlanHeaders.ListOfAsync(db, projectId, cancel);
        var alone = await OwnPlans(db, projectId).AsNoTracking().ToListAsync(cancel);
        var own = alone.Select(plan => plan.Id).ToHashSet();
        var halfCut = new HashSet<Guid>();
        foreach (var plan in alone)
            halfCut.UnionWith(await withdrawal.BegunPiecesAsync(db, plan, cancel));
        var promised = await db
            .Promises.Where(promise => promise.Active && own.Contains(promise.PlanId))
            .Select(promise => promise.PieceId)
            .ToListAsync(cancel);
        var tags = await db.Pieces.Where(piece => halfCut.Contains(piece.Id)).Select(piece => piece.Tag).ToListAsync(cancel);
        return new Deletion(
            [.. plans.Where(plan => own.Contains(plan.Id))],
            [.. plans.Where(plan => IsOpen(plan.State) && !own.Contains(plan.Id))],
            [.. tags.Order(StringComparer.Ordinal)],
            promised.Except(halfCut).Count()
        );
    }

    private async Task<Outcome<TrashedProject>> DeleteAsync(ShopContext db, Guid projectId, CancellationToken cancel)
    {
        if (await db.Projects.IgnoreQueryFilters().SingleOrDefaultAsync(one => one.Id == projectId, cancel) is not { } project)
            return Outcome.Missing<TrashedProject>("project");
        if (project.DeletedUtc is null)
        {
            foreach (var plan in await OwnPlans(db, projectId).ToListAsync(cancel))
                await withdrawal.WithdrawWithAsync(db, plan, projectId, cancel);
            project.DeletedUtc = clock.GetUtcNow().UtcDateTime;
            await db.SaveChangesAsync(cancel);
        }

        return (await ListAsync(db, TrashedProjects.Of(db).Where(one => one.Id == projectId), cancel)).Single();
    }

    // Open plans that no other project has a share in.
    private static IQueryable<StoredPlan> OwnPlans(ShopContext db, Guid projectId) =>
        db
            .Plans.Where(plan => plan.State == PlanState.Ready || plan.State == PlanState.Cutting)
            .Where(plan => db.PlanProjects.Any(own => own.PlanId == plan.Id && own.ProjectId == projectId))
            .Where(plan =>
                !db.PlanProjects.Any(own =>
                    own.PlanId == plan.Id && own.ProjectId != projectId && db.Projects.Any(other => other.Id == own.ProjectId)
                )
            );

    private static bool IsOpen(PlanState state) => state is PlanState.Ready or PlanState.Cutting;

    private static async Task<IReadOnlyList<TrashedProject>> ListAsync(
        ShopContext db,
        IQueryable<StoredProject> trashed,
        CancellationToken cancel
    )
    {
        var rows = await trashed
            .OrderByDescending(project => project.DeletedUtc)
            .ThenByDescending(project => project.Number)
            .Select(project => new
            {
                Project = project,
                Parts = db.Parts.Count(part => part.ProjectId == project.Id),
                Plans = db.Plans.Count(plan => plan.WithdrawnWith == project.Id),
            })
            .ToListAsync(cancel);
        return
        [
            .. rows.Select(row => new TrashedProject(
                row.Project.Id,
                row.Project.Name,
                row.Project.Code,
                row.Parts,
                row.Plans,
                row.Project.DeletedUtc!.Value,
                row.Project.DeletedUtc.Value + TrashedProjects.Kept
            )),
        ];
    }

    private async Task<Outcome<RestoredProject>> RestoreAsync(ShopContext db, Guid projectId, CancellationToken cancel)
    {
        if (await db.Projects.IgnoreQueryFilters().SingleOrDefaultAsync(one => one.Id == projectId, cancel) is not { } project)
            return Outcome.Missing<RestoredProject>("project");
        project.DeletedUtc = null;
        await db.SaveChangesAsync(cancel);
        var (back, not) = (new List<PlanSummary>(), new List<StillCanceled>());
        foreach (var plan in await db.Plans.Where(one => one.WithdrawnWith == projectId).ToListAsync(cancel))
        {
            // From now on it is a plan like others, whether its pieces are free or not.
            plan.WithdrawnWith = null;
            await db.SaveChangesAsync(cancel);
            var outcome = await withdrawal.ReinstateAsync(db, plan.Id, cancel);
            if (outcome.Ok)
                back.Add(outcome.Value);
            else
                not.Add(new((await PlanHeaders.FindSummaryAsync(db, plan.Id, cancel))!, outcome.Faults));
        }

        await ReleaseAsync(db, not, cancel);
        return new RestoredProject(projectId, project.Name, [.. back], [.. not]);
    }

    // A plan that stays canceled keeps nothing back.
    private static async Task ReleaseAsync(ShopContext db, List<StillCanceled> plans, CancellationToken cancel)
    {
        foreach (var one in plans)
            await PlanStorage.ReleaseAsync(db, one.Plan.Id, cancel);
    }
}
