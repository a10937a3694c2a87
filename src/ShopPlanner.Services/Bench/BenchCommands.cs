using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Bench;

/// <summary>Runs commands about one plan at the bench.</summary>
internal sealed class BenchCommands(ShopCommands commands, ReadPlans plans, BenchReading reading)
{
    /// <summary>Runs a command once and settles where the plan stands.</summary>
    /// <param name="command">Made by the device.</param>
    /// <param name="asked">What is asked, in full.</param>
    /// <param name="planId">The plan it is about.</param>
    /// <param name="change">Answers null when it was done, else the outcome that refuses it.</param>
    /// <param name="cancel">Stops it before it is done.</param>
    public Task<Outcome<BenchView>> RunAsync(
        CommandId command,
        string asked,
        Guid planId,
        Func<ShopContext, BenchPlan, Task<Outcome<BenchView>?>> change,
        CancellationToken cancel
    ) =>
        commands.RunAsync(
            new Making<BenchView>(command, asked)
            {
                Make = db => ChangeAsync(db, planId, change, cancel),
                Made = _ => CommandTexts.Text(planId),
                Find = (db, _) => reading.FindAsync(db, planId, cancel),
                What = "plan",
            },
            cancel
        );

    private async Task<Outcome<BenchView>> ChangeAsync(
        ShopContext db,
        Guid planId,
        Func<ShopContext, BenchPlan, Task<Outcome<BenchView>?>> change,
        CancellationToken cancel
    )
    {
        if (await BenchPlan.LoadAsync(db, plans, planId, cancel) is not { } plan)
            return Outcome.Missing<BenchView>("plan");
        if (await change(db, plan) is { } refusal)
            return refusal;
        await db.SaveChangesAsync(cancel);
        await plan.SettleStateAsync(db, cancel);
        await db.SaveChangesAsync(cancel);
        await BoughtPromises.SettleAsync(db, plan.Record, cancel);
        return (await reading.FindAsync(db, planId, cancel))!;
    }
}
