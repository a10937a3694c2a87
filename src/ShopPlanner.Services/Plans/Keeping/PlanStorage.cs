using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Keeping;

/// <summary>Stores a plan together with its promises, or not at all.</summary>
internal sealed class PlanStorage(ShopWork work, PlanWithdrawal withdrawal, TimeProvider clock)
{
    /// <summary>A conflict names each piece that was lost to another plan or changed meanwhile.</summary>
    public Task<Outcome<PlanSummary>> StoreAsync(
        PlanDraft draft,
        CutPlan plan,
        string planner,
        Guid? jobId,
        CancellationToken cancel
    ) => StoreAsync(draft, new ComparedPlan(plan, HeldAgainst.Nothing), planner, jobId, cancel);

    /// <summary>The same with what the plan is held against.</summary>
    public Task<Outcome<PlanSummary>> StoreAsync(
        PlanDraft draft,
        ComparedPlan compared,
        string planner,
        Guid? jobId,
        CancellationToken cancel
    ) =>
        work.WriteAsync(
            async db =>
            {
                var stored = await StoreInAsync(db, draft, compared.Plan, planner, jobId, cancel);
                if (stored.Ok && !compared.Held.IsEmpty)
                    db.Comparisons.Add(
                        new StoredComparison { PlanId = stored.Value.Id, Document = PlanComparisonDocument.Write(compared.Held) }
                    );
                return stored;
            },
            cancel
        );

    /// <summary>The same in a transaction that others see to.</summary>
    internal async Task<Outcome<PlanSummary>> StoreInAsync(
        ShopContext db,
        PlanDraft draft,
        CutPlan plan,
        string planner,
        Guid? jobId,
        CancellationToken cancel
    )
    {
        if (await DeletedAsync(db, draft, cancel) is { } deleted)
            return Outcome.Conflict<PlanSummary>(deleted);
        foreach (var replaced in draft.Order.Replaces)
            if (await ReplaceAsync(db, replaced, draft.Order, cancel) is { } refusal)
                return refusal;
        var lost = await LostAsync(db, draft, plan, cancel);
        if (lost.Count > 0)
            return Outcome.Conflict<PlanSummary>(lost);
        var stored = Add(db, draft, plan, planner, await db.NextAsync(Counters.Plans, cancel));
        foreach (var (_, pieceId) in draft.PiecesOf(plan))
            db.Promises.Add(
                new StoredPromise
                {
                    Id = Guid.CreateVersion7(),
                    PieceId = pieceId,
                    PlanId = stored.Id,
                    Active = true,
                }
            );
        if (jobId is { } id && await db.Jobs.FindAsync([id], cancel) is { } job)
            (job.State, job.PlanId) = (PlanJobState.Done, stored.Id);
        await db.SaveChangesAsync(cancel);
        return new PlanRecord(stored, draft, plan).Summary;
    }

    // Deleted while it was planned.
    private static async Task<Fault?> DeletedAsync(ShopContext db, PlanDraft draft, CancellationToken cancel)
    {
        var wanted = draft.Order.Projects.Distinct().ToList();
        var there = await db
            .Projects.Where(project => wanted.Contains(project.Id))
            .Select(project => project.Id)
            .ToListAsync(cancel);
        return wanted.Except(there).Select(gone => (Guid?)gone).FirstOrDefault() is { } id
            ? Fault.Of(
                nameof(PlanOrder.Projects),
                draft.Basis.Parts.Values.FirstOrDefault(part => part.ProjectId == id)?.Project,
                "was deleted: restore it from the trash, or plan the others alone"
            )
            : null;
    }

    private StoredPlan Add(ShopContext db, PlanDraft draft, CutPlan plan, string planner, long number)
    {
        var request = CutRequestJson.Write(draft.Request);
        var stored = new StoredPlan
        {
            Id = Guid.CreateVersion7(),
            Number = number,
            Name = draft.Basis.Name,
            MadeUtc = clock.GetUtcNow().UtcDateTime,
            State = PlanState.Ready,
            Status = plan.Status,
            Cost = plan.Cost,
            Stocks = plan.Layouts.Sum(layout => layout.Copies),
            Cuts = PlanFigures.Cuts(plan),
            ToBuy = PlanFigures.ToBuy(plan),
            OrderJson = PlanOrderDocument.Write(draft.Order),
            RequestJson = request,
            PlanJson = CutPlanJson.Write(plan),
            NamesJson = PlanNamesDocument.Write(draft.Basis),
            RequestHash = CutDocuments.Hash(request),
            PlannerVersion = planner,
        };
        db.PlanProjects.AddRange(
            draft
                .Order.Projects.Distinct()
                .Select(
                    (id, i) =>
                        new StoredPlanProject
                        {
                            PlanId = stored.Id,
                            ProjectId = id,
                            Position = i,
                            Build = draft.Builds.GetValueOrDefault(id, 1),
                        }
                )
        );
        db.PlanParts.AddRange(PlanFigures.Parts(stored.Id, draft, plan));
        return db.Plans.Add(stored).Entity;
    }

    private static async Task<List<Fault>> LostAsync(ShopContext db, PlanDraft draft, CutPlan plan, CancellationToken cancel)
    {
        var now = await StockNow.ByTagAsync(db, [.. draft.PiecesOf(plan).Select(used => used.Stock.Id)], cancel);
        return [.. draft.PiecesOf(plan).Select(used => Lost(used.Stock, now.GetValueOrDefault(used.Stock.Id))).OfType<Fault>()];
    }

    private static Fault? Lost(CutStock wanted, PieceNow? piece)
    {
        if (piece is null || !piece.OnHand)
            return new Fault(wanted.Id, "", "is gone");
        if (piece.Length != wanted.Length || piece.Width != wanted.Width)
            return new Fault(wanted.Id, "", "was measured again");
        return piece.PromisedPlanId is null
            ? null
            : new Fault(wanted.Id, piece.PromisedTo ?? "", "has this piece now: plan again");
    }

    // The replaced plan's promises are released first, so that the new plan may take the same pieces.
    private async Task<Outcome<PlanSummary>?> ReplaceAsync(
        ShopContext db,
        Guid replaced,
        PlanOrder order,
        CancellationToken cancel
    )
    {
        if (await db.Plans.FindAsync([replaced], cancel) is not { } old)
            return null;
        if (await withdrawal.RefuseReplacingAsync(db, replaced, order, cancel) is { } fault)
            return Outcome.Faulty<PlanSummary>(fault);
        old.State = PlanState.Withdrawn;
        await ReleaseAsync(db, replaced, cancel);
        return null;
    }

    /// <summary>Gives back what a plan was promised.</summary>
    internal static async Task ReleaseAsync(ShopContext db, Guid planId, CancellationToken cancel)
    {
        foreach (var promise in await db.Promises.Where(p => p.PlanId == planId && p.Active).ToListAsync(cancel))
            promise.Active = false;
        await db.SaveChangesAsync(cancel);
    }
}
