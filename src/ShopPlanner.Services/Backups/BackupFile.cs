using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

/// <summary>Writes a whole, checked copy of the database into the backups folder.</summary>
internal sealed class BackupFile(DataFolder folder, TimeProvider clock)
{
    /// <summary>Copies what the context is open on.</summary>
    /// <param name="db">Not in a transaction.</param>
    /// <param name="why">Part of the file's name.</param>
    /// <param name="cancel">Stops it; nothing stays behind under the final name.</param>
    /// <returns>The file.</returns>
    /// <exception cref="IOException">The copy is not whole.</exception>
    public async Task<string> WriteAsync(ShopContext db, string why, CancellationToken cancel)
    {
        var stamp = clock.GetUtcNow().UtcDateTime.ToString("yyyy-MM-dd'T'HHmmss.fff'Z'", CultureInfo.InvariantCulture);
        var final = Path.Combine(folder.Backups, $"shop-{stamp}-{why}.db");
        var part = Path.Combine(folder.Backups, $"{Guid.CreateVersion7():N}.part");
        await db.Database.ExecuteSqlAsync($"VACUUM INTO {part}", cancel);
        Check(part);
        File.Move(part, final);
        return final;
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
