using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Opening;

/// <summary>Fills, once, what programs before did not store beside their plans, and settles the states that were set by hand when
/// nothing else moved a project.</summary>
internal sealed class FigureUpgrade(ShopContext db, ILogger log)
{
    private const string Fact = "plan figures";

    /// <summary>Fills it in. A plan that cannot be read is named in the log, and counts no cuts.</summary>
    public async Task RunAsync(CancellationToken cancel)
    {
        if (await db.Facts.FindAsync([Fact], cancel) is not null)
            return;
        foreach (var id in await db.Plans.Select(plan => plan.Id).ToListAsync(cancel))
            await FillAsync(await db.Plans.AsNoTracking().SingleAsync(plan => plan.Id == id, cancel), cancel);
        db.Facts.Add(new StoredFact { Name = Fact, Value = "1" });
        await db.SaveChangesAsync(cancel);
        await SettleAsync(cancel);
    }

    // Past the rows' classes: a plan's version is not touched.
    private async Task FillAsync(StoredPlan stored, CancellationToken cancel)
    {
        try
        {
            var plan = CutDocuments.ReadPlan(stored.PlanJson);
            var (cuts, toBuy) = (PlanFigures.Cuts(plan), PlanFigures.ToBuy(plan));
            await db
                .Plans.Where(one => one.Id == stored.Id)
                .ExecuteUpdateAsync(set => set.SetProperty(one => one.Cuts, cuts).SetProperty(one => one.ToBuy, toBuy), cancel);
            var draft = new PlanDraft(
                PlanOrderDocument.Read(stored.OrderJson),
                CutDocuments.ReadRequest(stored.RequestJson),
                PlanNamesDocument.Read(stored.NamesJson),
                []
            );
            db.PlanParts.AddRange(PlanFigures.Parts(stored.Id, draft, plan));
        }
        catch (StoredDocumentException problem)
        {
            log.LogWarning("The cuts of plan {Plan} are not counted: {Problem}", stored.Name, problem.Message);
        }
    }

    // On the bench meant cutting or building, which the cuts tell better. Without any, the person knows.
    private async Task SettleAsync(CancellationToken cancel)
    {
        var set = await db
            .Projects.AsNoTracking()
            .Where(project => project.SetState != null && project.SetBuild == 0)
            .ToListAsync(cancel);
        var standings = await ProjectStandings.LoadAsync(db, [.. set.Select(project => project.Id)], cancel);
        foreach (var project in set)
        {
            var now = await standings.OfAsync(db, project, cancel);
            var isTold = project.SetState == ProjectState.Building && now.Told >= ProjectState.Cutting;
            ProjectState? state = isTold ? null : project.SetState;
            await db
                .Projects.Where(one => one.Id == project.Id)
                .ExecuteUpdateAsync(
                    change =>
                        change
                            .SetProperty(one => one.SetState, state)
                            .SetProperty(one => one.SetFrom, now.Told)
                            .SetProperty(one => one.SetBuild, now.Build),
                    cancel
                );
        }
    }
}
