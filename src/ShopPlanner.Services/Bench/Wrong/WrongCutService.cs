using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Bench.Wrong;

internal sealed class WrongCutService(
    ShopWork work,
    ShopCommands commands,
    BenchReading reading,
    RestDrafting drafting,
    RestPlanning planning,
    WrongCutViews views,
    PlanWithdrawal withdrawal,
    ReadPlans plans,
    TimeProvider clock
) : IWrongCutService
{
    public Task<WrongCutStart?> OfCutAsync(Guid plan, int number, int cut, CancellationToken cancel = default) =>
        work.ReadAsync(
            async db =>
                await reading.FindAsync(db, plan, cancel) is { } view
                    ? await RestDrafting.StartAsync(db, view, number, cut, cancel)
                    : null,
            cancel
        );

    public Task<Outcome<RestProposal>> ProposeAsync(WrongCut wrong, CancellationToken cancel = default) =>
        planning.ProposeAsync(wrong, cancel);

    public Task<Outcome<WrongCutView>> AcceptAsync(
        WrongCut wrong,
        string proposal,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            command,
            CommandTexts.Asked("plan the rest", wrong, proposal),
            async db =>
            {
                var draft = await planning.AcceptAsync(db, wrong, proposal, device, cancel);
                return draft.Ok
                    ? (await views.FindAsync(db, draft.Value.Wrong.Id, cancel))!
                    : new Outcome<WrongCutView>(draft.Kind, null, draft.Faults);
            },
            cancel
        );

    public Task<Outcome<WrongCutView>> NoteAsync(
        WrongCut wrong,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) => RunAsync(command, CommandTexts.Asked("wrong cut", wrong), db => NoteAsync(db, wrong, device, cancel), cancel);

    public Task<Outcome<WrongCutView>> UndoAsync(Guid id, string device, CommandId command, CancellationToken cancel = default) =>
        RunAsync(command, $"undo wrong cut {id}", db => UndoAsync(db, id, device, cancel), cancel);

    public Task<WrongCutView?> FindAsync(Guid id, CancellationToken cancel = default) =>
        work.ReadAsync(db => views.FindAsync(db, id, cancel), cancel);

    public Task<IReadOnlyList<WrongCutView>> ListAsync(Guid plan, CancellationToken cancel = default) =>
        work.ReadAsync(db => views.ListAsync(db, plan, cancel), cancel);

    private async Task<Outcome<WrongCutView>> NoteAsync(ShopContext db, WrongCut wrong, string device, CancellationToken cancel)
    {
        var (plan, read, refusal) = await drafting.ReadAsync(db, wrong, device, cancel);
        if (plan is null || read is null)
            return new Outcome<WrongCutView>(refusal!.Kind, null, refusal.Faults);
        if (read.Pieces.Count == 0)
            return Outcome.Faulty<WrongCutView>(
                new Fault("pieces", "", "are missing: check each piece that can't be used, or plan the rest again")
            );
        var keeping = new WrongCutKeeping(db, plan, device, clock, cancel);
        var stored = await keeping.AddAsync(read);
        await keeping.BinAsync(stored, read);
        await plan.SettleStateAsync(db, cancel);
        await db.SaveChangesAsync(cancel);
        return (await views.FindAsync(db, stored.Id, cancel))!;
    }

    private async Task<Outcome<WrongCutView>> UndoAsync(ShopContext db, Guid id, string device, CancellationToken cancel)
    {
        if (
            await db.WrongCuts.FindAsync([id], cancel) is not { } wrong
            || await BenchPlan.LoadAsync(db, plans, wrong.PlanId, cancel) is not { } plan
        )
            return Outcome.Missing<WrongCutView>("wrong cut");
        if (BenchRules.RefuseDevice(device) is { } fault)
            return Outcome.Faulty<WrongCutView>(fault);
        return await new WrongCutUndo(db, withdrawal, plan, device, clock, cancel).UndoAsync(wrong)
            ?? (await views.FindAsync(db, id, cancel))!;
    }

    private Task<Outcome<WrongCutView>> RunAsync(
        CommandId command,
        string asked,
        Func<ShopContext, Task<Outcome<WrongCutView>>> make,
        CancellationToken cancel
    ) =>
        commands.RunAsync(
            new Making<WrongCutView>(command, asked)
            {
                Make = make,
                Made = view => CommandTexts.Text(view.Id),
                Find = (db, made) => views.FindAsync(db, Guid.Parse(made), cancel),
                What = "wrong cut",
            },
            cancel
        );
}
