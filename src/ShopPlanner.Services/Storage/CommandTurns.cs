using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage;

/// <summary>Remembers what each sender said last about a thing, so that an older command that comes late changes
/// nothing.</summary>
internal static class CommandTurns
{
    /// <summary>Returns whether the sender has said something later about the same thing; otherwise notes that this is the
    /// latest.</summary>
    public static async Task<bool> IsOvertakenAsync(
        ShopContext db,
        CommandId command,
        string? subject,
        TimeProvider clock,
        CancellationToken cancel
    )
    {
        if (subject is null || command.Turn is not { } turn)
            return false;
        var latest = await db.Turns.FindAsync([turn.Sender, subject], cancel);
        if (latest is not null && latest.Number >= turn.Number)
            return true;
        latest ??= db.Turns.Add(new StoredTurn { Sender = turn.Sender, Subject = subject }).Entity;
        (latest.Number, latest.WhenUtc) = (turn.Number, clock.GetUtcNow().UtcDateTime);
        return false;
    }
}
