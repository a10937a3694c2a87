using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Bench;

internal sealed class BenchService(
    ShopWork work,
    BenchReading reading,
    BenchCommands commands,
    CutTicks ticks,
    TimeProvider clock
) : IBenchService
{
    public Task<BenchView?> GetAsync(Guid planId, CancellationToken cancel = default) =>
        work.ReadAsync(db => reading.FindAsync(db, planId, cancel), cancel);

    public Task<BenchPlace?> FindAsync(Guid planId, int number, CancellationToken cancel = default) =>
        work.ReadAsync(db => BenchReading.FindPlaceAsync(db, planId, number, cancel), cancel);

    public Task<Outcome<Done>> SetCutAsync(
        Guid planId,
        int layout,
        int copy,
        int cut,
        bool made,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) => ticks.RunAsync(new CutTick(planId, layout, copy, cut, made, device), command, cancel);

    public async Task<Outcome<Done>> NoteCutAsync(
        Guid planId,
        int number,
        int cut,
        bool made,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        await FindAsync(planId, number, cancel) is { } at
            ? await ticks.RunAsync(new CutTick(planId, at.Layout, at.Copy, cut, made, device) { IsFact = true }, command, cancel)
            : Outcome.Missing<Done>("board or sheet");

    public Task<Outcome<BenchView>> FinishAsync(
        Guid planId,
        FinishedStock finished,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.RunAsync(
            command,
            $"finish {planId} {finished.Layout} {finished.Copy} {finished.AllCutsMade} "
                + $"{string.Join(" / ", finished.Leftovers.Select(Asked))}",
            planId,
            async (db, plan) =>
                Refuse(plan, finished.Layout, finished.Copy, device)
                ?? await new Finishing(db, plan, device, clock, cancel).FinishAsync(finished),
            cancel
        );

    public Task<Outcome<BenchView>> ReopenAsync(
        Guid planId,
        int layout,
        int copy,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.RunAsync(
            command,
            $"reopen {planId} {layout} {copy}",
            planId,
            async (db, plan) =>
                Refuse(plan, layout, copy, device)
                ?? await new Reopening(db, plan, device, clock, cancel).ReopenAsync(layout, copy),
            cancel
        );

    private static string Asked(MeasuredLeftover left) => $"{left.Index} {left.Length} × {left.Width} {left.Keep}{left.Bad}";

    private static Outcome<BenchView>? Refuse(BenchPlan plan, int layout, int copy, string device) =>
        (BenchRules.RefuseDevice(device) ?? plan.Refuse(layout, copy)) is { } fault ? Outcome.Faulty<BenchView>(fault) : null;
}
