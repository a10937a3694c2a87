using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Bench;

internal sealed class BenchService(ShopWork work, BenchCommands commands, TimeProvider clock) : IBenchService
{
    public Task<BenchView?> GetAsync(Guid planId, CancellationToken cancel = default) =>
        work.ReadAsync(db => BenchReading.FindAsync(db, planId, cancel), cancel);

    public Task<Outcome<BenchView>> SetCutAsync(
        Guid planId,
        int layout,
        int copy,
        int cut,
        bool made,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.RunAsync(
            command,
            $"cut {planId} {layout} {copy} {cut} {made}",
            planId,
            async (db, plan) =>
                Refuse(plan, layout, copy, device) ?? await SetCutAsync(db, plan, (layout, copy, cut), made, device, cancel),
            cancel
        );

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

    private async Task<Outcome<BenchView>?> SetCutAsync(
        ShopContext db,
        BenchPlan plan,
        (int Layout, int Copy, int Cut) at,
        bool made,
        string device,
        CancellationToken cancel
    )
    {
        if (plan.Record.Plan.Layouts[at.Layout].Cuts.All(cut => cut.N != at.Cut))
            return Outcome.Faulty<BenchView>(new Fault("cut", $"{at.Cut}", "is no cut of this layout"));
        if (await plan.FinishAsync(db, at.Layout, at.Copy, cancel) is { } finish && !made)
            return Outcome.Conflict<BenchView>(Fault.Of("copy", finish.Device, "has finished this one: reopen it first"));
        await plan.TickAsync(db, at, made, device, clock.GetUtcNow().UtcDateTime, cancel);
        return null;
    }

    private static string Asked(MeasuredLeftover left) => $"{left.Index} {left.Length} × {left.Width} {left.Keep}";

    private static Outcome<BenchView>? Refuse(BenchPlan plan, int layout, int copy, string device) =>
        TextRules.Line("device", device, TextRules.NameCharacters) is { } fault
            ? Outcome.Faulty<BenchView>(fault)
            : plan.Refuse(layout, copy);
}
