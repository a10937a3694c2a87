using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Documents;

/// <summary>Writes a design so that it reads back equal.</summary>
internal static class DesignWriter
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Write(DesignDocument document)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Options))
            Write(writer, document);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Write(Utf8JsonWriter writer, DesignDocument document)
    {
        writer.WriteStartObject();
        writer.WriteString("format", DesignJson.Format);
        writer.WriteNumber("version", DesignJson.Version);
        writer.WriteString("unit", Word(DesignReader.Units, document.Unit));
        writer.WriteString("name", document.Name);
        writer.WriteString("says", document.Says);
        List(writer, "dimensions", document.Dimensions, Dimension);
        List(writer, "materials", document.Materials, (inner, one) => Material(inner, one, document.Unit));
        Node(writer, "frame", document.Frame);
        if (document.Bays is { } bays)
            Bay(writer, "bays", bays);
        if (document.Top is { } top)
            Node(writer, "top", top);
        List(writer, "parts", document.Parts, Part);
        List(writer, "hardware", document.Hardware, Hardware);
        Texts(writer, "steps", document.Steps);
        writer.WriteEndObject();
    }

    private static void Dimension(Utf8JsonWriter writer, DesignDimension dimension)
    {
        writer.WriteString("name", dimension.Name);
        writer.WriteString("label", dimension.Label);
        writer.WriteString("kind", dimension.IsCount ? "count" : "length");
        writer.WriteString("value", dimension.Value);
        if (dimension.Least is { } least)
            writer.WriteString("least", least);
        if (dimension.Most is { } most)
            writer.WriteString("most", most);
    }

    private static void Material(Utf8JsonWriter writer, RoleMaterial material, LengthUnit unit)
    {
        writer.WriteString("role", material.Role);
        if (material.Id is { } id)
            writer.WriteString("material", id);
        writer.WriteString("name", material.Name);
        writer.WriteString("form", Word(DesignReader.Forms, material.Form));
        writer.WriteString("thickness", LengthFormat.Exact(material.Thickness, unit));
        if (material.Width is { } width)
            writer.WriteString("width", LengthFormat.Exact(width, unit));
        if (material.Species is { } species)
            writer.WriteString("species", species);
    }

    private static void Node(Utf8JsonWriter writer, string name, DesignNode node)
    {
        writer.WriteStartObject(name);
        Members(writer, node);
        writer.WriteEndObject();
    }

    private static void Members(Utf8JsonWriter writer, DesignNode node)
    {
        writer.WriteString("kind", node.Kind);
        foreach (var (name, value) in node.Members.OrderBy(one => one.Key, StringComparer.Ordinal))
            writer.WriteString(name, value);
    }

    private static void Bay(Utf8JsonWriter writer, string? name, BayNode bay)
    {
        if (name is null)
            writer.WriteStartObject();
        else
            writer.WriteStartObject(name);
        List(writer, "fills", bay.Fills, Members);
        if (bay.Split is { } split)
            Node(writer, "split", split);
        if (!bay.Bays.IsEmpty)
        {
            Texts(writer, "sizes", bay.Sizes);
            writer.WriteStartArray("bays");
            foreach (var inner in bay.Bays)
                Bay(writer, null, inner);
            writer.WriteEndArray();
        }

        writer.WriteEndObject();
    }

    private static void Part(Utf8JsonWriter writer, FreePart part)
    {
        writer.WriteString("name", part.Name);
        writer.WriteString("material", part.Role);
        writer.WriteString("length", part.Length);
        if (part.Width is { } width)
            writer.WriteString("width", width);
        writer.WriteString("along", Word(DesignReader.Directions, part.Along));
        writer.WriteString("flat", Word(DesignReader.Directions, part.Flat));
        writer.WriteStartArray("at");
        foreach (var corner in part.At)
            Texts(writer, null, corner);
        writer.WriteEndArray();
    }

    private static void Hardware(Utf8JsonWriter writer, HardwareEntry entry)
    {
        writer.WriteString("name", entry.Name);
        writer.WriteString("quantity", entry.Quantity);
    }

    private static void List<T>(Utf8JsonWriter writer, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        writer.WriteStartArray(name);
        foreach (var item in items)
        {
            writer.WriteStartObject();
            write(writer, item);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    private static void Texts(Utf8JsonWriter writer, string? name, IEnumerable<string> texts)
    {
        if (name is null)
            writer.WriteStartArray();
        else
            writer.WriteStartArray(name);
        foreach (var text in texts)
            writer.WriteStringValue(text);
        writer.WriteEndArray();
    }

    private static string Word<T>(Dictionary<string, T> words, T value)
        where T : struct => words.First(one => one.Value.Equals(value)).Key;
}
