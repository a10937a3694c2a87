using System.Data;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace ShopPlanner.Services.Storage;

/// <summary>Writes whole, checked copies of the database into the backups folder.</summary>
internal sealed class BackupFile(DataFolder folder, TimeProvider clock, StorageSteps steps)
{
    private const string Prefix = "shop-",
        StampFormat = "yyyy-MM-dd'T'HHmmss.fff'Z'";

    private const int StampLength = 22;

    private static readonly TimeSpan Peek = TimeSpan.FromMilliseconds(2);

    /// <summary>Copies what the context is open on. The copy has its name only after it was opened again, checked, counted
    /// against what it was made from, and is on the disk.</summary>
    /// <param name="db">Not in a transaction.</param>
    /// <param name="why">Part of the file's name.</param>
    /// <param name="cancel">Stops it; nothing stays behind.</param>
    /// <param name="pause">Holds the writers while the copy begins; null where nobody writes.</param>
    /// <returns>The file; its name tells the time in UTC, so that names in order are copies in order.</returns>
    /// <exception cref="IOException">The copy is not whole.</exception>
    public async Task<string> WriteAsync(
        ShopContext db,
        string why,
        CancellationToken cancel,
        Func<CancellationToken, Task<IDisposable>>? pause = null
    )
    {
        var part = Part();
        try
        {
            await CopyAsync(db, part, pause, cancel);
            return Name(part, why);
        }
        finally
        {
            File.Delete(part);
        }
    }

    /// <summary>Copies as <see cref="WriteAsync"/> does, unless the newest copy of the same reason holds the very same: a start
    /// that fails again and again makes one copy.</summary>
    public async Task<string> WriteOnceAsync(ShopContext db, string why, CancellationToken cancel)
    {
        var part = Part();
        try
        {
            await CopyAsync(db, part, null, cancel);
            return Newest(why) is { } last && IsSame(part, last) ? last : Name(part, why);
        }
        finally
        {
            File.Delete(part);
        }
    }

    /// <summary>When a copy was made, by its name; null for a file of another name.</summary>
    public static DateTimeOffset? MadeAt(string file)
    {
        var name = Path.GetFileName(file);
        var stamp = name.Length > Prefix.Length + StampLength ? name.Substring(Prefix.Length, StampLength) : "";
        return DateTimeOffset.TryParseExact(
            stamp,
            StampFormat,
            CultureInfo.InvariantCulture,
            DateTimeStyles.AssumeUniversal,
            out var at
        )
            ? at
            : null;
    }

    /// <summary>Why a copy was made, by its name; null for a file of another name.</summary>
    public static string? Why(string file) =>
        MadeAt(file) is null ? null : Path.GetFileNameWithoutExtension(file)[(Prefix.Length + StampLength + 1)..];

    private string Part() => Path.Combine(folder.Backups, $"{Guid.CreateVersion7():N}.part");

    private async Task CopyAsync(
        ShopContext db,
        string part,
        Func<CancellationToken, Task<IDisposable>>? pause,
        CancellationToken cancel
    )
    {
        steps.Reach("copy");
        var rows = db.Database.IsSqlite()
            ? await FromFileAsync(db, part, pause, cancel)
            : await FromServerAsync(db, part, cancel);
        steps.Reach("check the copy");
        if (CopyFile.Fault(part) is { } fault)
            throw new IOException($"The copy {fault}. It was deleted.");
        using (var made = CopyFile.Open(part))
            if (RowCounts.Difference(RowCounts.Of(made), rows) is { } differs)
                throw new CopyDiffersException(differs);
        steps.Reach("flush the copy");
        Disk.Flush(part);
    }

    // The server shows one state for as long as the transaction lasts, whatever is written meanwhile.
    private static async Task<SortedDictionary<string, long>> FromServerAsync(
        ShopContext db,
        string part,
        CancellationToken cancel
    )
    {
        await using var state = await db.Database.BeginTransactionAsync(IsolationLevel.RepeatableRead, cancel);
        await FileCopy.WriteAsync(db, part, cancel);
        return RowCounts.Of(db.Database.GetDbConnection());
    }

    private static async Task<SortedDictionary<string, long>> FromFileAsync(
        ShopContext db,
        string part,
        Func<CancellationToken, Task<IDisposable>>? pause,
        CancellationToken cancel
    )
    {
        await using var source = new SqliteConnection(db.Database.GetConnectionString());
        await source.OpenAsync(cancel);
        return await FromOneStateAsync(db, source, part, pause, cancel);
    }

    // The rows are counted in the same state that is copied: both begin to read while nobody writes. Once the copy's file grows
    // its state is settled, and the writers go on.
    private static async Task<SortedDictionary<string, long>> FromOneStateAsync(
        ShopContext db,
        SqliteConnection source,
        string part,
        Func<CancellationToken, Task<IDisposable>>? pause,
        CancellationToken cancel
    )
    {
        var held = pause is null ? null : await pause(cancel);
        try
        {
            await using var state = source.BeginTransaction(deferred: true);
            SqliteFacts.Ask(source, "SELECT COUNT(*) FROM sqlite_master");
            var copying = Task.Run(() => db.Database.ExecuteSqlAsync($"VACUUM INTO {part}", cancel), cancel);
            while (held is not null && !copying.IsCompleted && !HasBegun(part))
                await Task.WhenAny(copying, Task.Delay(Peek, CancellationToken.None));
            held?.Dispose();
            held = null;
            await copying;
            return RowCounts.Of(source);
        }
        finally
        {
            held?.Dispose();
        }
    }

    private static bool HasBegun(string part) => new FileInfo(part) is { Exists: true, Length: > 0 };

    private string Name(string part, string why)
    {
        var at = clock.GetUtcNow().UtcDateTime;
        while (File.Exists(Final(at, why)))
            at = at.AddMilliseconds(1);
        var final = Final(at, why);
        steps.Reach("name the copy");
        File.Move(part, final);
        steps.Reach("the copy is made");
        return final;
    }

    private string Final(DateTime at, string why) =>
        Path.Combine(folder.Backups, $"{Prefix}{at.ToString(StampFormat, CultureInfo.InvariantCulture)}-{why}.db");

    private string? Newest(string why) =>
        Directory.EnumerateFiles(folder.Backups, $"{Prefix}*-{why}.db").Max(StringComparer.Ordinal);

    private static bool IsSame(string one, string other) =>
        new FileInfo(one).Length == new FileInfo(other).Length && Disk.Hash(one) == Disk.Hash(other);
}
