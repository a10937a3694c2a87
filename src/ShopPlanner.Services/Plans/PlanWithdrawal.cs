using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans;

/// <summary>Gives plans up and takes them back.</summary>
internal static class PlanWithdrawal
{
    public static async Task<Outcome<PlanSummary>> WithdrawAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Plans.FindAsync([id], cancel) is not { } plan)
            return Outcome.Missing<PlanSummary>("plan");
        if (plan.State is PlanState.Cutting or PlanState.Cut)
            return Outcome.Faulty<PlanSummary>(
                Fault.Of("plan", plan.Name, "is being cut: what is cut stays cut, reopen its boards first")
            );
        plan.State = PlanState.Withdrawn;
        await PlanStorage.ReleaseAsync(db, id, cancel);
        return await SummaryAsync(db, id, cancel);
    }

    public static async Task<Outcome<PlanSummary>> ReinstateAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Plans.FindAsync([id], cancel) is not { } plan)
            return Outcome.Missing<PlanSummary>("plan");
        if (plan.State != PlanState.Withdrawn)
            return await SummaryAsync(db, id, cancel);
        var promises = await db.Promises.Where(promise => promise.PlanId == id).ToListAsync(cancel);
        var taken = new List<Fault>();
        foreach (var promise in promises)
            if (await FindTakenAsync(db, promise, cancel) is { } fault)
                taken.Add(fault);
        if (taken.Count > 0)
            return Outcome.Conflict<PlanSummary>(taken);
        foreach (var promise in promises)
            promise.Active = true;
        plan.State = PlanState.Ready;
        await db.SaveChangesAsync(cancel);
        return await SummaryAsync(db, id, cancel);
    }

    private static async Task<Fault?> FindTakenAsync(ShopContext db, StoredPromise promise, CancellationToken cancel)
    {
        var piece = (await StockNow.FindAsync(db, promise.PieceId, cancel))!;
        if (!piece.OnHand)
            return new Fault(piece.Piece.Tag, "", "is not on hand any more");
        return piece.PromisedPlanId is null ? null : new Fault(piece.Piece.Tag, piece.PromisedTo ?? "", "has it now");
    }

    private static async Task<Outcome<PlanSummary>> SummaryAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        (await PlanReading.FindAsync(db, id, cancel))!.Summary;
}
