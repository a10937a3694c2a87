using Microsoft.EntityFrameworkCore;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Keeping;

/// <summary>Reads what plans were held against.</summary>
internal sealed class PlanComparisons(ShopWork work) : IPlanTogether
{
    public async Task<PlanComparison?> OfAsync(Guid planId, CancellationToken cancel = default) =>
        (await work.ReadAsync(db => FindAsync(db, planId, cancel), cancel)).Held is { } held
            ? new PlanComparison([.. held.Alone.Select(Summary)], held.Baskets)
            : null;

    public async Task<PlanView?> AloneAsync(Guid planId, Guid project, CancellationToken cancel = default)
    {
        var (plan, held) = await work.ReadAsync(db => FindAsync(db, planId, cancel), cancel);
        return held?.Alone.FirstOrDefault(one => one.Project == project) is { } alone ? View(plan!, alone) : null;
    }

    private static async Task<(StoredPlan? Plan, HeldAgainst? Held)> FindAsync(
        ShopContext db,
        Guid id,
        CancellationToken cancel
    ) =>
        await db.Comparisons.AsNoTracking().SingleOrDefaultAsync(one => one.PlanId == id, cancel) is { } stored
            ? (
                await db.Plans.AsNoTracking().SingleAsync(plan => plan.Id == id, cancel),
                PlanComparisonDocument.Read(stored.Document)
            )
            : (null, null);

    private static AloneSummary Summary(AloneRecord alone) =>
        new(
            alone.Project,
            Bidi.Isolate(alone.Basis.Name),
            alone.Plan.Cost,
            alone.Plan.Status,
            alone.Plan.Unplaced.Sum(left => left.Quantity)
        );

    // A plan on paper: it has the id of the one it is compared with, and neither rows nor promises of its own.
    private static PlanView View(StoredPlan plan, AloneRecord alone)
    {
        var request = CutDocuments.Hash(CutRequestJson.Write(alone.Request));
        var own = new StoredPlan
        {
            Id = plan.Id,
            Name = alone.Basis.Name,
            MadeUtc = plan.MadeUtc,
            State = PlanState.Ready,
            Status = alone.Plan.Status,
            Cost = alone.Plan.Cost,
            Stocks = alone.Plan.Layouts.Sum(layout => layout.Copies),
            Cuts = PlanFigures.Cuts(alone.Plan),
            ToBuy = PlanFigures.ToBuy(alone.Plan),
            OrderJson = "",
            RequestJson = "",
            PlanJson = "",
            NamesJson = "",
            RequestHash = request,
            PlannerVersion = plan.PlannerVersion,
        };
        var order = PlanOrderDocument.Read(plan.OrderJson) with { Projects = [alone.Project], Replaces = [] };
        return new PlanRecord(own, new PlanDraft(order, alone.Request, alone.Basis, []), alone.Plan).View([]);
    }
}
