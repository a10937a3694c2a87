using System.Data.Common;
using System.Globalization;

namespace ShopPlanner.Services.Storage;

/// <summary>How many rows each table has, to tell whether a copy holds what it was made from.</summary>
internal static class RowCounts
{
    private const string Tables =
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name";

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
        command.CommandText = Tables;
        using var reader = command.ExecuteReader();
        var names = new List<string>();
        while (reader.Read())
            names.Add(reader.GetString(0));
        return names;
    }

    private static long Count(DbConnection connection, string table) =>
        long.Parse(SqliteFacts.Ask(connection, $"SELECT COUNT(*) FROM \"{table}\""), CultureInfo.InvariantCulture);
}
