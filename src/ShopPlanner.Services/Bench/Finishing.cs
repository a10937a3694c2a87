using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>Enters a board or sheet that was cut up, with its leftovers.</summary>
internal sealed class Finishing(ShopContext db, BenchPlan plan, string device, TimeProvider clock, CancellationToken cancel)
{
    public async Task<Outcome<BenchView>?> FinishAsync(FinishedStock finished)
    {
        var (layoutIndex, copy) = (finished.Layout, finished.Copy);
        if (await plan.FinishAsync(db, layoutIndex, copy, cancel) is { } already)
            return Outcome.Conflict<BenchView>(Fault.Of("copy", already.Device, "has finished this one already"));
        var (layout, stock) = (plan.Record.Plan.Layouts[layoutIndex], plan.StockOf(layoutIndex));
        var material = await db.Materials.SingleAsync(m => m.Id == stock.Material, cancel);
        var faults = new List<Fault>();
        var kept = LeftoverReader.Read(
            finished.Leftovers,
            layout,
            stock,
            material,
            plan.Record.View([]).UnitOfLayout(layoutIndex),
            faults
        );
        if (faults.Count > 0)
            return Outcome.Faulty<BenchView>(faults);
        var finish = Add(layoutIndex, copy);
        var (cut, refusal) = stock.Offcut ? await CutFromHandAsync(stock, finish) : await CutNewAsync(stock, finish);
        if (cut is null)
            return refusal;
        foreach (var (length, width, area) in kept)
            await Ledger.EnterAsync(
                db,
                StockPlace.Bin,
                stock.Material,
                StockEntryKind.Binned,
                Note(length, width, Left(cut, area, length, width), $"left over: {plan.Record.Stored.Name}", finish),
                clock,
                cancel
            );
        if (finished.AllCutsMade)
            await plan.TickAllAsync(db, layoutIndex, copy, device, clock.GetUtcNow().UtcDateTime, cancel);
        return null;
    }

    private StoredFinish Add(int layout, int copy) =>
        db
            .Finishes.Add(
                new StoredFinish
                {
                    Id = Guid.CreateVersion7(),
                    PlanId = plan.Record.Stored.Id,
                    Layout = layout,
                    Copy = copy,
                    Standing = true,
                    WhenUtc = clock.GetUtcNow().UtcDateTime,
                    Device = device,
                }
            )
            .Entity;

    // What was bought for the plan is cut first; without any, it is bought now, at the plan's price.
    private async Task<(CutPiece? Cut, Outcome<BenchView>? Refusal)> CutNewAsync(CutStock stock, StoredFinish finish)
    {
        var line = (await BoughtLines.LoadAsync(db, plan.Record, cancel)).Single(one => one.Stock.Id == stock.Id);
        if (line.Ready.FirstOrDefault() is { Now: var bought })
        {
            return (await CutUpAsync(bought, finish), null);
        }

        var booking = new Booking(db, plan.Record, device, clock, cancel);
        var store = plan.Record.Draft.Basis.Stocks[stock.Id].Store ?? "";
        var piece = await booking.BuyAsync(stock, new Booked(line.FreePlace, stock.Price, store, finish));
        await Ledger.WriteAsync(
            db,
            piece,
            StockEntryKind.Cut,
            -1,
            Cut(stock.Length, stock.Width, booking.AsBought(stock), "", finish),
            null,
            clock,
            cancel
        );
        return (new(stock.Length, stock.Width, booking.AsBought(stock)), null);
    }

    private async Task<(CutPiece? Cut, Outcome<BenchView>? Refusal)> CutFromHandAsync(CutStock stock, StoredFinish finish)
    {
        var now = (await StockNow.FindAsync(db, plan.Record.Draft.Basis.Pieces[stock.Id], cancel))!;
        if (!now.OnHand)
            return Refused("stock", stock.Id, "is no longer on hand: undo its last entry, or plan again");
        if (now.PromisedPlanId is { } other && other != finish.PlanId)
            return Refused("stock", stock.Id, $"is promised to {now.PromisedTo} now");
        return (await CutUpAsync(now, finish), null);
    }

    private static (CutPiece?, Outcome<BenchView>?) Refused(string field, string value, string message) =>
        (null, Outcome.Conflict<BenchView>(new Fault(field, value, message)));

    private async Task<CutPiece> CutUpAsync(PieceNow now, StoredFinish finish)
    {
        var piece = await db.Pieces.SingleAsync(p => p.Id == now.Piece.Id, cancel);
        var note = Cut(now.Length, now.Width, now.Condition, now.Note, finish);
        await Ledger.WriteAsync(db, piece, StockEntryKind.Cut, -1, note, null, clock, cancel);
        foreach (var promise in await db.Promises.Where(p => p.PieceId == piece.Id && p.Active).ToListAsync(cancel))
            promise.Active = false;
        return new(now.Length, now.Width, now.Condition);
    }

    // Where it was cut it is true; a cut that was not made left an edge as it was bought, and a bad place in the wood.
    private static StockCondition Left(CutPiece cut, LeftoverArea? left, Length length, Length width) =>
        left is { Area: var area, IsTrimmed: var isTrimmed }
            ? (cut.Condition with { Untrimmed = isTrimmed ? StockEdges.None : cut.Condition.Untrimmed })
                .Of(area, cut.Length, cut.Width)
                .Resized(area.Dx, area.Dy, length, width)
            : StockCondition.Sound;

    private LedgerNote Cut(Length length, Length width, StockCondition condition, string note, StoredFinish finish) =>
        new(length, width, condition, note, $"cut for {plan.Record.Stored.Name}", device, finish.Id);

    private LedgerNote Note(Length length, Length width, StockCondition condition, string reason, StoredFinish finish) =>
        new(length, width, condition, "", reason, device, finish.Id);

    private sealed record CutPiece(Length Length, Length Width, StockCondition Condition);
}
