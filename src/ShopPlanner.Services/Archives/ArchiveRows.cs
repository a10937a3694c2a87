using System.Text.Json;
using Microsoft.Data.Sqlite;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Archives;

/// <summary>Puts the rows of an archive's documents into tables, each value checked against its column.</summary>
internal sealed class ArchiveRows(SqliteConnection connection, SqliteTransaction transaction)
{
    private const int Constraint = 19;

    private sealed record Column(string Name, string Member, string Type, bool IsNullable);

    /// <summary>Returns what is wrong; nothing where all rows are in.</summary>
    /// <param name="known">Tables of this program; those that the schema has not yet are passed over.</param>
    /// <param name="archive">The documents.</param>
    public List<Fault> Insert(IEnumerable<ArchiveTable> known, ArchiveText archive)
    {
        var tables = known.Where(table => ColumnsOf(table.Table).Count > 0).ToDictionary(table => table.Document);
        foreach (var name in archive.Documents.Keys)
            if (!tables.ContainsKey(name))
                return [Fault.Of("archive", name, "is no document of a shop archive of its schema")];
        var faults = new List<Fault>();
        foreach (var (name, table) in tables)
            if (!archive.Documents.TryGetValue(name, out var text))
                faults.Add(ArchiveReading.Missing(name));
            else
                Insert(table, text, faults);
        return [.. FaultList.Cap(faults)];
    }

    private void Insert(ArchiveTable table, ReadOnlyMemory<byte> text, List<Fault> faults)
    {
        var columns = ColumnsOf(table.Table);
        Run($"DELETE FROM \"{table.Table}\"{ArchiveTables.Where(table.Table)}");
        using var command = connection.CreateCommand();
        command.Transaction = transaction;
        var (names, values) = (
            columns.Select(one => $"\"{one.Name}\""),
            columns.Select((_, at) => FormattableString.Invariant($"$p{at}"))
        );
        command.CommandText = $"INSERT INTO \"{table.Table}\" ({string.Join(',', names)}) VALUES ({string.Join(',', values)})";
        var parameters = values.Select(one => command.Parameters.Add(one, SqliteType.Text)).ToList();
        using var document = JsonText.Parse(JsonText.Bare(text));
        foreach (var (number, row) in document.RootElement.GetProperty("rows").EnumerateArray().Index())
        {
            var before = faults.Count;
            Bind(row, columns, parameters, member => ArchiveReading.Place(table.Document, number, member), faults);
            if (faults.Count == before && !TryRun(command))
                faults.Add(
                    new Fault(ArchiveReading.Place(table.Document, number), "", "has an id or a number that another row has")
                );
            if (faults.Count >= FaultList.MostKept)
                return;
        }
    }

    private static void Bind(
        JsonElement row,
        List<Column> columns,
        List<SqliteParameter> parameters,
        Func<string, string> place,
        List<Fault> faults
    )
    {
        var members = row.EnumerateObject().ToLookup(member => member.Name, member => member.Value);
        foreach (var member in members)
            if (columns.All(column => column.Member != member.Key) || member.Count() > 1)
                faults.Add(new Fault(place(member.Key), "", "isn't a member of this kind of row, or is there twice"));
        foreach (var (column, parameter) in columns.Zip(parameters))
            if (!members.Contains(column.Member))
                faults.Add(new Fault(place(column.Member), "", "is missing"));
            else if (ValueOf(members[column.Member].First(), column) is { } value)
                (parameter.SqliteType, parameter.Value) = value;
            else
                faults.Add(Fault.Of(place(column.Member), members[column.Member].First().GetRawText(), Wanted(column)));
    }

    private static (SqliteType, object)? ValueOf(JsonElement value, Column column) =>
        (value.ValueKind, column.Type) switch
        {
            (JsonValueKind.Null, _) when column.IsNullable => (SqliteType.Text, DBNull.Value),
            (JsonValueKind.Number, "INTEGER") when value.TryGetInt64(out var whole) => (SqliteType.Integer, whole),
            (JsonValueKind.Number, "REAL") => (SqliteType.Real, value.GetDouble()),
            (JsonValueKind.String, "TEXT") => (SqliteType.Text, value.GetString()!),
            _ => null,
        };

    private static string Wanted(Column column)
    {
        var kind = column.Type switch
        {
            "INTEGER" => "a whole number",
            "REAL" => "a number",
            _ => "a text",
        };
        return $"isn't {kind}{(column.IsNullable ? " or null" : "")}";
    }

    private static bool TryRun(SqliteCommand command)
    {
        try
        {
            command.ExecuteNonQuery();
            return true;
        }
        catch (SqliteException problem) when (problem.SqliteErrorCode == Constraint)
        {
            return false;
        }
    }

    private void Run(string sql)
    {
        using var command = connection.CreateCommand();
        (command.CommandText, command.Transaction) = (sql, transaction);
        command.ExecuteNonQuery();
    }

    private List<Column> ColumnsOf(string table)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT name, type, \"notnull\" FROM pragma_table_info($table) ORDER BY cid";
        command.Transaction = transaction;
        command.Parameters.AddWithValue("$table", table);
        using var reader = command.ExecuteReader();
        var columns = new List<Column>();
        while (reader.Read())
            columns.Add(
                new(reader.GetString(0), ArchiveTables.Member(reader.GetString(0)), reader.GetString(1), reader.GetInt64(2) == 0)
            );
        return columns;
    }
}
