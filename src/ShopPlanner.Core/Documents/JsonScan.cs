using System.Globalization;
using System.Text;
using System.Text.Json;

namespace ShopPlanner.Core.Documents;

/// <summary>
/// A first pass over a document that allocates nothing: is it JSON (RFC 8259), not too deep, not of too many values? Only then
/// is it worth building a document of it, whose memory grows with the number of values. It remembers where it is, so that a
/// problem names the member.
/// </summary>
internal ref struct JsonScan
{
    private const int MostDepth = JsonText.MostDepth;

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

    /// <summary>The problem that ends the document, or null.</summary>
    public static JsonProblem? Run(ReadOnlySpan<byte> utf8) => new JsonScan(utf8).Run();

    private JsonProblem? Run()
    {
        try
        {
            while (reader.Read())
                if (Step() is { } problem)
                    return problem;
            return null;
        }
        catch (JsonException exception)
        {
            return new(JsonFlaw.NotJson, Path(), (int)reader.BytesConsumed, (int)(exception.LineNumber ?? 0) + 1);
        }
        catch (InvalidOperationException)
        {
            // The reader says so of a string whose escapes are half a pair of UTF-16.
            return new(JsonFlaw.HalfCharacter, Path(), (int)reader.TokenStartIndex);
        }
    }

    private JsonProblem? Step()
    {
        Track();
        if (reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName && reader.ValueIsEscaped)
            _ = reader.GetString();
        if (open > MostDepth)
            return new(JsonFlaw.TooDeep, Path(shown: 3), (int)reader.TokenStartIndex);
        return ++values > JsonText.MostValues ? new(JsonFlaw.TooMany) : null;
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

    private struct Level
    {
        public bool IsArray;
        public int Index;
        public Range Name;
    }
}
