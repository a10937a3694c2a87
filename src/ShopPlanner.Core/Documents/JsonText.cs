using System.Text.Json;
using System.Text.Unicode;

namespace ShopPlanner.Core.Documents;

/// <summary>Bytes to a JSON document, or the one problem that forbids it. Every open format is read by way of this.</summary>
public static class JsonText
{
    /// <summary>The deepest nesting that is read.</summary>
    public const int MostDepth = 64;

    /// <summary>The most values that are read.</summary>
    public const int MostValues = 5_000_000;

    /// <summary>Returns the text without a byte order mark.</summary>
    public static ReadOnlyMemory<byte> Bare(ReadOnlyMemory<byte> utf8) => utf8.Span.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;

    /// <summary>Returns why a text is not to be read; null where it is.</summary>
    /// <param name="bare">Without a byte order mark.</param>
    /// <param name="mostBytes">The greatest length allowed.</param>
    public static JsonProblem? Check(ReadOnlySpan<byte> bare, int mostBytes)
    {
        if (bare.Length > mostBytes)
            return new(JsonFlaw.TooLong);
        if (bare.Trim(" \t\r\n"u8).IsEmpty)
            return new(JsonFlaw.Empty);
        return Utf8.IsValid(bare) ? JsonScan.Run(bare) : new(JsonFlaw.NotUtf8);
    }

    /// <summary>Returns the document of a text that was checked, to be disposed of by the caller.</summary>
    /// <param name="bare">Without a byte order mark.</param>
    public static JsonDocument Parse(ReadOnlyMemory<byte> bare) =>
        JsonDocument.Parse(bare, new JsonDocumentOptions { MaxDepth = MostDepth });
}
