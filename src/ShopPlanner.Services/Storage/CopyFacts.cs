using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace ShopPlanner.Services.Storage;

/// <summary>What a database holds, in the figures that a person knows a shop by.</summary>
/// <param name="Program">The version of the program that wrote it; empty where it does not say.</param>
/// <param name="Migrations">The names of the schema's steps, the last one last.</param>
/// <param name="Projects">Projects, those in the trash with them.</param>
/// <param name="Plans">Cut plans.</param>
/// <param name="Pieces">Pieces of rack and bin.</param>
/// <param name="Entries">Lines of the stock ledger, which only grows.</param>
internal sealed record CopyFacts(
    string Program,
    IReadOnlyList<string> Migrations,
    long Projects,
    long Plans,
    long Pieces,
    long Entries
)
{
    /// <summary>Reads a copy.</summary>
    /// <exception cref="SqliteException">It is damaged, or no shop.</exception>
    public static CopyFacts Of(string copy)
    {
        using var connection = CopyFile.Open(copy);
        return Of(connection);
    }

    /// <summary>Reads an open database.</summary>
    public static CopyFacts Of(DbConnection connection) =>
        new(
            SqliteFacts.Ask(connection, $"SELECT \"Value\" FROM \"Facts\" WHERE \"Name\" = '{Migrator.WrittenBy}'"),
            Steps(connection),
            RowCounts.Of(connection, "Projects"),
            RowCounts.Of(connection, "Plans"),
            RowCounts.Of(connection, "Pieces"),
            RowCounts.Of(connection, "StockLedger")
        );

    /// <summary>Says that this program is too old for it; null where it is not.</summary>
    public string? NewerFault(IEnumerable<string> known) =>
        Migrations.Except(known, StringComparer.Ordinal).FirstOrDefault() is not { } unknown
            ? null
            : $"was written by Shop Planner {(Program.Length > 0 ? Program : "of a later version")} (schema {unknown}); this is "
                + $"{Migrator.ProgramVersion}: install that version to use it";

    private static List<string> Steps(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT \"MigrationId\" FROM \"__EFMigrationsHistory\" ORDER BY \"MigrationId\"";
        using var reader = command.ExecuteReader();
        var steps = new List<string>();
        while (reader.Read())
            steps.Add(reader.GetString(0));
        return steps;
    }
}
