using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Postgres;

namespace ShopPlanner.Services.Opening;

/// <summary>Opens a shop that a PostgreSQL server keeps. Its data folder holds everything else: keys, backups, who may open
/// it.</summary>
internal sealed class ServerShop(
    PostgresContextFactory contexts,
    DataFolder folder,
    BackupFile backups,
    ShopHealth health,
    ILogger log
)
{
    /// <summary>Takes the database for this program, brings it up to date and restores what was asked for.</summary>
    /// <param name="fill">Fills what a shop starts with.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>Lets the database go when disposed, and whether this start made the shop.</returns>
    /// <exception cref="ShopStartException">It cannot be opened.</exception>
    public async Task<(ServerLease Lease, bool IsNew)> OpenAsync(
        Func<ShopContextFactory, CancellationToken, Task> fill,
        CancellationToken cancel
    )
    {
        ServerLease? lease = null;
        try
        {
            lease = await ServerLease.TakeAsync(contexts, Tell, cancel);
            folder.RemoveUnfinished();
            var isNew = await IsEmptyAsync(cancel);
            await new Migrator(contexts, folder, backups).UpgradeAsync(cancel);
            await RestoreAsAskedAsync(cancel);
            await fill(contexts, cancel);
            return (lease, isNew);
        }
        catch (Exception problem)
        {
            lease?.Dispose();
            contexts.Release();
            if (problem is DbException or DbUpdateException)
                throw new ShopStartException(
                    $"The database {contexts.Name} cannot be used: {Cause(problem)}. See that the server runs and that the name, "
                        + "the user and the password after --database are right.",
                    problem
                );
            throw;
        }
    }

    /// <summary>Puts the rows of a backup in the place of the server's, all or none.</summary>
    /// <param name="backup">A database file that was found whole; it is not changed.</param>
    /// <param name="cancel">Stops it; everything is as it was then.</param>
    public async Task TakeAsync(string backup, CancellationToken cancel)
    {
        var part = Path.Combine(folder.Root, $"shop.db.restored-{Guid.CreateVersion7():N}");
        var file = new SqliteContextFactory(part);
        try
        {
            File.Copy(backup, part);
            await using var from = file.CreateDbContext();
            await from.Database.MigrateAsync(cancel);
            await ShopDatabase.BringUpAsync(from, NullLogger.Instance, cancel);
            await using var to = contexts.CreateDbContext();
            await using var transaction = await contexts.BeginWriteAsync(to, cancel);
            await RowCopy.AllAsync(from, to, cancel);
            await transaction.CommitAsync(cancel);
        }
        finally
        {
            file.Release();
            File.Delete(part);
        }
    }

    private void Tell(bool isTaken)
    {
        if (isTaken)
            health.Tell(
                HealthTopic.Server,
                $"Another Shop Planner took the database {contexts.Name} while its server was away. Stop one of the two: "
                    + "pages of this one may show what was there before."
            );
        else
            health.Clear(HealthTopic.Server);
    }

    private async Task<bool> IsEmptyAsync(CancellationToken cancel)
    {
        await using var db = contexts.CreateDbContext();
        return !(await db.Database.GetAppliedMigrationsAsync(cancel)).Any();
    }

    // The wish is gone before it is tried: one that fails is not tried at every start.
    private async Task RestoreAsAskedAsync(CancellationToken cancel)
    {
        if (!File.Exists(folder.RestoreRequest))
            return;
        var copy = (await File.ReadAllTextAsync(folder.RestoreRequest, cancel)).Trim();
        File.Delete(folder.RestoreRequest);
        try
        {
            if (CopyFile.Fault(copy) is { } fault)
                throw new IOException($"it {fault}");
            await using var db = contexts.CreateDbContext();
            var kept = await backups.WriteAsync(db, ShopRestore.Why, cancel);
            await TakeAsync(copy, cancel);
            health.Tell(
                HealthTopic.Restore,
                $"The backup {Path.GetFileName(copy)} was restored. What was there before is kept in {kept}."
            );
        }
        catch (Exception problem) when (problem is IOException or DbException or DbUpdateException)
        {
            log.LogError(problem, "The restore that was asked for in Setup failed; the shop is as it was");
            health.Tell(HealthTopic.Restore, $"{copy} was not restored: {Cause(problem)}. The shop is as it was before.");
        }
    }

    private static string Cause(Exception problem) => problem.GetBaseException().Message.ReplaceLineEndings(" ").TrimEnd('.');
}
