using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Microsoft.Extensions.Logging.Abstractions;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Archives;

/// <summary>
/// A database of its own that an archive's rows are put into first: with the schema that they were written with, then brought up
/// to this program's, as a shop's own database is at the start. What is left in it has passed every check, so that it can be
/// taken over without looking.
/// </summary>
internal sealed class ArchiveStaging : IAsyncDisposable
{
    private readonly ShopContextFactory contexts;

    private ArchiveStaging(string file) => (File, contexts) = (file, new SqliteContextFactory(file));

    /// <summary>The database file.</summary>
    public string File { get; }

    /// <summary>Opens the rows for reading.</summary>
    public SqliteConnection Open()
    {
        var connection = new SqliteConnection(Connect());
        connection.Open();
        return connection;
    }

    /// <summary>Reads the rows as this program's own.</summary>
    public ShopContext Read() => contexts.CreateDbContext();

    /// <summary>Makes one of an archive; null with the faults that refuse it.</summary>
    /// <param name="archive">The archive.</param>
    /// <param name="folder">Where the file grows; what a killed program leaves is swept away at the next start.</param>
    /// <param name="cancel">Stops it.</param>
    public static async Task<(ArchiveStaging? Staging, IReadOnlyList<Fault> Faults)> FillAsync(
        ArchiveText archive,
        DataFolder folder,
        CancellationToken cancel
    )
    {
        var staging = new ArchiveStaging($"{folder.Unfinished}-{Guid.CreateVersion7():N}");
        IReadOnlyList<Fault> faults;
        try
        {
            faults = await staging.TakeAsync(archive, cancel);
        }
        catch
        {
            await staging.DisposeAsync();
            throw;
        }

        if (faults.Count == 0)
            return (staging, []);
        await staging.DisposeAsync();
        return (null, faults);
    }

    public ValueTask DisposeAsync()
    {
        contexts.Release();
        foreach (var ending in new[] { "", "-wal", "-shm" })
            System.IO.File.Delete(File + ending);
        return ValueTask.CompletedTask;
    }

    private async Task<IReadOnlyList<Fault>> TakeAsync(ArchiveText archive, CancellationToken cancel)
    {
        await using var db = contexts.CreateDbContext();
        if (!db.Database.GetMigrations().Contains(archive.Head.Schema))
            return [ArchiveReading.Newer("it", "archive.json: schema", archive.Head.Schema)];
        await db.GetService<IMigrator>().MigrateAsync(archive.Head.Schema, cancel);
        var faults = Insert(db, archive);
        if (faults.Count > 0)
            return faults;
        await db.Database.MigrateAsync(cancel);
        using var connection = Open();
        faults = ArchiveChecks.Values(db, connection);
        if (faults.Count == 0)
            faults = ArchiveChecks.Documents(connection);
        if (faults.Count == 0)
            await ShopDatabase.BringUpAsync(db, NullLogger.Instance, cancel);
        return faults;
    }

    private List<Fault> Insert(ShopContext db, ArchiveText archive)
    {
        using var connection = Open();
        using var transaction = connection.BeginTransaction();
        var faults = new ArchiveRows(connection, transaction).Insert(ArchiveTables.Of(db), archive);
        if (faults.Count == 0)
            faults = ArchiveChecks.References(connection, transaction);
        if (faults.Count == 0)
            transaction.Commit();
        return faults;
    }

    // Rows come in the order of their documents, so references are looked at when all are there.
    private string Connect() =>
        new SqliteConnectionStringBuilder
        {
            DataSource = File,
            Pooling = false,
            ForeignKeys = false,
        }.ToString();
}
