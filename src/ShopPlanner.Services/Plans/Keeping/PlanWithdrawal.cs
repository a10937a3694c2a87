using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
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
        var begun = await db
            .Cuts.AsNoTracking()
            .Where(cut => cut.PlanId == id && cut.Made)
            .Where(cut => !db.Finishes.Any(f => f.PlanId == id && f.Layout == cut.Layout && f.Copy == cut.Copy && f.Standing))
            .Select(cut => new { cut.Layout, cut.Copy })
            .Distinct()
            .ToListAsync(cancel);
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

    public static async Task<Outcome<PlanSummary>> ReinstateAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Plans.FindAsync([id], cancel) is not { } plan)
            return Outcome.Missing<PlanSummary>("plan");
        if (plan.State != PlanState.Withdrawn)
            return await SummaryAsync(db, id, cancel);
        // What the plan has cut up itself is not missing.
        var promises = await db
            .Promises.Where(promise => promise.PlanId == id)
            .Where(promise =>
                !db.Entries.Any(entry =>
                    entry.PieceId == promise.PieceId
                    && entry.Kind == StockEntryKind.Cut
                    && db.Finishes.Any(f => f.Id == entry.FinishId && f.PlanId == id && f.Standing)
                )
            )
            .ToListAsync(cancel);
        var taken = new List<Fault>();
        foreach (var promise in promises)
            if (await FindTakenAsync(db, promise, cancel) is { } fault)
                taken.Add(fault);
        if (taken.Count > 0)
            return Outcome.Conflict<PlanSummary>(taken);
        foreach (var promise in promises)
            promise.Active = true;
        plan.State = await db.Finishes.AnyAsync(f => f.PlanId == id && f.Standing, cancel) ? PlanState.Cutting : PlanState.Ready;
        await db.SaveChangesAsync(cancel);
        return await SummaryAsync(db, id, cancel);
    }

    private static async Task<Fault?> FindTakenAsync(ShopContext db, StoredPromise promise, CancellationToken cancel)
    {
        var piece = (await StockNow.FindAsync(db, promise.PieceId, cancel))!;
        if (!piece.OnHand)
            return new Fault(piece.Piece.Tag, "", "is no longer on hand");
        return piece.PromisedPlanId is null ? null : new Fault(piece.Piece.Tag, piece.PromisedTo ?? "", "has it now");
    }

    private static async Task<Outcome<PlanSummary>> SummaryAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        (await PlanHeaders.FindSummaryAsync(db, id, cancel))!;
}
