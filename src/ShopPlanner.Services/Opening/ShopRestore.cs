using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Opening;

/// <summary>How a restore ended.</summary>
/// <param name="Kept">The file or folder that holds what was there before; null where nothing was there.</param>
public sealed record RestoreResult(string? Kept);

/// <summary>Restores a copy wholly or not at all. The data folder's lock is held.</summary>
internal sealed class ShopRestore(DataFolder folder, ShopContextFactory contexts, BackupFile backups, RestoreSwap swap)
{
    /// <summary>Why the copy of what was there before is made, as it stands in its name.</summary>
    public const string Why = "before-restore";

    /// <summary>Goes back where an earlier restore was cut short.</summary>
    /// <returns>Whether it was.</returns>
    public bool GoBackIfUnfinished()
    {
        if (!swap.IsUnfinished)
            return false;
        swap.GoBack();
        return true;
    }

    /// <summary>Restores.</summary>
    /// <param name="copy">The backup; it stays where it is.</param>
    /// <param name="open">Opens the restored shop, which upgrades an older one.</param>
    /// <param name="cancel">Stops it; everything is as it was then.</param>
    /// <exception cref="ShopStartException">It was not restored, and everything is as it was.</exception>
    public async Task<RestoreResult> RunAsync(string copy, Func<CancellationToken, Task> open, CancellationToken cancel)
    {
        if (Fault(copy) is { } fault)
            throw new ShopStartException($"{copy} {fault}. Nothing was changed.");
        var hadDatabase = File.Exists(folder.Database);
        try
        {
            var kept = await KeepAsync(cancel);
            contexts.Release();
            swap.Put(copy);
            await open(cancel);
            contexts.Release();
            return new RestoreResult(swap.Finish(keepsAside: hadDatabase && kept is null) ?? kept);
        }
        catch (Exception problem)
        {
            contexts.Release();
            swap.GoBack();
            if (problem is OperationCanceledException)
                throw;
            throw new ShopStartException(
                $"{copy} was not restored: {problem.Message.ReplaceLineEndings(" ").TrimEnd('.')}. The shop is as it was before.",
                problem
            );
        }
    }

    /// <summary>Returns why a file cannot be restored; null where it can.</summary>
    public static string? Fault(string copy)
    {
        if (!File.Exists(copy))
            return "isn't there";
        if (CopyFile.Fault(copy) is { } fault)
            return fault;
        // The steps of a file's schema, whatever keeps the shop now.
        using var db = new SqliteContextFactory(copy).CreateDbContext();
        return CopyFacts.Of(copy).NewerFault(db.Database.GetMigrations());
    }

    // A database that is damaged cannot be copied, and is set aside as it is.
    private async Task<string?> KeepAsync(CancellationToken cancel)
    {
        if (LiveFile.Fault(folder.Database) is not null)
            return null;
        await using var db = contexts.CreateDbContext();
        return await backups.WriteAsync(db, Why, cancel);
    }
}
