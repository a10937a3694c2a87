using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Archives;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Postgres;

namespace ShopPlanner.Services.Moving;

/// <summary>What was carried over.</summary>
/// <param name="Hash">The canonical hash of the shop, which is the same in both places.</param>
/// <param name="Rows">Rows of all tables.</param>
public sealed record MoveResult(string Hash, long Rows);

/// <summary>Carries a shop from its data folder to a PostgreSQL server, and back: every row with its id, its version and its
/// time. Where it came from it stays as it was. Keys and the owner's account are not part of it.</summary>
public sealed class ShopMove
{
    private readonly DataFolder folder;
    private readonly PostgresContextFactory server;
    private readonly BackupFile backups;

    /// <param name="dataFolder">The shop's data folder.</param>
    /// <param name="database">The server's database, as Npgsql writes a connection.</param>
    /// <param name="clock">Tells the time.</param>
    /// <exception cref="ShopStartException">The connection cannot be read.</exception>
    public ShopMove(string dataFolder, string database, TimeProvider clock)
    {
        folder = new DataFolder(dataFolder);
        server = new PostgresContextFactory(database);
        backups = new BackupFile(folder, clock, new StorageSteps());
    }

    /// <summary>From the folder to the server, whose database holds no shop yet.</summary>
    /// <exception cref="ShopStartException">It was not carried over, and the server's database is as it was.</exception>
    public Task<MoveResult> ToServerAsync(CancellationToken cancel = default) =>
        RunAsync(
            async () =>
            {
                if (!File.Exists(folder.Database))
                    throw new ShopStartException($"There is no shop in {folder.Root}: name its data folder with --data.");
                DatabaseFile.CheckIsShop(folder);
                var file = new SqliteContextFactory(folder.Database);
                try
                {
                    await new Migrator(file, folder, backups).UpgradeAsync(cancel);
                    await new Migrator(server, folder, backups).UpgradeAsync(cancel);
                    return await CarryAsync(file, cancel);
                }
                finally
                {
                    file.Release();
                }
            },
            cancel
        );

    /// <summary>From the server to a folder that holds no shop yet.</summary>
    /// <exception cref="ShopStartException">It was not carried over, and the folder holds no shop.</exception>
    public Task<MoveResult> ToFolderAsync(CancellationToken cancel = default) =>
        RunAsync(
            async () =>
            {
                if (File.Exists(folder.Database))
                    throw new ShopStartException(
                        $"{folder.Root} holds a shop already, and nothing is written over it: name another folder with --data."
                    );
                await new Migrator(server, folder, backups).UpgradeAsync(cancel);
                return await FetchAsync(cancel);
            },
            cancel
        );

    private async Task<MoveResult> RunAsync(Func<Task<MoveResult>> move, CancellationToken cancel)
    {
        folder.Prepare();
        using var taken = folder.TakeLock();
        try
        {
            using var lease = await ServerLease.TakeAsync(server, _ => { }, cancel);
            folder.RemoveUnfinished();
            return await move();
        }
        catch (Exception problem) when (problem is DbException or DbUpdateException or IOException)
        {
            throw new ShopStartException(
                $"The shop was not moved: {problem.GetBaseException().Message.ReplaceLineEndings(" ").TrimEnd('.')}. "
                    + "Where it was it is unchanged.",
                problem
            );
        }
        finally
        {
            server.Release();
        }
    }

    // What arrived is read back before it counts.
    private async Task<MoveResult> CarryAsync(SqliteContextFactory file, CancellationToken cancel)
    {
        await using var from = file.CreateDbContext();
        await using var state = await file.BeginReadAsync(from, cancel);
        await using var to = server.CreateDbContext();
        await using var transaction = await server.BeginWriteAsync(to, cancel);
        if (await to.Projects.IgnoreQueryFilters().AnyAsync(cancel) || await to.Pieces.AnyAsync(cancel))
            throw new ShopStartException(
                $"The database {server.Name} holds a shop already, and nothing is written over it: name another with --database."
            );
        await RowCopy.AllAsync(from, to, cancel);
        var sent = await ArchiveWriting.HashAsync(from, cancel);
        var (arrived, rows) = await ReadBackAsync(to, folder.Unfinished, cancel);
        File.Delete(folder.Unfinished);
        Compare(sent, arrived);
        await transaction.CommitAsync(cancel);
        return new(sent, rows);
    }

    private async Task<MoveResult> FetchAsync(CancellationToken cancel)
    {
        await using var from = server.CreateDbContext();
        await using var state = await server.BeginReadAsync(from, cancel);
        if (!await from.Projects.IgnoreQueryFilters().AnyAsync(cancel) && !await from.Pieces.AnyAsync(cancel))
            throw new ShopStartException($"The database {server.Name} holds no shop: name the right one with --database.");
        var (hash, rows) = await ReadBackAsync(from, folder.Unfinished, cancel);
        if (CopyFile.Fault(folder.Unfinished) is { } fault)
            throw new IOException($"the new file {fault}");
        Disk.Flush(folder.Unfinished);
        File.Move(folder.Unfinished, folder.Database);
        return new(hash, rows);
    }

    private static async Task<(string Hash, long Rows)> ReadBackAsync(ShopContext db, string file, CancellationToken cancel)
    {
        var rows = RowCounts.Of(db.Database.GetDbConnection());
        var hash = await FileCopy.WriteAsync(
            db,
            file,
            copy =>
                RowCounts.Difference(RowCounts.Of(copy.Database.GetDbConnection()), rows) is { } differs
                    ? throw new IOException(differs)
                    : ArchiveWriting.HashAsync(copy, cancel),
            cancel
        );
        return (hash, rows.Values.Sum());
    }

    private static void Compare(string sent, string arrived)
    {
        if (sent != arrived)
            throw new IOException($"what arrived is not what was sent ({arrived[..12]} instead of {sent[..12]})");
    }
}
