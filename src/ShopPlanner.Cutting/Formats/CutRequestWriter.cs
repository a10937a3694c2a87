using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Writes a cut request so that it reads back equal.</summary>
internal static class CutRequestWriter
{
    public static string Write(CutRequest request) => JsonOutput.Object(writer =>
    {
        writer.Header(Words.Request, request.Unit);
        writer.Member("saw", inner => Saw(inner, request.Saw, request.Unit));
        writer.Member("keep", inner => Keep(inner, request.Keep, request.Unit));
        writer.List("materials", request.Materials, (inner, material) => Material(inner, material, request.Unit));
        writer.List("stock", request.Stock, (inner, stock) => Stock(inner, stock, request.Unit));
        writer.List("parts", request.Parts, (inner, part) => Part(inner, part, request.Unit));
        writer.Member("limits", inner => inner.WriteNumber("seconds", request.Limits.Seconds));
    });

    private static void Saw(Utf8JsonWriter writer, SawSettings saw, LengthUnit unit)
    {
        writer.Length("kerf", saw.Kerf, unit);
        writer.Length("boardEndTrim", saw.BoardEndTrim, unit);
        writer.Length("sheetEdgeTrim", saw.SheetEdgeTrim, unit);
    }

    private static void Keep(Utf8JsonWriter writer, KeepRule keep, LengthUnit unit)
    {
        writer.Length("boardLength", keep.BoardLength, unit);
        writer.Length("sheetLength", keep.SheetLength, unit);
        writer.Length("sheetWidth", keep.SheetWidth, unit);
    }

    private static void Material(Utf8JsonWriter writer, CutMaterial material, LengthUnit unit)
    {
        writer.WriteString("id", material.Id);
        writer.WriteString("form", Words.Of(Words.Forms, material.Form));
        writer.Length("thickness", material.Thickness, unit);
        writer.Length("width", material.Width, unit);
    }

    private static void Stock(Utf8JsonWriter writer, CutStock stock, LengthUnit unit)
    {
        writer.WriteString("id", stock.Id);
        writer.WriteString("material", stock.Material);
        writer.Length("length", stock.Length, unit);
        writer.Length("width", stock.Width, unit);
        writer.Money("price", stock.Price);
        if (stock.Quantity is { } quantity) writer.WriteNumber("quantity", quantity);
        else writer.WriteNull("quantity");
        writer.WriteBoolean("offcut", stock.Offcut);
    }

    private static void Part(Utf8JsonWriter writer, CutPart part, LengthUnit unit)
    {
        writer.WriteString("id", part.Id);
        writer.WriteString("name", part.Name);
        writer.WriteString("material", part.Material);
        writer.Length("length", part.Length, unit);
        writer.Length("width", part.Width, unit);
        writer.WriteString("grain", Words.Of(Words.Grains, part.Grain));
        writer.WriteNumber("quantity", part.Quantity);
    }
}
