using System.Text.Json;
using System.Text.Unicode;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Bytes to a JSON document, or the one fault that forbids it.</summary>
internal static class JsonText
{
    /// <summary>The largest document looked at: 64 MB.</summary>
    public const int MostBytes = 64 * 1024 * 1024;

    /// <summary>All of the stream; of a longer one enough to see that it is too long.</summary>
    public static ReadOnlyMemory<byte> ReadAll(Stream stream) => CappedReading.Take(stream, MostBytes);

    /// <summary>The document, to be disposed of by the caller, or null and the fault.</summary>
    public static JsonDocument? Open(ReadOnlyMemory<byte> utf8, FaultList faults)
    {
        var text = utf8.Span.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;
        if (Refuse(text.Span) is not { } fault)
            return JsonDocument.Parse(text, new JsonDocumentOptions { MaxDepth = JsonScan.MostDepth });
        faults.Add(fault);
        return null;
    }

    private static Fault? Refuse(ReadOnlySpan<byte> utf8)
    {
        if (utf8.Length > MostBytes)
            return Fault.Of("", "", "is larger than 64 MB: that is no cutting job");
        if (utf8.Trim(" \t\r\n"u8).IsEmpty)
            return Fault.Of("", "", "is empty: a JSON document is wanted");
        return Utf8.IsValid(utf8) ? JsonScan.Run(utf8) : Fault.Of("", "", "is not UTF-8 text");
    }
}
