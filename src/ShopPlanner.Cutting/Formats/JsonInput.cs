using System.Text.Json;
using System.Text.Unicode;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Turns a stream into a tree of elements that is safe to read, or into faults.</summary>
internal static class JsonInput
{
    /// <summary>The largest document that is looked at: a plan for the most pieces allowed is smaller.</summary>
    public const int MaxBytes = 50 * 1024 * 1024;

    /// <summary>The document; null when there is a fault. The caller disposes of it.</summary>
    public static JsonDocument? Load(Stream stream, FaultList faults)
    {
        var bytes = Bytes(stream);
        if (bytes.Length > MaxBytes)
            faults.Add("", "", "is larger than 50 MB: no job is so large");
        else if (bytes.IsEmpty)
            faults.Add("", "", "is empty: a JSON document is wanted");
        else if (!Utf8.IsValid(bytes.Span))
            faults.Add("", "", "is not UTF-8 text");
        else if (new JsonScan(faults).Run(bytes.Span))
            return JsonDocument.Parse(bytes, new JsonDocumentOptions { MaxDepth = JsonScan.MaxDepth + 2 });
        return null;
    }

    // Reads at most one byte more than is allowed, whatever the stream says of its length.
    private static ReadOnlyMemory<byte> Bytes(Stream stream)
    {
        var buffer = new byte[81920];
        var length = 0;
        for (int read; (read = stream.Read(buffer, length, buffer.Length - length)) > 0;)
        {
            length += read;
            if (length > MaxBytes) break;
            if (length == buffer.Length) Array.Resize(ref buffer, Math.Min(buffer.Length * 2, MaxBytes + 1));
        }

        var start = buffer.AsSpan(0, length).StartsWith("\uFEFF"u8) ? 3 : 0;
        return buffer.AsMemory(start, length - start);
    }
}
