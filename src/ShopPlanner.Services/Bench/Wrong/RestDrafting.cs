using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>What is left to plan after a wrong cut, with the shop as it is once the boards are stopped.</summary>
/// <param name="Plan">The plan it happened in.</param>
/// <param name="View">As it stood at the bench before.</param>
/// <param name="Read">What was said.</param>
/// <param name="Wrong">As it is stored, in a transaction that may be given up.</param>
/// <param name="Stopped">What went into the bin.</param>
/// <param name="Draft">What is to be planned.</param>
/// <param name="Before">What the plan cost before, paid and left to pay.</param>
/// <param name="Paid">What is paid once the boards are stopped.</param>
internal sealed record RestDraft(
    BenchPlan Plan,
    BenchView View,
    ReadWrongCut Read,
    StoredWrongCut Wrong,
    ImmutableArray<StoppedPiece> Stopped,
    PlanDraft Draft,
    Money Before,
    Money Paid
);

/// <summary>Makes what a wrong cut leaves to plan, in a transaction that others see to: it is kept where the rest is accepted,
/// and given up where it was only looked at.</summary>
internal sealed class RestDrafting(ReadPlans plans, BenchReading reading, TimeProvider clock)
{
    /// <summary>Loads the plan and reads what was said; the outcome refuses it.</summary>
    public async Task<(BenchPlan? Plan, ReadWrongCut? Read, Outcome<RestDraft>? Refusal)> ReadAsync(
        ShopContext db,
        WrongCut wrong,
        string device,
        CancellationToken cancel
    )
    {
        if (
            await BenchPlan.LoadAsync(db, plans, wrong.Plan, cancel) is not { } plan
            || await reading.FindAsync(db, wrong.Plan, cancel) is not { } view
            || await StartAsync(db, view, wrong.Number, wrong.Cut, cancel) is not { } start
        )
            return (null, null, Outcome.Missing<RestDraft>("cut"));
        if ((BenchRules.RefuseDevice(device) ?? plan.Refuse(start.Stock.Layout, start.Stock.Copy)) is { } refused)
            return (null, null, Outcome.Faulty<RestDraft>(refused));
        var stock = plan.StockOf(start.Stock.Layout);
        var material = await db.Materials.SingleAsync(one => one.Id == stock.Material, cancel);
        var faults = new List<Fault>();
        var read = new WrongCutReader(plan, start, material, faults).Read(wrong);
        return faults.Count > 0 ? (null, null, Outcome.Faulty<RestDraft>(faults)) : (plan, read, null);
    }

    /// <summary>Returns what can be said about a cut; null where there is no such board or cut.</summary>
    public static async Task<WrongCutStart?> StartAsync(
        ShopContext db,
        BenchView view,
        int number,
        int cut,
        CancellationToken cancel
    )
    {
        if (view.Stocks.FirstOrDefault(one => one.Number == number) is not { } stock)
            return null;
        var plan = view.Plan.Summary.Id;
        var wrong = await (
            from piece in db.WrongPieces
            join own in db.WrongCuts on piece.WrongCutId equals own.Id
            where own.Standing && own.PlanId == plan && own.Layout == stock.Layout && own.Copy == stock.Copy
            select piece.Piece
        ).ToHashSetAsync(cancel);
        return WrongCutReader.Start(view, number, cut, wrong);
    }

    /// <summary>Writes the wrong cut down, stops the boards that are begun, and makes the draft of the rest.</summary>
    public async Task<Outcome<RestDraft>> DraftAsync(ShopContext db, WrongCut wrong, string device, CancellationToken cancel)
    {
        var (plan, read, refusal) = await ReadAsync(db, wrong, device, cancel);
        if (plan is null || read is null)
            return refusal!;
        var view = read.Start.View;
        var before = await RestMoney.OfAsync(db, plan.Record, cancel);
        var keeping = new WrongCutKeeping(db, plan, device, clock, cancel);
        var stored = await keeping.AddAsync(read);
        var stopping = new BoardStopping(db, plan, view, device, clock, cancel);
        var (stopped, refused) = await stopping.StopAsync(stored, read);
        if (refused is not null)
            return new Outcome<RestDraft>(refused.Kind, null, refused.Faults);
        foreach (var (piece, left) in read.Pieces)
            if (left is not null && stopped.Find(one => one.Left == left) is { } binned)
                await keeping.NoteLeftAsync(stored, piece, binned.Piece.Id);
        if (read.Start.Stock.Finished)
            await keeping.BinAsync(stored, read);
        await db.SaveChangesAsync(cancel);
        await plan.SettleStateAsync(db, cancel);
        await db.SaveChangesAsync(cancel);
        await BoughtPromises.SettleAsync(db, plan.Record, cancel);
        var draft = await RequestAsync(db, plan, cancel);
        if (!draft.Ok)
            return new Outcome<RestDraft>(draft.Kind, null, draft.Faults);
        var after = await RestMoney.OfAsync(db, plan.Record, cancel);
        return new RestDraft(plan, view, read, stored, [.. stopped], draft.Value, before.Paid + before.Left, after.Paid);
    }

    // The rows that the plan was to cut, and no others. A plan that is all cut gives nothing up; the rest is planned beside it.
    private async Task<Outcome<PlanDraft>> RequestAsync(ShopContext db, BenchPlan plan, CancellationToken cancel)
    {
        var record = plan.Record;
        var order = record.Draft.Order with
        {
            Parts = [.. record.Draft.Basis.Rows.Values.Distinct()],
            UseRack = true,
            UseBin = true,
            CutAgain = false,
            Replaces = record.Stored.State == PlanState.Cut ? [] : [record.Stored.Id],
        };
        return RequestBuilder.Build(order, await Snapshot.ForOrderAsync(db, plans, order, cancel));
    }
}
