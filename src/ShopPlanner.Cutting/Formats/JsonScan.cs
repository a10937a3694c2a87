using System.Globalization;
using System.Text;
using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>
/// A first pass over a document that allocates nothing: is it JSON (RFC 8259), not too deep, not of too many values? Only then
/// is it worth building a document of it, whose memory grows with the number of values. It remembers where it is, so that a
/// fault names the member.
/// </summary>
internal ref struct JsonScan
{
    public const int MostDepth = 64;
    public const int MostValues = 5_000_000;

    private const int ShownBytes = 60;

    private readonly ReadOnlySpan<byte> utf8;
    private readonly Level[] levels;
    private Utf8JsonReader reader;
    private int open;
    private int values;

    private JsonScan(ReadOnlySpan<byte> utf8)
    {
        this.utf8 = utf8;
        levels = new Level[MostDepth + 2];
        reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = MostDepth + 2 });
    }

    /// <summary>The fault that ends the document, or null.</summary>
    public static Fault? Run(ReadOnlySpan<byte> utf8) => new JsonScan(utf8).Run();

    private Fault? Run()
    {
        try
        {
            while (reader.Read())
                if (Step() is { } fault)
                    return fault;
            return null;
        }
        catch (JsonException exception)
        {
            return NotJson(exception);
        }
        catch (InvalidOperationException)
        {
            // The reader says so of a string whose escapes are half a pair of UTF-16.
            return Fault.Of(
                Path(),
                Offending((int)reader.TokenStartIndex),
                "is not text: an escape such as \\ud800 stands alone"
            );
        }
    }

    private Fault? Step()
    {
        Track();
        if (reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName && reader.ValueIsEscaped)
            _ = reader.GetString();
        if (open > MostDepth)
            return Fault.Of(Path(shown: 3), "", $"is nested more than {MostDepth} deep");
        return ++values > MostValues
            ? Fault.Of(
                "",
                "",
                string.Create(CultureInfo.InvariantCulture, $"has more than {MostValues:N0} values: that is no cutting job")
            )
            : null;
    }

    private void Track()
    {
        var depth = reader.CurrentDepth;
        switch (reader.TokenType)
        {
            case JsonTokenType.PropertyName:
                levels[depth].Name = new Range(
                    (int)reader.TokenStartIndex + 1,
                    (int)reader.TokenStartIndex + 1 + reader.ValueSpan.Length
                );
                return;
            case JsonTokenType.EndArray or JsonTokenType.EndObject:
                open = depth;
                return;
            default:
                levels[depth].Index++;
                if (reader.TokenType is JsonTokenType.StartArray or JsonTokenType.StartObject)
                    Open(depth + 1);
                return;
        }
    }

    private void Open(int depth)
    {
        open = depth;
        levels[depth] = new Level { IsArray = reader.TokenType == JsonTokenType.StartArray, Index = -1 };
    }

    private readonly Fault NotJson(JsonException exception)
    {
        var line = (exception.LineNumber ?? 0) + 1;
        var text = Offending((int)reader.BytesConsumed);
        return text.Length == 0
            ? Fault.Of(Path(), text, $"ends the document too early (line {line})")
            : Fault.Of(Path(), text, $"is not JSON here (line {line}, RFC 8259)");
    }

    private readonly string Path(int shown = MostDepth)
    {
        var path = new StringBuilder();
        for (var depth = 1; depth <= Math.Min(open, shown); depth++)
        {
            if (levels[depth].IsArray)
                path.Append(CultureInfo.InvariantCulture, $"[{Math.Max(levels[depth].Index, 0)}]");
            else
                path.Append(path.Length > 0 ? "." : "").Append(Encoding.UTF8.GetString(utf8[levels[depth].Name]));
        }

        return open > shown ? path + "…" : path.ToString();
    }

    private readonly string Offending(int from)
    {
        while (from < utf8.Length && " \t\r\n,:"u8.Contains(utf8[from]))
            from++;
        var rest = utf8[from..Math.Min(from + ShownBytes, utf8.Length)];
        var length = rest.IndexOfAny(",}]\r\n"u8);
        return Encoding.UTF8.GetString(length < 0 ? rest : rest[..Math.Max(length, 1)]).Trim();
    }

    private struct Level
    {
        public bool IsArray;
        public int Index;
        public Range Name;
    }
}
