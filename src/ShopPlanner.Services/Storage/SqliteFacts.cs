using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace ShopPlanner.Services.Storage;

/// <summary>Facts asked of SQLite itself.</summary>
internal static class SqliteFacts
{
    /// <summary>Older ones may lose committed pages when two connections write and checkpoint at once (sqlite.org/wal.html,
    /// section 11 "The WAL-Reset Bug"; mended in 3.51.3).</summary>
    public static readonly Version Least = new(3, 51, 3);

    /// <summary>Marks a file as a shop's database: the letters ShPl.</summary>
    public const int ApplicationId = 0x5368506C;

    /// <summary>Refuses a SQLite that is too old.</summary>
    public static void CheckVersion(string version)
    {
        if (Version.Parse(version) < Least)
            throw new ShopStartException(
                $"SQLite {version} may lose saved data: at least {Least} is needed. Install Shop Planner again with "
                    + $"the files it came with."
            );
    }

    public static string LibraryVersion()
    {
        using var connection = new SqliteConnection("Data Source=:memory:");
        connection.Open();
        return Ask(connection, "SELECT sqlite_version()");
    }

    /// <summary>The first value of the first row, as text; empty when there is none.</summary>
    public static string Ask(DbConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return Convert.ToString(command.ExecuteScalar(), System.Globalization.CultureInfo.InvariantCulture) ?? "";
    }
}
