using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Documents;

/// <summary>Writes JSON documents (RFC 8259): indented, members in the order written, numbers in plain digits.</summary>
public static class JsonOutput
{
    // Files, not parts of a page: names keep their accents, quotes and signs readable.
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>One object as text, ended by a line feed.</summary>
    /// <param name="members">Writes them.</param>
    public static string Object(Action<Utf8JsonWriter> members)
    {
        using var buffer = new MemoryStream();
        using (var writer = new Utf8JsonWriter(buffer, Options))
            writer.Item(members);
        return Encoding.UTF8.GetString(buffer.GetBuffer(), 0, (int)buffer.Length) + "\n";
    }

    /// <summary>A length as a number of the unit, to six decimals: finer than a tick in either unit.</summary>
    /// <param name="writer">Inside an object.</param>
    /// <param name="name">The member.</param>
    /// <param name="length">The length.</param>
    /// <param name="unit">Of the number.</param>
    public static void Length(this Utf8JsonWriter writer, string name, Length length, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WritePropertyName(name);
        writer.WriteRawValue(Number(length, unit));
    }

    /// <summary>A length, or nothing at all.</summary>
    /// <inheritdoc cref="Length(Utf8JsonWriter, string, Length, LengthUnit)" path="/param"/>
    public static void Length(this Utf8JsonWriter writer, string name, Length? length, LengthUnit unit)
    {
        if (length is { } given)
            writer.Length(name, given, unit);
    }

    /// <summary>A length as the text of that number.</summary>
    /// <param name="length">The length.</param>
    /// <param name="unit">Of the number.</param>
    public static string Number(Length length, LengthUnit unit) =>
        Math.Round(length.To(unit), 6, MidpointRounding.AwayFromZero).ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>An amount, exact.</summary>
    /// <param name="writer">Inside an object.</param>
    /// <param name="name">The member.</param>
    /// <param name="money">The amount.</param>
    public static void Money(this Utf8JsonWriter writer, string name, Money money)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WritePropertyName(name);
        writer.WriteRawValue(money.Amount.ToString("0.####", CultureInfo.InvariantCulture));
    }

    /// <summary>An object as a member.</summary>
    /// <param name="writer">Inside an object.</param>
    /// <param name="name">The member.</param>
    /// <param name="members">Writes those of the object.</param>
    public static void Member(this Utf8JsonWriter writer, string name, Action<Utf8JsonWriter> members)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WritePropertyName(name);
        writer.Item(members);
    }

    /// <summary>A list of objects as a member.</summary>
    /// <typeparam name="T">Of what each object is written.</typeparam>
    /// <param name="writer">Inside an object.</param>
    /// <param name="name">The member.</param>
    /// <param name="items">In order.</param>
    /// <param name="members">Writes those of one item.</param>
    public static void List<T>(this Utf8JsonWriter writer, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> members)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(items);
        writer.WriteStartArray(name);
        foreach (var item in items)
            writer.Item(inner => members(inner, item));
        writer.WriteEndArray();
    }

    /// <summary>A list of numbers as a member.</summary>
    /// <param name="writer">Inside an object.</param>
    /// <param name="name">The member.</param>
    /// <param name="numbers">In order.</param>
    public static void Numbers(this Utf8JsonWriter writer, string name, params ReadOnlySpan<decimal> numbers)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WriteStartArray(name);
        foreach (var number in numbers)
            writer.WriteNumberValue(number);
        writer.WriteEndArray();
    }

    /// <summary>A list of texts as a member.</summary>
    /// <param name="writer">Inside an object.</param>
    /// <param name="name">The member.</param>
    /// <param name="texts">In order; null for none.</param>
    public static void Texts(this Utf8JsonWriter writer, string name, IEnumerable<string?> texts)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(texts);
        writer.WriteStartArray(name);
        foreach (var text in texts)
            writer.WriteStringValue(text);
        writer.WriteEndArray();
    }

    private static void Item(this Utf8JsonWriter writer, Action<Utf8JsonWriter> members)
    {
        writer.WriteStartObject();
        members(writer);
        writer.WriteEndObject();
    }
}
