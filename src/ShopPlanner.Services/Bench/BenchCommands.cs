using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>Does each command once, whatever the network made of its sending.</summary>
internal sealed class BenchCommands(ShopWork work, TimeProvider clock)
{
    /// <summary>Runs a command in one transaction with the note that it was done.</summary>
    /// <param name="id">Made by the device.</param>
    /// <param name="asked">What is asked, in full.</param>
    /// <param name="planId">The plan it is about.</param>
    /// <param name="change">Answers null when it was done, else the outcome that refuses it.</param>
    /// <param name="cancel">Stops it before it is done.</param>
    public Task<Outcome<BenchView>> RunAsync(
        Guid id,
        string asked,
        Guid planId,
        Func<ShopContext, BenchPlan, Task<Outcome<BenchView>?>> change,
        CancellationToken cancel
    ) =>
        work.WriteAsync(
            async db =>
            {
                if (id == Guid.Empty)
                    return Outcome.Faulty<BenchView>(new Fault("commandId", "", "is empty: a command needs an id"));
                var known = await db.Commands.FindAsync([id], cancel);
                if (known is not null && known.Asked != asked)
                    return Outcome.Faulty<BenchView>(new Fault("commandId", id.ToString(), "was used for another command"));
                if (await BenchPlan.LoadAsync(db, planId, cancel) is not { } plan)
                    return Outcome.Missing<BenchView>("plan");
                if (known is null)
                {
                    if (await change(db, plan) is { } refusal)
                        return refusal;
                    db.Commands.Add(
                        new StoredCommand
                        {
                            Id = id,
                            Asked = asked,
                            WhenUtc = clock.GetUtcNow().UtcDateTime,
                        }
                    );
                    await db.SaveChangesAsync(cancel);
                    await plan.SettleStateAsync(db, cancel);
                    await db.SaveChangesAsync(cancel);
                }

                return (await BenchReading.FindAsync(db, planId, cancel))!;
            },
            cancel
        );
}
