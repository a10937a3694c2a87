using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Postgres;

namespace ShopPlanner.Services.Backups;

internal sealed class ConditionService(
    DataFolder folder,
    FreeSpace space,
    IBackupService backups,
    ShopWork work,
    PageCheck check,
    ShopContextFactory contexts,
    ILogger<ConditionService> log
) : IConditionService
{
    private const double Usual = 0.5,
        Slow = 0.99;

    public async Task<bool> IsReadableAsync(CancellationToken cancel = default)
    {
        try
        {
            return await work.ReadAsync(db => db.Facts.AnyAsync(cancel), cancel);
        }
        catch (Exception problem) when (problem is DbException or InvalidOperationException { InnerException: DbException })
        {
            log.LogError(problem, "The shop cannot be read");
            return false;
        }
    }

    public ShopCondition Get()
    {
        var copies = backups.List();
        var (database, bytes) = Database();
        return new(
            Migrator.ProgramVersion,
            database,
            folder.Root,
            bytes,
            space.Of(folder.Root),
            check.DoneUtc,
            copies is [var newest, ..] ? newest.MadeUtc : null,
            copies.Count,
            backups.Second.Folder
        )
        {
            UsualChange = work.Times.Within(Usual),
            SlowChange = work.Times.Within(Slow),
        };
    }

    private (string Kind, long Bytes) Database()
    {
        if (contexts is not PostgresContextFactory)
            return ("SQLite " + SqliteFacts.LibraryVersion(), Size(folder.Database) + Size(folder.Database + "-wal"));
        using var db = contexts.CreateDbContext();
        db.Database.OpenConnection();
        var connection = db.Database.GetDbConnection();
        var bytes = SqliteFacts.Ask(connection, "SELECT pg_database_size(current_database())");
        return ($"PostgreSQL {connection.ServerVersion}", long.Parse(bytes, CultureInfo.InvariantCulture));
    }

    private static long Size(string file) => new FileInfo(file) is { Exists: true } there ? there.Length : 0;
}
