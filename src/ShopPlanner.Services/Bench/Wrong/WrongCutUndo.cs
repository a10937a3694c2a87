using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>Takes a wrong cut back: the plan of the rest first, then the boards that were stopped, then what was put into the
/// bin.</summary>
internal sealed class WrongCutUndo(
    ShopContext db,
    PlanWithdrawal withdrawal,
    BenchPlan plan,
    string device,
    TimeProvider clock,
    CancellationToken cancel
)
{
    private const string Reason = "wrong cut taken back";

    /// <summary>Returns null where all of it is taken back, else why none of it is.</summary>
    public async Task<Outcome<WrongCutView>?> UndoAsync(StoredWrongCut wrong)
    {
        if (!wrong.Standing)
            return Outcome.Conflict<WrongCutView>(new Fault("cut", $"{wrong.Cut}", "is taken back already"));
        if (await WithdrawAsync(wrong) is { } refused)
            return refused;
        var stopped = await db.Finishes.Where(one => one.WrongCutId == wrong.Id && one.Standing).ToListAsync(cancel);
        foreach (var finish in stopped)
            if (await new Reopening(db, plan, device, clock, cancel).ReopenAsync(finish.Layout, finish.Copy) is { } hindered)
                return new Outcome<WrongCutView>(hindered.Kind, null, hindered.Faults);
        await db.SaveChangesAsync(cancel);
        if (await TakeBackLeftAsync(wrong) is { } used)
            return Outcome.Conflict<WrongCutView>(used);
        await UntickAsync(wrong);
        wrong.Standing = false;
        await db.SaveChangesAsync(cancel);
        return await ReinstateAsync(wrong);
    }

    // A plan of the rest that was begun, or planned again itself, is what stands now.
    private async Task<Outcome<WrongCutView>?> WithdrawAsync(StoredWrongCut wrong)
    {
        if (wrong.RestPlanId is not { } id)
            return null;
        var rest = (await db.Plans.FindAsync([id], cancel))!;
        var isBegun =
            await db.Cuts.AnyAsync(cut => cut.PlanId == id && cut.Made, cancel)
            || await db.Finishes.AnyAsync(finish => finish.PlanId == id && finish.Standing, cancel);
        if (isBegun)
            return Outcome.Conflict<WrongCutView>(
                Fault.Of("plan", rest.Name, "has cuts done by the new plan: undo them at the bench first")
            );
        if (rest.State != PlanState.Withdrawn)
            return await withdrawal.WithdrawAsync(db, id, cancel) is { Ok: false } refused
                ? new Outcome<WrongCutView>(refused.Kind, null, refused.Faults)
                : null;
        var own = db.PlanProjects.Where(one => one.PlanId == id).Select(one => one.ProjectId);
        var isPlannedAgain = await db.Plans.AnyAsync(
            one =>
                one.Number > rest.Number
                && one.State != PlanState.Withdrawn
                && db.PlanProjects.Any(project => project.PlanId == one.Id && own.Contains(project.ProjectId)),
            cancel
        );
        return isPlannedAgain
            ? Outcome.Conflict<WrongCutView>(Fault.Of("plan", rest.Name, "was planned again since: cancel that plan first"))
            : null;
    }

    private async Task<Fault?> TakeBackLeftAsync(StoredWrongCut wrong)
    {
        var ids = await db
            .WrongPieces.Where(one => one.WrongCutId == wrong.Id && one.LeftPieceId != null)
            .Select(one => one.LeftPieceId!.Value)
            .ToListAsync(cancel);
        foreach (var piece in await db.Pieces.Where(one => ids.Contains(one.Id)).ToListAsync(cancel))
        {
            var standing = await Ledger.StandingAsync(db, piece.Id, cancel);
            if (standing.Count == 0)
                continue;
            var now = (await StockNow.FindAsync(db, piece.Id, cancel))!;
            if (standing.Count > 1)
                return Fault.Of(piece.Tag, standing[^1].Reason, "happened to this piece since: undo that first");
            if (now.PromisedPlanId is not null)
                return Fault.Of(piece.Tag, now.PromisedTo, "needs this piece: cancel that plan first");
            await Ledger.TakeBackAsync(db, piece, standing, Reason, device, clock, cancel);
        }

        return null;
    }

    // A later cut of the board that is made needs this one.
    private async Task UntickAsync(StoredWrongCut wrong)
    {
        var ticks = db.Cuts.Where(cut =>
            cut.PlanId == wrong.PlanId && cut.Layout == wrong.Layout && cut.Copy == wrong.Copy && cut.Made
        );
        if (!wrong.IsTickedByIt || await ticks.AnyAsync(cut => cut.Cut > wrong.Cut, cancel))
            return;
        if (await ticks.SingleOrDefaultAsync(cut => cut.Cut == wrong.Cut, cancel) is { } tick)
            tick.Made = false;
    }

    private async Task<Outcome<WrongCutView>?> ReinstateAsync(StoredWrongCut wrong)
    {
        if (wrong.RestPlanId is not null && plan.Record.Stored.State == PlanState.Withdrawn)
        {
            var back = await withdrawal.ReinstateAsync(db, wrong.PlanId, cancel);
            if (!back.Ok)
                return new Outcome<WrongCutView>(back.Kind, null, back.Faults);
        }

        await plan.SettleStateAsync(db, cancel);
        await db.SaveChangesAsync(cancel);
        await BoughtPromises.SettleAsync(db, plan.Record, cancel);
        return null;
    }
}
