using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>Writes what is exported as JSON: indented, members in the order written, numbers in plain digits.</summary>
internal static class JsonOutput
{
    // Files, not parts of a page: names keep their accents, quotes and signs readable.
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
        return Encoding.UTF8.GetString(buffer.ToArray()) + "\n";
    }

    /// <summary>A length as a number of the unit, to six decimals: finer than a tick in either unit.</summary>
    public static void Length(this Utf8JsonWriter writer, string name, Length length, LengthUnit unit)
    {
        writer.WritePropertyName(name);
        writer.WriteRawValue(Number(length, unit));
    }

    /// <summary>The same as text.</summary>
    public static string Number(Length length, LengthUnit unit) =>
        Math.Round(length.To(unit), 6, MidpointRounding.AwayFromZero).ToString("0.######", CultureInfo.InvariantCulture);

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

    /// <summary>A list of numbers as a member.</summary>
    public static void Numbers(this Utf8JsonWriter writer, string name, params ReadOnlySpan<decimal> numbers)
    {
        writer.WriteStartArray(name);
        foreach (var number in numbers)
            writer.WriteNumberValue(number);
        writer.WriteEndArray();
    }

    private static void Item(this Utf8JsonWriter writer, Action<Utf8JsonWriter> members)
    {
        writer.WriteStartObject();
        members(writer);
        writer.WriteEndObject();
    }
}
