using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Writes documents: indented, members in the order written, numbers in plain digits.</summary>
internal static class JsonOutput
{
    // The documents are files, not parts of a page: names may keep their accents, quotes and signs readable.
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>One object as text, ended by a line feed.</summary>
    public static string Object(Action<Utf8JsonWriter> members)
    {
        using var buffer = new MemoryStream();
        using (var writer = new Utf8JsonWriter(buffer, Options))
            writer.Item(members);
        return Encoding.UTF8.GetString(buffer.GetBuffer(), 0, (int)buffer.Length) + "\n";
    }

    /// <summary>The members that every document begins with.</summary>
    public static void Header(this Utf8JsonWriter writer, string format, LengthUnit unit)
    {
        writer.WriteString("format", format);
        writer.WriteNumber("version", Words.Version);
        writer.WriteString("unit", Words.Of(Words.Units, unit));
    }

    /// <summary>A length as a number of the unit, to six decimals: finer than a tick in either unit.</summary>
    public static void Length(this Utf8JsonWriter writer, string name, Length length, LengthUnit unit) =>
        writer.Figure(name, Math.Round(length.To(unit), 6, MidpointRounding.AwayFromZero), "0.######");

    /// <summary>A length, or nothing at all.</summary>
    public static void Length(this Utf8JsonWriter writer, string name, Length? length, LengthUnit unit)
    {
        if (length is { } given)
            writer.Length(name, given, unit);
    }

    /// <summary>An amount, exact.</summary>
    public static void Money(this Utf8JsonWriter writer, string name, Money money) => writer.Figure(name, money.Amount, "0.####");

    /// <summary>An object as a member.</summary>
    public static void Member(this Utf8JsonWriter writer, string name, Action<Utf8JsonWriter> members)
    {
        writer.WritePropertyName(name);
        writer.Item(members);
    }

    /// <summary>A list of objects as a member.</summary>
    public static void List<T>(this Utf8JsonWriter writer, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> members)
    {
        writer.WriteStartArray(name);
        foreach (var item in items)
            writer.Item(inner => members(inner, item));
        writer.WriteEndArray();
    }

    private static void Item(this Utf8JsonWriter writer, Action<Utf8JsonWriter> members)
    {
        writer.WriteStartObject();
        members(writer);
        writer.WriteEndObject();
    }

    private static void Figure(this Utf8JsonWriter writer, string name, decimal figure, string format)
    {
        writer.WritePropertyName(name);
        writer.WriteRawValue(figure.ToString(format, CultureInfo.InvariantCulture));
    }
}
