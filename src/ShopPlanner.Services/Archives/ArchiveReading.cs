using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Archives;

/// <summary>An archive whose documents are JSON of the known formats; what their rows hold is not looked at yet.</summary>
internal sealed record ArchiveText(ArchiveHead Head, ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> Documents);

/// <summary>Reads an archive's documents as far as their formats go.</summary>
internal static class ArchiveReading
{
    /// <summary>Returns the documents, or the first fault.</summary>
    public static (ArchiveText? Archive, Fault? Fault) Read(ReadOnlyMemory<byte> zip)
    {
        if (zip.Length > IArchiveService.MostBytes)
            return (null, new Fault("archive", "", "is larger than 50 MB, the most that is read"));
        var (entries, refusal) = ArchiveUnpacking.Unpack(zip);
        if (refusal is not null)
            return (null, refusal);
        if (!entries.Remove(ArchiveDocuments.HeadName, out var first))
            return (null, Missing(ArchiveDocuments.HeadName));
        var (head, fault) = ReadHead(first);
        fault ??= entries
            .OrderBy(one => one.Key, StringComparer.Ordinal)
            .Select(one => CheckRows(one.Key, one.Value))
            .FirstOrDefault(one => one is not null);
        return fault is null ? (new(head!, entries.ToImmutableSortedDictionary(StringComparer.Ordinal)), null) : (null, fault);
    }

    /// <summary>Returns the fault of an archive without one of its documents.</summary>
    public static Fault Missing(string name) => new("archive", name, "is missing: choose a file that Export shop made");

    private static (ArchiveHead? Head, Fault? Fault) ReadHead(ReadOnlyMemory<byte> text)
    {
        const string Name = ArchiveDocuments.HeadName;
        if (Check(Name, text, ArchiveDocuments.HeadFormat) is { } fault)
            return (null, fault);
        using var document = JsonText.Parse(JsonText.Bare(text));
        string? Text(string member) =>
            document.RootElement.TryGetProperty(member, out var value) && value.ValueKind == JsonValueKind.String
                ? value.GetString()
                : null;
        if (Text("schema") is not { Length: > 0 } schema)
            return (
                null,
                new Fault($"{Name}: schema", "", "is missing: the archive doesn't say which schema it was written with")
            );
        var isTime = DateTime.TryParse(
            Text("made"),
            CultureInfo.InvariantCulture,
            DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal,
            out var made
        );
        return isTime
            ? (new ArchiveHead(schema, Text("program") ?? "", made, Text("hash") ?? ""), null)
            : (null, Fault.Of($"{Name}: made", Text("made"), "isn't a time, like 2026-05-02T09:30:00Z"));
    }

    private static Fault? CheckRows(string name, ReadOnlyMemory<byte> text)
    {
        if (Check(name, text, ArchiveDocuments.RowsFormat) is { } fault)
            return fault;
        using var document = JsonText.Parse(JsonText.Bare(text));
        if (!document.RootElement.TryGetProperty("rows", out var rows) || rows.ValueKind != JsonValueKind.Array)
            return new Fault($"{name}: rows", "", "is missing: it is the list of what the document holds");
        var wrong = rows.EnumerateArray().Index().Where(row => row.Item.ValueKind != JsonValueKind.Object).Take(1).ToList();
        return wrong.Count == 0 ? null : Fault.Of(Place(name, wrong[0].Index), wrong[0].Item.GetRawText(), "isn't an object");
    }

    /// <summary>The place of a row, or of a member of it.</summary>
    public static string Place(string document, long row, string? member = null) =>
        string.Create(CultureInfo.InvariantCulture, $"{document}: rows[{row}]") + (member is null ? "" : "." + member);

    private static Fault? Check(string name, ReadOnlyMemory<byte> text, string format)
    {
        if (JsonText.Check(JsonText.Bare(text).Span, ArchiveUnpacking.MostUnpacked) is { } problem)
            return new Fault($"{name}{(problem.Path.Length > 0 ? ": " + problem.Path : "")}", Line(problem), Says(problem.Flaw));
        using var document = JsonText.Parse(JsonText.Bare(text));
        var root = document.RootElement;
        if (
            root.ValueKind != JsonValueKind.Object
            || !root.TryGetProperty("format", out var given)
            || given.ValueKind != JsonValueKind.String
            || given.GetString() != format
        )
            return new Fault($"{name}: format", "", $"isn't {format}: this is no document of a shop archive");
        if (!root.TryGetProperty("version", out var stated) || !stated.TryGetInt32(out var version) || version < 1)
            return new Fault($"{name}: version", "", "is missing: it is a whole number from 1");
        return version <= ArchiveDocuments.Version
            ? null
            : Newer(name, $"{name}: version", version.ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>Returns the fault of an archive that a newer program wrote.</summary>
    public static Fault Newer(string what, string place, string value) =>
        Fault.Of(place, value, $"is newer than this program knows: update Shop Planner, then import {what} again");

    private static string Line(JsonProblem problem) =>
        problem.Flaw == JsonFlaw.NotJson ? string.Create(CultureInfo.InvariantCulture, $"line {problem.Line}") : "";

    private static string Says(JsonFlaw flaw) =>
        flaw switch
        {
            JsonFlaw.Empty => "is empty",
            JsonFlaw.NotUtf8 => "isn't UTF-8 text",
            JsonFlaw.HalfCharacter => "has half a character in a text",
            JsonFlaw.TooDeep => "is nested too deeply",
            JsonFlaw.TooMany => "has more values than a shop can have",
            JsonFlaw.TooLong => "is too long",
            _ => "isn't JSON: the file is cut off or damaged",
        };
}
