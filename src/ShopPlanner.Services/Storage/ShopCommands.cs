using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage;

/// <summary>Does each command once, whatever the network made of its sending.</summary>
internal sealed class ShopCommands(ShopWork work, LowDisk disk, TimeProvider clock)
{
    /// <summary>No device sends a command again after so long; older ones are forgotten.</summary>
    private static readonly TimeSpan Remembered = TimeSpan.FromDays(90);

    /// <summary>Makes something in one transaction with the note that it was made. Asked again, finds what was made.</summary>
    public Task<Outcome<T>> RunAsync<T>(Making<T> making, CancellationToken cancel)
        where T : class =>
        work.WriteAsync(
            async db =>
            {
                if (await FindAsync(db, making, cancel) is { } known)
                    return known;
                if (making.NeedsRoom && disk.Refuse<T>() is { } low)
                    return low;
                if (await CommandTurns.IsOvertakenAsync(db, making.Command, making.Subject, clock, cancel))
                    return await making.Find(db, "") is { } later ? later : Outcome.Missing<T>(making.What);
                var outcome = await making.Make(db);
                if (outcome.Ok)
                    db.Commands.Add(Row(making, outcome.Value));
                return outcome;
            },
            making.Written,
            cancel
        );

    /// <summary>Returns the answer to a command that was done before, or the outcome that refuses its id; null where it is to be
    /// done.</summary>
    public static async Task<Outcome<T>?> FindAsync<T>(ShopContext db, Making<T> making, CancellationToken cancel)
        where T : class
    {
        var id = making.Command.Value;
        if (id == Guid.Empty)
            return Outcome.Faulty<T>(new Fault("command", "", "is empty: a command needs an id of its own"));
        if (await db.Commands.FindAsync([id], cancel) is not { } known)
            return null;
        if (known.Asked != making.Asked)
            return Outcome.Faulty<T>(
                new Fault("command", id.ToString(), "was used for another command: load the page again, then ask once more")
            );
        return await making.Find(db, known.Made) is { } found ? found : Outcome.Missing<T>(making.What);
    }

    /// <summary>Forgets commands that no device sends again.</summary>
    public static async Task ForgetOldAsync(ShopContext db, TimeProvider clock, CancellationToken cancel)
    {
        var oldest = (clock.GetUtcNow() - Remembered).UtcDateTime;
        await db.Commands.Where(command => command.WhenUtc < oldest).ExecuteDeleteAsync(cancel);
        await db.Turns.Where(turn => turn.WhenUtc < oldest).ExecuteDeleteAsync(cancel);
    }

    private StoredCommand Row<T>(Making<T> making, T value)
        where T : class =>
        new()
        {
            Id = making.Command.Value,
            Asked = making.Asked,
            Made = making.Made(value),
            WhenUtc = clock.GetUtcNow().UtcDateTime,
        };
}
