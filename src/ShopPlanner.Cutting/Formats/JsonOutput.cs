using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Writes the measures of the two formats: lengths as plain numbers of the document's unit, six decimals at most.</summary>
internal sealed class JsonOutput : IDisposable
{
    // For files, not for pages: names stay readable, only what JSON itself demands is escaped.
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n",
    };

    private readonly Utf8JsonWriter _json;
    private readonly LengthUnit _unit;

    public JsonOutput(Stream stream, string format, LengthUnit unit)
    {
        _json = new Utf8JsonWriter(stream, Options);
        _unit = unit;
        _json.WriteStartObject();
        Text("format", format);
        Count("version", Words.Version);
        Text("unit", Words.Unit.Word(unit));
    }

    public void Text(string name, string? value)
    {
        if (value is not null) _json.WriteString(name, value);
    }

    public void Count(string name, int value) => _json.WriteNumber(name, value);

    public void Flag(string name, bool value) => _json.WriteBoolean(name, value);

    public void Length(string name, Length? value)
    {
        if (value is not { } length) return;
        _json.WritePropertyName(name);
        _json.WriteRawValue(length.To(_unit).ToString("0.######", CultureInfo.InvariantCulture), skipInputValidation: true);
    }

    public void Money(string name, Money value)
    {
        _json.WritePropertyName(name);
        _json.WriteRawValue(value.ToString(), skipInputValidation: true);
    }

    public void Seconds(string name, double value) => _json.WriteNumber(name, Math.Round(value, 3));

    /// <summary>A list of texts; a null text is written as null.</summary>
    public void Texts(string name, IEnumerable<string?> values)
    {
        _json.WriteStartArray(name);
        foreach (var value in values) _json.WriteStringValue(value);
        _json.WriteEndArray();
    }

    public void Object(string name, Action members)
    {
        _json.WriteStartObject(name);
        members();
        _json.WriteEndObject();
    }

    public void Objects<T>(string name, IEnumerable<T> items, Action<T> members)
    {
        _json.WriteStartArray(name);
        foreach (var item in items)
        {
            _json.WriteStartObject();
            members(item);
            _json.WriteEndObject();
        }

        _json.WriteEndArray();
    }

    /// <summary>Ends the document.</summary>
    public void Dispose()
    {
        _json.WriteEndObject();
        _json.Dispose();
    }
}
