using System.Globalization;
using System.Text;
using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Documents;

/// <summary>Bytes to the document of a request or a plan, or the one fault that forbids it.</summary>
public static class DocumentText
{
    /// <summary>The largest document looked at: 64 MB.</summary>
    public const int MostBytes = 64 * 1024 * 1024;

    private const int ShownBytes = 60;

    /// <summary>All of the stream; of a longer one enough to see that it is too long.</summary>
    public static ReadOnlyMemory<byte> ReadAll(Stream stream) => CappedReading.Take(stream, MostBytes);

    /// <summary>The document, to be disposed of by the caller, or null and the fault.</summary>
    /// <param name="utf8">The bytes.</param>
    /// <param name="faults">Where the fault is noted.</param>
    /// <param name="job">What the document is about, as a fault names it: <c>cutting job</c>.</param>
    public static JsonDocument? Open(ReadOnlyMemory<byte> utf8, FaultList faults, string job)
    {
        ArgumentNullException.ThrowIfNull(faults);
        var text = JsonText.Bare(utf8);
        if (JsonText.Check(text.Span, MostBytes) is not { } problem)
            return JsonText.Parse(text);
        faults.Add(Say(problem, text.Span, job));
        return null;
    }

    private static Fault Say(JsonProblem problem, ReadOnlySpan<byte> utf8, string job) =>
        problem.Flaw switch
        {
            JsonFlaw.TooLong => Fault.Of("", "", $"is larger than 64 MB, more than any {job}"),
            JsonFlaw.Empty => Fault.Of("", "", "is empty: write a JSON document"),
            JsonFlaw.NotUtf8 => Fault.Of("", "", "is not UTF-8 text"),
            JsonFlaw.TooDeep => Fault.Of(problem.Path, "", $"is nested more than {JsonText.MostDepth} deep"),
            JsonFlaw.TooMany => Fault.Of("", "", TooMany(job)),
            _ => SayThere(problem, Offending(utf8, problem.At)),
        };

    private static Fault SayThere(JsonProblem problem, string text) =>
        Fault.Of(
            problem.Path,
            text,
            problem.Flaw == JsonFlaw.HalfCharacter ? "is not text: an escape such as \\ud800 is only half a character"
                : text.Length == 0 ? $"ends the document too early (line {problem.Line})"
                : $"is not JSON here (line {problem.Line}, RFC 8259)"
        );

    private static string TooMany(string job) =>
        string.Create(CultureInfo.InvariantCulture, $"has more than {JsonText.MostValues:N0} values, more than any {job}");

    private static string Offending(ReadOnlySpan<byte> utf8, int from)
    {
        while (from < utf8.Length && " \t\r\n,:"u8.Contains(utf8[from]))
            from++;
        var rest = utf8[from..Math.Min(from + ShownBytes, utf8.Length)];
        var length = rest.IndexOfAny(",}]\r\n"u8);
        return Encoding.UTF8.GetString(length < 0 ? rest : rest[..Math.Max(length, 1)]).Trim();
    }
}
