using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace ShopPlanner.Services.Storage;

/// <summary>Writes a whole, checked copy of the database into the backups folder.</summary>
internal sealed class BackupFile(DataFolder folder, TimeProvider clock)
{
    private const string Prefix = "shop-",
        StampFormat = "yyyy-MM-dd'T'HHmmss.fff'Z'";

    private const int StampLength = 22;

    /// <summary>Copies what the context is open on.</summary>
    /// <param name="db">Not in a transaction.</param>
    /// <param name="why">Part of the file's name.</param>
    /// <param name="cancel">Stops it; nothing stays behind under the final name.</param>
    /// <returns>The file; its name tells the time in UTC, so that names in order are copies in order.</returns>
    /// <exception cref="IOException">The copy is not whole.</exception>
    public async Task<string> WriteAsync(ShopContext db, string why, CancellationToken cancel)
    {
        var stamp = clock.GetUtcNow().UtcDateTime.ToString(StampFormat, CultureInfo.InvariantCulture);
        var final = Path.Combine(folder.Backups, $"{Prefix}{stamp}-{why}.db");
        var part = Path.Combine(folder.Backups, $"{Guid.CreateVersion7():N}.part");
        await db.Database.ExecuteSqlAsync($"VACUUM INTO {part}", cancel);
        Check(part);
        File.Move(part, final);
        return final;
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

    private static void Check(string file)
    {
        var connect = new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Pooling = false,
            Mode = SqliteOpenMode.ReadOnly,
        };
        using var connection = new SqliteConnection(connect.ToString());
        connection.Open();
        var found = SqliteFacts.Ask(connection, "PRAGMA integrity_check(1)");
        var dangling = SqliteFacts.Ask(connection, "SELECT COUNT(*) FROM pragma_foreign_key_check");
        if (found != "ok" || dangling != "0")
            throw new IOException($"The copy {file} is not whole: {found}, {dangling} dangling rows.");
    }
}
