using System.Data.Common;
using System.IO.Compression;
using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Archives;

/// <summary>Writes an archive of an open database.</summary>
internal static class ArchiveWriting
{
    /// <summary>Returns the documents of all tables, by name.</summary>
    public static async Task<Dictionary<string, (string Text, int Rows)>> ReadAsync(ShopContext db, CancellationToken cancel)
    {
        var documents = new Dictionary<string, (string, int)>();
        foreach (var table in ArchiveTables.Of(db))
        {
            var rows = await RowsAsync(db, table.Table, cancel);
            documents.Add(table.Document, (ArchiveDocuments.Rows(rows), rows.Count));
        }

        return documents;
    }

    /// <summary>Returns the canonical hash of the shop.</summary>
    public static async Task<string> HashAsync(ShopContext db, CancellationToken cancel) =>
        ArchiveDocuments.Hash((await ReadAsync(db, cancel)).Select(one => Bytes(one.Key, one.Value.Text)));

    /// <summary>Returns the zip file.</summary>
    public static async Task<byte[]> WriteAsync(ShopContext db, DateTime madeUtc, CancellationToken cancel)
    {
        var documents = await ReadAsync(db, cancel);
        var schema = (await db.Database.GetAppliedMigrationsAsync(cancel)).Last();
        var hash = ArchiveDocuments.Hash(documents.Select(one => Bytes(one.Key, one.Value.Text)));
        var head = ArchiveDocuments.Head(
            new(schema, Migrator.ProgramVersion, madeUtc, hash),
            documents.Select(one => (one.Key, one.Value.Rows))
        );
        using var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, ArchiveDocuments.HeadName, head, madeUtc);
            foreach (var (name, document) in documents)
                Add(zip, name, document.Text, madeUtc);
        }

        return file.ToArray();
    }

    private static KeyValuePair<string, ReadOnlyMemory<byte>> Bytes(string name, string text) =>
        new(name, Encoding.UTF8.GetBytes(text));

    private static void Add(ZipArchive zip, string name, string text, DateTime madeUtc)
    {
        var entry = zip.CreateEntry(name);
        entry.LastWriteTime = madeUtc;
        using var stream = entry.Open();
        stream.Write(Encoding.UTF8.GetBytes(text));
    }

    private static async Task<List<SortedDictionary<string, object?>>> RowsAsync(
        ShopContext db,
        string table,
        CancellationToken cancel
    )
    {
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"SELECT * FROM \"{table}\"{ArchiveTables.Where(table)} ORDER BY 1, 2";
        var rows = new List<SortedDictionary<string, object?>>();
        await using var reader = await command.ExecuteReaderAsync(cancel);
        while (await reader.ReadAsync(cancel))
            rows.Add(Row(reader));
        return rows;
    }

    private static SortedDictionary<string, object?> Row(DbDataReader reader)
    {
        var row = new SortedDictionary<string, object?>(StringComparer.Ordinal);
        for (var at = 0; at < reader.FieldCount; at++)
            row.Add(ArchiveTables.Member(reader.GetName(at)), reader.GetValue(at) is DBNull ? null : reader.GetValue(at));
        return row;
    }
}
