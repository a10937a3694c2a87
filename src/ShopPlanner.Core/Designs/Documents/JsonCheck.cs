using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Documents;

/// <summary>Whether bytes are JSON (RFC 8259) that can be read without surprise: of a length and a depth, whole, each text of
/// whole characters. The fault names line and column.</summary>
internal static class JsonCheck
{
    public const int MostDepth = 64;

    private const int ShownBytes = 40;

    /// <summary>The fault; null for a document to be read.</summary>
    public static Fault? Run(ReadOnlySpan<byte> utf8)
    {
        if (utf8.Length > DesignJson.MostBytes)
            return Fault.Of("", $"{utf8.Length} bytes", $"is too long for a design: at most {DesignJson.MostBytes}");
        if (utf8.Trim(" \t\r\n"u8).IsEmpty)
            return Fault.Of("", "", "is empty: a design is wanted, a JSON document");
        return Utf8.IsValid(utf8) ? Walk(utf8) : Fault.Of("", "", "is not UTF-8 text");
    }

    private static Fault? Walk(ReadOnlySpan<byte> utf8)
    {
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = MostDepth });
        try
        {
            while (reader.Read())
                if (reader.ValueIsEscaped)
                    _ = reader.GetString();
            return null;
        }
        catch (JsonException)
        {
            return At(utf8, (int)reader.BytesConsumed, $"is no JSON here, is cut off, or is nested more than {MostDepth} deep");
        }
        catch (InvalidOperationException)
        {
            // The reader says so of a text whose escapes are half a character.
            return At(utf8, (int)reader.TokenStartIndex, "is not text: an escape such as \\ud800 stands alone");
        }
    }

    private static Fault At(ReadOnlySpan<byte> utf8, int at, string message)
    {
        while (at < utf8.Length && " \t\r\n"u8.Contains(utf8[at]))
            at++;
        var before = utf8[..at];
        var rest = utf8[at..Math.Min(at + ShownBytes, utf8.Length)];
        var (line, column) = (before.Count((byte)'\n') + 1, at - before.LastIndexOf((byte)'\n'));
        var shown = rest.IndexOfAny("\r\n"u8) is >= 0 and var end ? rest[..end] : rest;
        return Fault.Of(FormattableString.Invariant($"line {line}, column {column}"), Encoding.UTF8.GetString(shown), message);
    }
}
