using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Keeping;

/// <summary>Gives plans up and takes them back.</summary>
internal sealed class PlanWithdrawal(ReadPlans plans)
{
    public async Task<Outcome<PlanSummary>> WithdrawAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Plans.FindAsync([id], cancel) is not { } plan)
            return Outcome.Missing<PlanSummary>("plan");
        if (await RefuseAsync(db, id, cancel) is { } fault)
            return Outcome.Faulty<PlanSummary>(fault);
        plan.State = PlanState.Withdrawn;
        await PlanStorage.ReleaseAsync(db, id, cancel);
        return await SummaryAsync(db, id, cancel);
    }

    /// <summary>Why a plan cannot be given up now: it is cut, or a board of it is begun and not finished. Null where it
    /// can.</summary>
    public async Task<Fault?> RefuseAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Plans.AsNoTracking().SingleOrDefaultAsync(plan => plan.Id == id, cancel) is not { } plan)
            return null;
        if (plan.State == PlanState.Cut)
            return Fault.Of("plan", plan.Name, "is all cut: there is nothing to cancel");
        var begun = await BegunAsync(db, id, cancel);
        if (begun.Count == 0)
            return null;
        var layouts = plans.Read(plan).Plan.Layouts;
        var numbers = begun.Select(at => layouts.Take(at.Layout).Sum(layout => layout.Copies) + at.Copy).Order();
        return Fault.Of(
            "plan",
            $"{string.Join(", ", numbers)} of {plan.Name}",
            "is started: finish it at the bench, or undo its cuts"
        );
    }

    /// <summary>Gives a plan up because its project goes into the trash. Pieces that are begun and not finished stay
    /// promised to it: nobody else is to be given a board that is half cut.</summary>
    public async Task WithdrawWithAsync(ShopContext db, StoredPlan plan, Guid project, CancellationToken cancel)
    {
        var kept = await BegunPiecesAsync(db, plan, cancel);
        foreach (var promise in await db.Promises.Where(one => one.PlanId == plan.Id && one.Active).ToListAsync(cancel))
            promise.Active = kept.Contains(promise.PieceId);
        (plan.State, plan.WithdrawnWith) = (PlanState.Withdrawn, project);
        await db.SaveChangesAsync(cancel);
    }

    /// <summary>Returns the pieces of rack and bin that a plan has begun and not finished.</summary>
    public async Task<IReadOnlySet<Guid>> BegunPiecesAsync(ShopContext db, StoredPlan plan, CancellationToken cancel)
    {
        var begun = await BegunAsync(db, plan.Id, cancel);
        if (begun.Count == 0)
            return new HashSet<Guid>();
        try
        {
            var record = plans.Read(plan);
            var stocks = begun.Select(at => record.Plan.Layouts[at.Layout].Stock).ToHashSet();
            return record
                .Draft.PiecesOf(record.Plan)
                .Where(used => stocks.Contains(used.Stock.Id))
                .Select(used => used.PieceId)
                .ToHashSet();
        }
        catch (StoredDocumentException)
        {
            // Which they are cannot be told: all of them stay promised.
            return await db
                .Promises.Where(promise => promise.PlanId == plan.Id && promise.Active)
                .Select(promise => promise.PieceId)
                .ToHashSetAsync(cancel);
        }
    }

    private static async Task<List<(int Layout, int Copy)>> BegunAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        [
            .. (
                await db
                    .Cuts.AsNoTracking()
                    .Where(cut => cut.PlanId == id && cut.Made)
                    .Where(cut =>
                        !db.Finishes.Any(f => f.PlanId == id && f.Layout == cut.Layout && f.Copy == cut.Copy && f.Standing)
                    )
                    .Select(cut => new { cut.Layout, cut.Copy })
                    .Distinct()
                    .ToListAsync(cancel)
            ).Select(at => (at.Layout, at.Copy)),
        ];

    /// <summary>Why the plan of an order cannot take another's place: that one cannot be given up, or it holds a project that is
    /// still worked on and is not ordered. Null where it can.</summary>
    public async Task<Fault?> RefuseReplacingAsync(ShopContext db, Guid id, PlanOrder order, CancellationToken cancel)
    {
        if (await RefuseAsync(db, id, cancel) is { } fault)
            return fault.At(nameof(PlanOrder.Replaces));
        var ordered = order.Projects.ToList();
        var others = await (
            from own in db.PlanProjects
            join project in db.Projects on own.ProjectId equals project.Id
            where own.PlanId == id && !ordered.Contains(project.Id) && !project.IsArchived && project.DeletedUtc == null
            orderby own.Position
            select project.Name
        ).ToListAsync(cancel);
        return others.Count == 0
            ? null
            : Fault.Of(
                nameof(PlanOrder.Replaces),
                string.Join(", ", others),
                "is in the earlier plan too: plan it here as well, or keep the earlier plan"
            );
    }

    /// <summary>The plans that something is left to cut of, newest first.</summary>
    public async Task<IReadOnlyList<OpenPlanView>> ListOpenAsync(ShopContext db, CancellationToken cancel)
    {
        var open = await PlanHeaders.ListOpenAsync(db, cancel);
        var ids = open.Select(plan => plan.Id).ToList();
        var rows = (await db.PlanParts.AsNoTracking().Where(part => ids.Contains(part.PlanId)).ToListAsync(cancel)).ToLookup(
            part => part.PlanId,
            part => part.RowId
        );
        var views = new List<OpenPlanView>();
        foreach (var plan in open)
            views.Add(new(plan, [.. rows[plan.Id]], await RefuseUnreadAsync(db, plan, cancel)));
        return views;
    }

    // The boards that are begun are numbered by the plan's document.
    private async Task<Fault?> RefuseUnreadAsync(ShopContext db, PlanSummary plan, CancellationToken cancel)
    {
        try
        {
            return await RefuseAsync(db, plan.Id, cancel);
        }
        catch (StoredDocumentException problem)
        {
            return Fault.Of("plan", plan.Name, problem.Message.TrimEnd('.'));
        }
    }

    public async Task<Outcome<PlanSummary>> ReinstateAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Plans.FindAsync([id], cancel) is not { } plan)
            return Outcome.Missing<PlanSummary>("plan");
        if (plan.State != PlanState.Withdrawn)
            return await SummaryAsync(db, id, cancel);
        if (await RefuseDeletedAsync(db, plan, cancel) is { } deleted)
            return Outcome.Faulty<PlanSummary>(deleted);
        var promises = await PlannedAsync(db, id, cancel);
        var taken = new List<Fault>();
        foreach (var promise in promises)
            if (await FindTakenAsync(db, promise, cancel) is { } fault)
                taken.Add(fault);
        if (taken.Count > 0)
            return Outcome.Conflict<PlanSummary>(taken);
        foreach (var promise in promises)
            promise.Active = true;
        var isBegun =
            await db.Finishes.AnyAsync(f => f.PlanId == id && f.Standing, cancel)
            || await db.Cuts.AnyAsync(cut => cut.PlanId == id && cut.Made, cancel);
        (plan.State, plan.WithdrawnWith) = (isBegun ? PlanState.Cutting : PlanState.Ready, null);
        await db.SaveChangesAsync(cancel);
        await BoughtPromises.SettleAsync(db, plans.Read(plan), cancel);
        return await SummaryAsync(db, id, cancel);
    }

    // Null where a project of the plan is there.
    private static async Task<Fault?> RefuseDeletedAsync(ShopContext db, StoredPlan plan, CancellationToken cancel)
    {
        var own = await db.PlanProjects.Where(one => one.PlanId == plan.Id).Select(one => one.ProjectId).ToListAsync(cancel);
        if (await db.Projects.AnyAsync(project => own.Contains(project.Id), cancel))
            return null;
        return Fault.Of(
            "plan",
            plan.Name,
            own.Count > 0
                ? "was canceled when its project was deleted: restore the project from the trash first"
                : "can't come back: its project was deleted"
        );
    }

    // What the plan has cut up itself is not missing; nor is what was bought for it since: it can be bought again.
    private static Task<List<StoredPromise>> PlannedAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        db
            .Promises.Where(promise => promise.PlanId == id)
            .Where(promise => !db.Purchases.Any(one => one.PlanId == id && one.PieceId == promise.PieceId))
            .Where(promise =>
                !db.Entries.Any(entry =>
                    entry.PieceId == promise.PieceId
                    && entry.Kind == StockEntryKind.Cut
                    && db.Finishes.Any(f => f.Id == entry.FinishId && f.PlanId == id && f.Standing)
                )
            )
            .ToListAsync(cancel);

    private static async Task<Fault?> FindTakenAsync(ShopContext db, StoredPromise promise, CancellationToken cancel)
    {
        var piece = (await StockNow.FindAsync(db, promise.PieceId, cancel))!;
        if (!piece.OnHand)
            return new Fault(piece.Piece.Tag, "", "is no longer on hand");
        return piece.PromisedPlanId is null || piece.PromisedPlanId == promise.PlanId
            ? null
            : new Fault(piece.Piece.Tag, piece.PromisedTo ?? "", "has it now");
    }

    private static async Task<Outcome<PlanSummary>> SummaryAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        (await PlanHeaders.FindSummaryAsync(db, id, cancel))!;
}
