using System.Globalization;
using System.Text;
using System.Text.Json;

namespace ShopPlanner.Cutting.Formats;

/// <summary>
/// A first walk through a document before anything is built from it. Finds what a tree of elements would hide or choke on: a
/// member given twice (of which a parser silently keeps one), nesting without end, more values than any job has.
/// </summary>
internal sealed class JsonScan(FaultList faults)
{
    public const int MaxDepth = 64;
    public const int MaxValues = 4_000_000;
    public const int MaxMembers = 1000;

    private readonly List<Level> _levels = [];
    private int _depth;
    private int _values;

    /// <summary>True when the document may be read on; otherwise the reason is among the faults.</summary>
    public bool Run(ReadOnlySpan<byte> utf8)
    {
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = MaxDepth + 2 });
        try
        {
            while (reader.Read())
                if (!Take(ref reader)) return false;
        }
        catch (JsonException broken)
        {
            var (line, column) = (broken.LineNumber ?? 0, broken.BytePositionInLine ?? 0);
            faults.Add(Path(), Around(utf8, line, column), string.Create(CultureInfo.InvariantCulture,
                $"is not JSON: line {line + 1}, byte {column + 1}"));
            return false;
        }

        return !faults.Any;
    }

    private bool Take(ref Utf8JsonReader reader)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.PropertyName:
                return IsText(ref reader) && Name(reader.GetString() ?? "");
            case JsonTokenType.EndObject or JsonTokenType.EndArray:
                _depth--;
                return true;
            case JsonTokenType.StartObject or JsonTokenType.StartArray:
                return Count() && Open(reader.TokenType == JsonTokenType.StartArray);
            case JsonTokenType.String:
                return Count() && IsText(ref reader);
            default:
                return Count();
        }
    }

    private bool Count()
    {
        if (_depth > 0) _levels[_depth - 1].Index++;
        return ++_values <= MaxValues || Refuse("", $"holds more than {MaxValues} values, more than any job has");
    }

    private bool Open(bool isArray)
    {
        if (_depth == MaxDepth) return Refuse("", $"is nested more than {MaxDepth} deep");
        if (_depth == _levels.Count) _levels.Add(new Level());
        _levels[_depth++].Start(isArray);
        return true;
    }

    private bool Name(string name)
    {
        var level = _levels[_depth - 1];
        level.Member = name;
        if (!level.Names.Add(name))
            faults.Add(Path(), name, "is given twice: which one is meant?");
        return level.Names.Count <= MaxMembers || Refuse("", $"has more than {MaxMembers} members");
    }

    // Half a character (a lone surrogate) is allowed by the grammar but is no text.
    private bool IsText(ref Utf8JsonReader reader)
    {
        if (!reader.ValueIsEscaped) return true;
        try
        {
            return reader.GetString() is not null;
        }
        catch (InvalidOperationException)
        {
            return Refuse(Encoding.UTF8.GetString(reader.ValueSpan), "holds half a character: it is not text");
        }
    }

    private bool Refuse(string value, string message)
    {
        faults.Add(Path(), value, message);
        return false;
    }

    // A path for people: of a deep one, the beginning says where to look.
    private string Path()
    {
        var path = new StringBuilder();
        foreach (var level in _levels.Take(Math.Min(_depth, 8))) level.AppendTo(path);
        return path.ToString();
    }

    private static string Around(ReadOnlySpan<byte> utf8, long line, long column)
    {
        for (; line > 0; line--) utf8 = utf8[(utf8.IndexOf((byte)'\n') + 1)..];
        var rest = utf8[(int)Math.Min(column, utf8.Length)..];
        var end = rest.IndexOf((byte)'\n');
        rest = end >= 0 ? rest[..end] : rest;
        return Encoding.UTF8.GetString(rest[..Math.Min(rest.Length, 40)]).Trim();
    }

    private sealed class Level
    {
        public HashSet<string> Names { get; } = new(StringComparer.Ordinal);

        public int Index { get; set; } = -1;

        public string Member { get; set; } = "";

        private bool IsArray { get; set; }

        public void Start(bool isArray)
        {
            (IsArray, Index, Member) = (isArray, -1, "");
            Names.Clear();
        }

        public void AppendTo(StringBuilder path)
        {
            if (IsArray)
            {
                if (Index >= 0) path.Append(CultureInfo.InvariantCulture, $"[{Index}]");
                return;
            }

            if (Member.Length == 0) return;
            if (path.Length > 0) path.Append('.');
            path.Append(Member.Length <= 40 ? Member : Member[..40] + "…");
        }
    }
}
