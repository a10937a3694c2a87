using System.Text.Json;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>The parts of a piece as JSON for other programs: lengths are numbers of the design's unit. The members are described
/// in the README of the designs.</summary>
public static class PartsJson
{
    /// <summary>The document, ended by a line feed.</summary>
    public static string Write(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return JsonOutput.Object(writer => Write(writer, piece));
    }

    private static void Write(Utf8JsonWriter writer, Piece piece)
    {
        writer.WriteString("unit", DocumentWords.Of(DocumentWords.Units, piece.Unit));
        writer.Member("outside", inner => inner.Extents(piece.Outside, piece.Unit));
        writer.List("parts", piece.Parts, (inner, part) => Part(inner, part, piece.Unit));
        writer.List("joints", piece.Joints, (inner, joint) => Joint(inner, joint, piece.Unit));
        writer.List("hardware", piece.Hardware, Hardware);
        writer.Texts("steps", piece.Steps);
        writer.List("warnings", PieceJudge.Of(piece), Warning);
    }

    private static void Part(Utf8JsonWriter writer, PiecePart part, LengthUnit unit)
    {
        writer.WriteString("id", part.Id);
        writer.WriteString("name", part.Name);
        writer.WriteString("material", part.Material.Role);
        writer.WriteNumber("quantity", part.Quantity);
        writer.Length("length", part.Length.Value, unit);
        writer.Length("width", part.Width.Value, unit);
        writer.Length("thickness", part.Thickness.Value, unit);
        writer.Member(
            "rough",
            inner =>
            {
                inner.Length("length", part.RoughLength, unit);
                inner.Length("width", part.RoughWidth, unit);
            }
        );
        writer.WriteString("grain", Words.Grain(part));
        if (Words.Purpose(part) is { } purpose)
            writer.WriteString("purpose", purpose);
        writer.List("copies", part.Copies, (inner, copy) => Copy(inner, copy, unit));
    }

    private static void Copy(Utf8JsonWriter writer, PartCopy copy, LengthUnit unit)
    {
        writer.WriteString("mark", copy.Mark);
        writer.Box(copy.Box, unit);
        if (copy.ToeNotch is { } notch)
            writer.Member(
                "notch",
                inner =>
                {
                    inner.Length("deep", notch.Deep, unit);
                    inner.Length("high", notch.High, unit);
                }
            );
        FeatureJson.Write(writer, copy, unit);
    }

    private static void Joint(Utf8JsonWriter writer, Joint joint, LengthUnit unit)
    {
        writer.WriteString("kind", Words.Joint(joint.Kind));
        writer.WriteString("from", joint.From);
        writer.WriteString("into", joint.Into);
        writer.WriteString("along", Words.Axis(joint.Along));
        writer.Length("depth", joint.Depth, unit);
        if (joint.Clearance.IsPositive)
            writer.Length("clearance", joint.Clearance, unit);
    }

    private static void Warning(Utf8JsonWriter writer, PieceWarning warning)
    {
        writer.WriteString("severity", Words.Severity(warning.Severity));
        writer.WriteString("text", warning.Text);
        if (warning.Part is { } part)
            writer.WriteString("part", part);
        if (warning.Place is { } place)
            writer.WriteString("place", place);
    }

    private static void Hardware(Utf8JsonWriter writer, HardwareItem item)
    {
        writer.WriteString("name", item.Name);
        writer.WriteNumber("quantity", item.Quantity);
    }
}
