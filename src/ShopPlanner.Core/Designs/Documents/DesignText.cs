using System.Text;
using System.Text.Json;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Documents;

/// <summary>Bytes to the document of a design, or the one fault that forbids it; it names line and column.</summary>
internal static class DesignText
{
    private const int ShownBytes = 40;

    /// <summary>The document, to be disposed of by the caller, or the fault.</summary>
    public static (JsonDocument? Document, Fault? Fault) Open(ReadOnlyMemory<byte> utf8)
    {
        var text = JsonText.Bare(utf8);
        return JsonText.Check(text.Span, DesignJson.MostBytes) is { } problem
            ? (null, Say(problem, text.Span))
            : (JsonText.Parse(text), null);
    }

    private static Fault Say(JsonProblem problem, ReadOnlySpan<byte> utf8) =>
        problem.Flaw switch
        {
            JsonFlaw.TooLong => Fault.Of("", $"{utf8.Length} bytes", $"is too long for a design: at most {DesignJson.MostBytes}"),
            JsonFlaw.Empty => Fault.Of("", "", "is empty: a design is a JSON document"),
            JsonFlaw.NotUtf8 => Fault.Of("", "", "isn't UTF-8 text"),
            JsonFlaw.HalfCharacter => At(utf8, problem.At, "isn't text: an escape such as \\ud800 is only half a character"),
            _ => At(utf8, problem.At, $"isn't JSON here, is cut off, or is nested more than {JsonText.MostDepth} deep"),
        };

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
