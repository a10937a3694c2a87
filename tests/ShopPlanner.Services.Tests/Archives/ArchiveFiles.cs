using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace ShopPlanner.Services.Tests.Archives;

/// <summary>Archives taken apart and put together again.</summary>
internal static class ArchiveFiles
{
    /// <summary>The entries' texts by name.</summary>
    public static SortedDictionary<string, string> Read(byte[] zip)
    {
        using var archive = new ZipArchive(new MemoryStream(zip));
        var texts = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var entry in archive.Entries)
        {
            using var reader = new StreamReader(entry.Open());
            texts.Add(entry.FullName, reader.ReadToEnd());
        }

        return texts;
    }

    /// <summary>The documents without the first, which says when it was made.</summary>
    public static SortedDictionary<string, string> Documents(byte[] zip)
    {
        var texts = Read(zip);
        texts.Remove("archive.json");
        return texts;
    }

    /// <summary>The hash that an archive states.</summary>
    public static string Hash(byte[] zip)
    {
        using var head = JsonDocument.Parse(Read(zip)["archive.json"]);
        return head.RootElement.GetProperty("hash").GetString()!;
    }

    /// <summary>A zip file of texts.</summary>
    public static byte[] Zip(IEnumerable<KeyValuePair<string, string>> texts)
    {
        using var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
            foreach (var (name, text) in texts)
            {
                using var stream = zip.CreateEntry(name).Open();
                stream.Write(Encoding.UTF8.GetBytes(text));
            }

        return file.ToArray();
    }

    /// <summary>The archive with one document changed.</summary>
    public static byte[] With(byte[] zip, string name, Func<string, string> change)
    {
        var texts = Read(zip);
        texts[name] = change(texts[name]);
        return Zip(texts);
    }

    /// <summary>The archive with the first row of a document changed.</summary>
    public static byte[] WithRow(byte[] zip, string name, Action<JsonObject> change) =>
        With(
            zip,
            name,
            text =>
            {
                var document = JsonNode.Parse(text)!;
                change(document["rows"]![0]!.AsObject());
                return document.ToJsonString();
            }
        );
}
