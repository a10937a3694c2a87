using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using ShopPlanner.Core.Documents;

namespace ShopPlanner.Services.Archives;

/// <summary>The first document of an archive.</summary>
internal sealed record ArchiveHead(string Schema, string Program, DateTime MadeUtc, string Hash);

/// <summary>Documents of an archive as text, and their canonical hash.</summary>
internal static class ArchiveDocuments
{
    public const string HeadName = "archive.json",
        HeadFormat = "shop-planner/archive",
        RowsFormat = "shop-planner/archive-rows";

    /// <summary>The newest version of both formats.</summary>
    public const int Version = 1;

    /// <summary>Returns the document of a table's rows.</summary>
    /// <param name="rows">Members by name: whole numbers, figures, texts or nothing.</param>
    public static string Rows(IEnumerable<SortedDictionary<string, object?>> rows) =>
        JsonOutput.Object(writer =>
        {
            writer.WriteString("format", RowsFormat);
            writer.WriteNumber("version", Version);
            writer.List("rows", rows, Row);
        });

    /// <summary>Returns the first document.</summary>
    public static string Head(ArchiveHead head, IEnumerable<(string Name, int Rows)> documents) =>
        JsonOutput.Object(writer =>
        {
            writer.WriteString("format", HeadFormat);
            writer.WriteNumber("version", Version);
            writer.WriteString("schema", head.Schema);
            writer.WriteString("program", head.Program);
            writer.WriteString("made", head.MadeUtc);
            writer.WriteString("hash", head.Hash);
            writer.List(
                "documents",
                documents,
                (inner, one) =>
                {
                    inner.WriteString("name", one.Name);
                    inner.WriteNumber("rows", one.Rows);
                }
            );
        });

    /// <summary>Returns the canonical hash, as the README beside this file defines it.</summary>
    /// <param name="documents">All but the first; JSON that was checked.</param>
    public static string Hash(IEnumerable<KeyValuePair<string, ReadOnlyMemory<byte>>> documents)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (name, text) in documents.OrderBy(one => one.Key, StringComparer.Ordinal))
            hash.AppendData(Encoding.UTF8.GetBytes($"{name}\n{Canonical(text)}\n"));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    // The order of rows in a file means nothing.
    private static string Canonical(ReadOnlyMemory<byte> text)
    {
        using var document = JsonText.Parse(JsonText.Bare(text));
        var rows = document.RootElement.GetProperty("rows").EnumerateArray().Select(CanonicalJson.Write);
        ImmutableArray<string> sorted = [.. rows.Order(StringComparer.Ordinal)];
        return $$"""{"format":"{{RowsFormat}}","rows":[{{string.Join(',', sorted)}}],"version":{{Version}}}""";
    }

    private static void Row(Utf8JsonWriter writer, SortedDictionary<string, object?> row)
    {
        foreach (var (name, value) in row)
            switch (value)
            {
                case null:
                    writer.WriteNull(name);
                    break;
                case long whole:
                    writer.WriteNumber(name, whole);
                    break;
                case double figure:
                    writer.WriteNumber(name, figure);
                    break;
                default:
                    writer.WriteString(name, (string)value);
                    break;
            }
    }
}
