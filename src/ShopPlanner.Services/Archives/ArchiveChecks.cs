using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Archives;

/// <summary>What an archive's rows must be beyond their columns' types, so that no page stumbles over them later.</summary>
internal static class ArchiveChecks
{
    private static readonly (string Table, string Column)[] DesignColumns =
    [
        ("OwnDesigns", "Document"),
        ("ProjectIdeas", "Document"),
        ("IdeaSteps", "DocumentBefore"),
        ("IdeaSteps", "DocumentAfter"),
    ];

    /// <summary>Rows must not refer to rows that are not there.</summary>
    public static List<Fault> References(SqliteConnection connection, SqliteTransaction transaction)
    {
        using var command = connection.CreateCommand();
        (command.CommandText, command.Transaction) = ("PRAGMA foreign_key_check", transaction);
        using var reader = command.ExecuteReader();
        var faults = new List<Fault>();
        while (reader.Read() && faults.Count < FaultList.MostKept)
        {
            var (from, to) = (new ArchiveTable(reader.GetString(0), null), new ArchiveTable(reader.GetString(2), null));
            var place = ArchiveReading.Place(from.Document, reader.GetInt64(1) - 1);
            faults.Add(new Fault(place, "", $"refers to a row that {to.Document} doesn't have"));
        }

        return faults;
    }

    /// <summary>Ids, times and kinds must be such.</summary>
    public static List<Fault> Values(ShopContext db, SqliteConnection connection)
    {
        var faults = new List<Fault>();
        foreach (var type in ArchiveTables.Kept.Keys)
        {
            var entity = db.Model.FindEntityType(type)!;
            var table = new ArchiveTable(entity.GetTableName()!, null);
            foreach (var property in entity.GetProperties())
            {
                var wanted = Nullable.GetUnderlyingType(property.ClrType) ?? property.ClrType;
                foreach (var (row, value) in Column(connection, table.Table, property.GetColumnName()))
                    if (Refuse(value, wanted) is { } why && faults.Count < FaultList.MostKept)
                        faults.Add(Fault.Of(Place(table, row, property.GetColumnName()), Text(value), why));
            }
        }

        return faults;
    }

    /// <summary>Stored documents must be readable.</summary>
    public static List<Fault> Documents(SqliteConnection connection)
    {
        var faults = new List<Fault>();
        foreach (var (table, column, read) in Readers())
        foreach (var (row, value) in Column(connection, table, column))
            if (Damage(Text(value), read) is { } why && faults.Count < FaultList.MostKept)
                faults.Add(new Fault(Place(new(table, null), row, column), "", why));
        return faults;
    }

    private static IEnumerable<(string Table, string Column, Action<string> Read)> Readers()
    {
        foreach (var (table, column, turn) in DocumentUpgrade.Texts())
            yield return (table, column, text => turn(text));
        foreach (var (table, column) in DesignColumns)
            yield return (table, column, ReadDesign);
        yield return ("StockLedger", "BadPlaces", text => BadPlacesDocument.Read(text));
    }

    private static void ReadDesign(string text)
    {
        var reading = DesignJson.Read(System.Text.Encoding.UTF8.GetBytes(text));
        if (reading.Document is null)
            throw new StoredDocumentException("design", $"is damaged: {reading.Faults[0]}");
    }

    private static string? Damage(string text, Action<string> read)
    {
        try
        {
            read(text);
            return null;
        }
        catch (StoredDocumentException problem)
        {
            return "holds a document that can't be read: " + problem.Message.TrimEnd('.');
        }
    }

    private static string? Refuse(object value, Type wanted)
    {
        if (value is DBNull)
            return null;
        if (wanted == typeof(Guid))
            return Guid.TryParse(Text(value), out _) ? null : "isn't an id";
        if (wanted == typeof(DateTime) || wanted == typeof(DateOnly))
            return DateTime.TryParse(Text(value), CultureInfo.InvariantCulture, out _) ? null : "isn't a time";
        if (wanted == typeof(bool))
            return value is 0L or 1L ? null : "isn't 0 or 1";
        if (wanted == typeof(int))
            return value is >= (long)int.MinValue and <= (long)int.MaxValue ? null : "is out of range";
        return wanted.IsEnum && !IsDefined(wanted, (long)value) ? "isn't a kind that this program knows" : null;
    }

    private static bool IsDefined(Type wanted, long value)
    {
        var all = Enum.GetValuesAsUnderlyingType(wanted)
            .Cast<object>()
            .Select(one => Convert.ToInt64(one, CultureInfo.InvariantCulture));
        return wanted.IsDefined(typeof(FlagsAttribute), false)
            ? (value & ~all.Aggregate((a, b) => a | b)) == 0
            : all.Contains(value);
    }

    private static string Place(ArchiveTable table, long row, string column) =>
        ArchiveReading.Place(table.Document, row - 1, ArchiveTables.Member(column));

    private static string Text(object value) => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "";

    private static IEnumerable<(long Row, object Value)> Column(SqliteConnection connection, string table, string column)
    {
        using var command = connection.CreateCommand();
        command.CommandText = $"SELECT rowid, \"{column}\" FROM \"{table}\" ORDER BY rowid";
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return (reader.GetInt64(0), reader.GetValue(1));
    }
}
