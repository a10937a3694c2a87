using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Trash;

/// <summary>Projects that lie in the trash, and their end.</summary>
internal static class TrashedProjects
{
    /// <summary>How long a project lies in the trash.</summary>
    public static readonly TimeSpan Kept = TimeSpan.FromDays(ITrashService.Days);

    /// <summary>Returns all of them.</summary>
    public static IQueryable<StoredProject> Of(ShopContext db) =>
        db.Projects.IgnoreQueryFilters().Where(project => project.DeletedUtc != null);

    /// <summary>Returns those that have lain there long enough.</summary>
    public static IQueryable<StoredProject> Old(ShopContext db, DateTime now)
    {
        var before = now - Kept;
        return Of(db).Where(project => project.DeletedUtc <= before);
    }

    /// <summary>Removes for good those that have lain there long enough.</summary>
    public static async Task<Outcome<Done>> RemoveOldAsync(ShopContext db, DateTime now, CancellationToken cancel)
    {
        var old = await Old(db, now).Select(project => project.Id).ToListAsync(cancel);
        foreach (var project in old)
            await RemoveAsync(db, project, cancel);
        return Done.Value;
    }

    // Bottom up, since the database refuses a row that others point at.
    private static async Task RemoveAsync(ShopContext db, Guid project, CancellationToken cancel)
    {
        var plans = await db.PlanProjects.Where(own => own.ProjectId == project).Select(own => own.PlanId).ToListAsync(cancel);
        await db.PlanProjects.Where(own => own.ProjectId == project).ExecuteDeleteAsync(cancel);
        var orphans = Orphans(db, plans);
        await db
            .Promises.Where(promise => promise.Active && orphans.Contains(promise.PlanId))
            .ExecuteUpdateAsync(set => set.SetProperty(promise => promise.Active, false), cancel);
        await RemoveUncutAsync(db, plans, cancel);
        await db.PartSteps.Where(step => step.ProjectId == project).ExecuteDeleteAsync(cancel);
        await db.Parts.Where(part => part.ProjectId == project).ExecuteDeleteAsync(cancel);
        await db.IdeaSteps.Where(step => step.ProjectId == project).ExecuteDeleteAsync(cancel);
        await db.Ideas.Where(idea => idea.ProjectId == project).ExecuteDeleteAsync(cancel);
        await db.WorkChanges.Where(change => change.ProjectId == project).ExecuteDeleteAsync(cancel);
        await db.Works.Where(one => one.ProjectId == project).ExecuteDeleteAsync(cancel);
        await db.Workings.Where(working => working.ProjectId == project).ExecuteDeleteAsync(cancel);
        await db.Projects.IgnoreQueryFilters().Where(one => one.Id == project).ExecuteDeleteAsync(cancel);
    }

    // Plans that no project has a share in any more.
    private static IQueryable<Guid> Orphans(ShopContext db, List<Guid> plans) =>
        db
            .Plans.Where(plan => plans.Contains(plan.Id) && !db.PlanProjects.Any(own => own.PlanId == plan.Id))
            .Select(plan => plan.Id);

    // What was cut stays true: a plan by which anything was cut stays, as the ledger's lines about it do.
    private static async Task RemoveUncutAsync(ShopContext db, List<Guid> plans, CancellationToken cancel)
    {
        var uncut = await Orphans(db, plans)
            .Where(plan =>
                !db.Finishes.Any(finish => finish.PlanId == plan) && !db.Cuts.Any(cut => cut.PlanId == plan && cut.Made)
            )
            .ToListAsync(cancel);
        await db.Promises.Where(promise => uncut.Contains(promise.PlanId)).ExecuteDeleteAsync(cancel);
        await db.Cuts.Where(cut => uncut.Contains(cut.PlanId)).ExecuteDeleteAsync(cancel);
        await db.Plans.Where(plan => uncut.Contains(plan.Id)).ExecuteDeleteAsync(cancel);
    }
}
