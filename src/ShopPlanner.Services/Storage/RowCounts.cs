using System.Data.Common;
using System.Globalization;
using Microsoft.Data.Sqlite;

namespace ShopPlanner.Services.Storage;

/// <summary>How many rows each table has, to tell whether a copy holds what it was made from.</summary>
internal static class RowCounts
{
    // Those that a database keeps for itself are none of the shop's, and two kinds of database differ in them.
    private const string InFile = """
        SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE '\_\_EF%' ESCAPE '\'
        ORDER BY name
        """;

    private const string OnServer = """
        SELECT tablename FROM pg_tables WHERE schemaname = 'public' AND tablename NOT LIKE '\_\_EF%' ORDER BY tablename
        """;

    /// <summary>Counts all tables.</summary>
    public static SortedDictionary<string, long> Of(DbConnection connection)
    {
        var counts = new SortedDictionary<string, long>(StringComparer.Ordinal);
        foreach (var table in Names(connection))
            counts[table] = Count(connection, table);
        return counts;
    }

    /// <summary>Counts one table; zero where there is none of that name.</summary>
    public static long Of(DbConnection connection, string table) =>
        Names(connection).Contains(table, StringComparer.Ordinal) ? Count(connection, table) : 0;

    /// <summary>Says which table differs; null where none does.</summary>
    public static string? Difference(SortedDictionary<string, long> made, SortedDictionary<string, long> from)
    {
        foreach (var table in made.Keys.Union(from.Keys, StringComparer.Ordinal))
            if (made.GetValueOrDefault(table, -1) != from.GetValueOrDefault(table, -1))
                return $"{table} has {made.GetValueOrDefault(table)} rows instead of {from.GetValueOrDefault(table)}";
        return null;
    }

    private static List<string> Names(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = connection is SqliteConnection ? InFile : OnServer;
        using var reader = command.ExecuteReader();
        var names = new List<string>();
        while (reader.Read())
            names.Add(reader.GetString(0));
        return names;
    }

    private static long Count(DbConnection connection, string table) =>
        long.Parse(SqliteFacts.Ask(connection, $"SELECT COUNT(*) FROM \"{table}\""), CultureInfo.InvariantCulture);
}
