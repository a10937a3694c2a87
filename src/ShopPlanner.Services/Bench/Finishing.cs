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
    /// <summary>Finishes by what was typed.</summary>
    public async Task<Outcome<BenchView>?> FinishAsync(FinishedStock finished)
    {
        var index = finished.Layout;
        if (await plan.FinishAsync(db, index, finished.Copy, cancel) is { } already)
            return Outcome.Conflict<BenchView>(Fault.Of("copy", already.Device, "has finished this one already"));
        var (layout, stock) = (plan.Record.Plan.Layouts[index], plan.StockOf(index));
        var material = await db.Materials.SingleAsync(m => m.Id == stock.Material, cancel);
        var faults = new List<Fault>();
        var unit = plan.Record.View([]).UnitOfLayout(index);
        var kept = new LeftoverReader(layout, stock, material, unit, faults).Read(
            finished.Leftovers,
            await plan.GivenAsync(db, index, finished.Copy, finished.AllCutsMade, cancel)
        );
        if (faults.Count > 0)
            return Outcome.Faulty<BenchView>(faults);
        if (finished.AllCutsMade)
            await plan.TickAllAsync(db, index, finished.Copy, device, clock.GetUtcNow().UtcDateTime, cancel);
        return (await EnterAsync(new BenchPlace(index, finished.Copy), kept, null)).Refusal;
    }

    /// <summary>Enters a finish: the stock goes, what is kept comes. The ticks are set before.</summary>
    /// <param name="at">The board or sheet.</param>
    /// <param name="kept">What goes into the bin.</param>
    /// <param name="wrongCut">The wrong cut for which the board is stopped; null where it is finished by itself.</param>
    /// <returns>The pieces in the bin, or why nothing was done.</returns>
    public async Task<(List<StoredPiece> Binned, Outcome<BenchView>? Refusal)> EnterAsync(
        BenchPlace at,
        IEnumerable<KeptLeftover> kept,
        Guid? wrongCut
    )
    {
        var (stock, binned) = (plan.StockOf(at.Layout), new List<StoredPiece>());
        var finish = Add(at, wrongCut);
        var (cut, refusal) = stock.Offcut ? await CutFromHandAsync(stock, finish) : await CutNewAsync(stock, finish);
        if (cut is null)
            return (binned, refusal);
        foreach (var one in kept)
            binned.Add(
                await Ledger.EnterAsync(
                    db,
                    StockPlace.Bin,
                    stock.Material,
                    StockEntryKind.Binned,
                    Note(one, Left(cut, one), finish),
                    clock,
                    cancel,
                    one.Tag
                )
            );
        await db.SaveChangesAsync(cancel);
        await LeftOuts.WriteAsync(db, plan.Record, finish, cancel);
        return (binned, null);
    }

    private StoredFinish Add(BenchPlace at, Guid? wrongCut) =>
        db
            .Finishes.Add(
                new StoredFinish
                {
                    Id = Guid.CreateVersion7(),
                    PlanId = plan.Record.Stored.Id,
                    Layout = at.Layout,
                    Copy = at.Copy,
                    Standing = true,
                    WhenUtc = clock.GetUtcNow().UtcDateTime,
                    Device = device,
                    WrongCutId = wrongCut,
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
    private static StockCondition Left(CutPiece cut, KeptLeftover left)
    {
        var known = left.Area is { Area: var area, IsTrimmed: var isTrimmed }
            ? (cut.Condition with { Untrimmed = isTrimmed ? StockEdges.None : cut.Condition.Untrimmed })
                .Of(area, cut.Length, cut.Width)
                .Resized(area.Dx, area.Dy, left.Length, left.Width)
            : StockCondition.Sound;
        return left.Bad is { } bad && !known.BadPlaces.Contains(bad)
            ? known with
            {
                BadPlaces = BadPlaces.Of([.. known.BadPlaces, bad]),
            }
            : known;
    }

    private LedgerNote Cut(Length length, Length width, StockCondition condition, string note, StoredFinish finish) =>
        new(length, width, condition, note, $"cut for {plan.Record.Stored.Name}", device, finish.Id);

    private LedgerNote Note(KeptLeftover left, StockCondition condition, StoredFinish finish) =>
        new(left.Length, left.Width, condition, "", left.Reason ?? $"left over: {plan.Record.Stored.Name}", device, finish.Id);

    private sealed record CutPiece(Length Length, Length Width, StockCondition Condition);
}
