using System.Text.Json;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>What is cut out of a copy, and what is done to its edges, as JSON. Every shape has its least box, measured from the
/// corner of the copy nearest the origin.</summary>
internal static class FeatureJson
{
    public static void Write(Utf8JsonWriter writer, PartCopy copy, LengthUnit unit)
    {
        if (!copy.Features.IsEmpty)
            writer.List("shapes", copy.Features, (inner, one) => Shape(inner, one, copy.Box, unit));
        if (!copy.Edges.IsEmpty)
            writer.List("edges", copy.Edges, (inner, one) => Edge(inner, one, unit));
    }

    private static void Shape(Utf8JsonWriter writer, PartFeature feature, Box whole, LengthUnit unit)
    {
        writer.WriteString("kind", Words.Feature(feature));
        Own(writer, feature, unit);
        writer.Box(feature.Room(whole).Moved(-whole.X, -whole.Y, -whole.Z), unit);
    }

    // What the box alone does not tell.
    private static void Own(Utf8JsonWriter writer, PartFeature feature, LengthUnit unit)
    {
        switch (feature)
        {
            case Hole hole:
                writer.WriteString("face", Words.Side(hole.Face));
                writer.Length("diameter", hole.Diameter, unit);
                writer.Length("depth", hole.Depth, unit);
                break;
            case Slot slot:
                writer.WriteString("face", Words.Side(slot.Face));
                writer.WriteString("run", Words.Axis(slot.Run));
                break;
            case Notch notch:
                writer.WriteString("through", Words.Axis(notch.Through));
                break;
            case Bevel bevel:
                writer.WriteString("edge", Words.Side(bevel.Edge));
                writer.WriteString("keeps", Words.Side(bevel.Keeps));
                writer.WriteNumber("angle", bevel.Degrees);
                break;
            case Taper taper:
                writer.WriteString("face", Words.Side(taper.Face));
                writer.WriteString("end", Words.Side(taper.End));
                break;
            case Arc arc:
                writer.WriteString("edge", Words.Side(arc.Edge));
                writer.WriteString("run", Words.Axis(arc.Run));
                writer.WriteString("bend", arc.IsHollow ? "hollow" : "crown");
                writer.Length("radius", arc.Radius, unit);
                break;
            case Corner corner:
                writer.WriteString("first", Words.Side(corner.First));
                writer.WriteString("second", Words.Side(corner.Second));
                writer.Length("radius", corner.Radius, unit);
                break;
        }
    }

    private static void Edge(Utf8JsonWriter writer, EdgeTreatment edge, LengthUnit unit)
    {
        writer.WriteString("side", Words.Side(edge.Side));
        writer.WriteString("kind", Words.Edge(edge.Work));
        if (edge.Size.IsPositive)
            writer.Length("size", edge.Size, unit);
    }
}
