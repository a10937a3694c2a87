using System.Text.Json;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Documents;

/// <summary>Writes a design so that it reads back equal.</summary>
internal static class DesignWriter
{
    // Stored and compared without the line feed at the end.
    public static string Write(DesignDocument document) => JsonOutput.Object(writer => Write(writer, document)).TrimEnd('\n');

    private static void Write(Utf8JsonWriter writer, DesignDocument document)
    {
        writer.WriteString("format", DesignJson.Format);
        writer.WriteNumber("version", Version(document));
        writer.WriteString("unit", DocumentWords.Of(DocumentWords.Units, document.Unit));
        writer.WriteString("name", document.Name);
        writer.WriteString("says", document.Says);
        writer.List("dimensions", document.Dimensions, Dimension);
        writer.List("materials", document.Materials, (inner, one) => Material(inner, one, document.Unit));
        writer.Member("frame", inner => Node(inner, document.Frame));
        if (document.Bays is { } bays)
            writer.Member("bays", inner => Bay(inner, bays));
        if (document.Top is { } top)
            writer.Member("top", inner => Node(inner, top));
        writer.List("parts", document.Parts, Part);
        if (!document.Shapes.IsEmpty)
            writer.List("shapes", document.Shapes, Shape);
        writer.List("hardware", document.Hardware, Hardware);
        writer.Texts("steps", document.Steps);
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
        writer.WriteString("form", DocumentWords.Of(DesignReader.Forms, material.Form));
        writer.WriteString("thickness", LengthFormat.Exact(material.Thickness, unit));
        if (material.Width is { } width)
            writer.WriteString("width", LengthFormat.Exact(width, unit));
        if (material.Species is { } species)
            writer.WriteString("species", species);
    }

    private static void Node(Utf8JsonWriter writer, DesignNode node)
    {
        writer.WriteString("kind", node.Kind);
        foreach (var (name, value) in node.Members.OrderBy(one => one.Key, StringComparer.Ordinal))
            writer.WriteString(name, value);
    }

    private static void Bay(Utf8JsonWriter writer, BayNode bay)
    {
        writer.List("fills", bay.Fills, Node);
        if (bay.Split is { } split)
            writer.Member("split", inner => Node(inner, split));
        if (bay.Bays.IsEmpty)
            return;
        writer.Texts("sizes", bay.Sizes);
        writer.List("bays", bay.Bays, Bay);
    }

    private static void Part(Utf8JsonWriter writer, FreePart part)
    {
        writer.WriteString("name", part.Name);
        writer.WriteString("material", part.Role);
        writer.WriteString("length", part.Length);
        if (part.Width is { } width)
            writer.WriteString("width", width);
        writer.WriteString("along", DocumentWords.Of(DesignReader.Directions, part.Along));
        writer.WriteString("flat", DocumentWords.Of(DesignReader.Directions, part.Flat));
        writer.WriteStartArray("at");
        foreach (var corner in part.At)
        {
            writer.WriteStartArray();
            foreach (var text in corner)
                writer.WriteStringValue(text);
            writer.WriteEndArray();
        }

        writer.WriteEndArray();
        if (part.Repeat is { } repeat)
            writer.Member("repeat", inner => Repeat(inner, repeat));
        if (part.AnyGrain)
            writer.WriteString("grain", DocumentWords.Of(DesignReader.Grains, true));
        if (!part.Joints.IsEmpty)
            writer.List("joints", part.Joints, Joint);
        if (!part.Shapes.IsEmpty)
            writer.List("shapes", part.Shapes, Node);
        if (!part.Edges.IsEmpty)
            writer.List("edges", part.Edges, Node);
    }

    private static void Shape(Utf8JsonWriter writer, AppliedShape shape)
    {
        writer.WriteString("of", shape.Of);
        Node(writer, shape.Shape);
    }

    private static void Repeat(Utf8JsonWriter writer, PartRepeat repeat)
    {
        writer.WriteString("count", repeat.Count);
        writer.Texts("step", repeat.Step);
    }

    private static void Joint(Utf8JsonWriter writer, PartJoint joint)
    {
        writer.WriteString("with", joint.With);
        writer.WriteString("kind", DocumentWords.Of(DesignReader.Joints, joint.Kind));
        writer.WriteString("along", DocumentWords.Of(DesignReader.Directions, joint.Along));
        if (joint.Depth is { } depth)
            writer.WriteString("depth", depth);
    }

    // The least version that says all that stands in the document: older programs read what they can.
    private static int Version(DesignDocument document) =>
        !document.Shapes.IsEmpty || document.Parts.Any(IsOfVersionTwo) ? DesignJson.Version : DesignJson.First;

    private static bool IsOfVersionTwo(FreePart part) =>
        part
            is { Repeat: not null }
                or { AnyGrain: true }
                or { Joints.IsEmpty: false }
                or { Shapes.IsEmpty: false }
                or { Edges.IsEmpty: false };

    private static void Hardware(Utf8JsonWriter writer, HardwareEntry entry)
    {
        writer.WriteString("name", entry.Name);
        writer.WriteString("quantity", entry.Quantity);
    }
}
