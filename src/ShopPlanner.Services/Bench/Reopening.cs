using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>Takes a finish back: each of its ledger lines by a new one, last first, and what it bought. A board that was bought
/// before stays bought.</summary>
internal sealed class Reopening(ShopContext db, BenchPlan plan, string device, TimeProvider clock, CancellationToken cancel)
{
    private const string Reason = "reopened at the bench";

    public async Task<Outcome<BenchView>?> ReopenAsync(int layout, int copy)
    {
        if (await plan.FinishAsync(db, layout, copy, cancel) is not { } finish)
            return Outcome.Faulty<BenchView>(new Fault("copy", $"{copy}", "is not finished"));
        var pieces = await db
            .Pieces.Where(piece => db.Entries.Any(e => e.PieceId == piece.Id && e.FinishId == finish.Id))
            .ToListAsync(cancel);
        var faults = new List<Fault>();
        foreach (var piece in pieces)
            if (await FindHindranceAsync(piece, finish) is { } fault)
                faults.Add(fault);
        if (faults.Count > 0)
            return Outcome.Conflict<BenchView>(faults);
        foreach (var piece in pieces)
            await TakeBackAsync(piece, finish);
        foreach (var purchase in await db.Purchases.Where(one => one.FinishId == finish.Id).ToListAsync(cancel))
            purchase.Standing = false;
        finish.Standing = false;
        return null;
    }

    private async Task<Fault?> FindHindranceAsync(StoredPiece piece, StoredFinish finish)
    {
        var standing = await Ledger.StandingAsync(db, piece.Id, cancel);
        if (standing[^1].FinishId != finish.Id)
            return Fault.Of(piece.Tag, standing[^1].Reason, "happened after the cut: undo that first");
        var now = (await StockNow.FindAsync(db, piece.Id, cancel))!;
        return now.PromisedPlanId is null
            ? null
            : Fault.Of(piece.Tag, now.PromisedTo, "needs this leftover: cancel that plan first");
    }

    private async Task TakeBackAsync(StoredPiece piece, StoredFinish finish)
    {
        var standing = await Ledger.StandingAsync(db, piece.Id, cancel);
        while (standing.Count > 0 && standing[^1].FinishId == finish.Id)
        {
            await Ledger.TakeBackAsync(db, piece, standing, Reason, device, clock, cancel);
            standing.RemoveAt(standing.Count - 1);
        }

        // A piece that lay in the rack or the bin before is there again, and promised to the plan again.
        if (
            standing.Count > 0
            && await db.Promises.SingleOrDefaultAsync(p => p.PieceId == piece.Id && p.PlanId == finish.PlanId, cancel)
                is { } promise
        )
            promise.Active = true;
    }
}
