using System.Text.Json;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Writes a cut request so that it reads back equal.</summary>
internal static class CutRequestWriter
{
    public static string Write(CutRequest request) =>
        JsonOutput.Object(writer =>
        {
            writer.Header(Words.Request, request.Unit, request.Stock.Any(SaysPlaces) ? Words.PlacesVersion : Words.Version);
            writer.Member("saw", inner => Saw(inner, request.Saw, request.Unit));
            if (request.Store is { } store)
                writer.Member("store", inner => Store(inner, store, request.Unit));
            if (request.Carry is { } carry)
                writer.Member("carry", inner => Carry(inner, carry, request.Unit));
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
        writer.Length("widestRip", saw.WidestRip, unit);
        writer.Length("longestCrosscut", saw.LongestCrosscut, unit);
    }

    private static void Store(Utf8JsonWriter writer, StoreCuts store, LengthUnit unit)
    {
        writer.WriteNumber("cuts", store.Most);
        writer.Length("tolerance", store.Tolerance, unit);
    }

    private static void Carry(Utf8JsonWriter writer, CarryLimit carry, LengthUnit unit)
    {
        writer.Length("longest", carry.Longest, unit);
        writer.Length("widest", carry.Widest, unit);
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
        writer.WriteString("form", DocumentWords.Of(Words.Forms, material.Form));
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
        if (stock.Quantity is { } quantity)
            writer.WriteNumber("quantity", quantity);
        else
            writer.WriteNull("quantity");
        writer.WriteBoolean("offcut", stock.Offcut);
        if (stock.SoldUncut)
            writer.WriteBoolean("storeCuts", false);
        if (stock.Untrimmed is { } edges)
            writer.Texts("untrimmed", Words.Edges.Where(word => edges.HasFlag(word.Value)).Select(word => word.Key));
        if (!stock.BadPlaces.IsEmpty)
            writer.List("badPlaces", stock.BadPlaces, (inner, place) => Place(inner, place, unit));
    }

    private static bool SaysPlaces(CutStock stock) => stock.Untrimmed is not null || !stock.BadPlaces.IsEmpty;

    private static void Place(Utf8JsonWriter writer, BadPlace place, LengthUnit unit)
    {
        writer.Length("x", place.X, unit);
        writer.Length("y", place.Y, unit);
        writer.Length("dx", place.Dx, unit);
        writer.Length("dy", place.Dy, unit);
    }

    private static void Part(Utf8JsonWriter writer, CutPart part, LengthUnit unit)
    {
        writer.WriteString("id", part.Id);
        writer.WriteString("name", part.Name);
        writer.WriteString("material", part.Material);
        writer.Length("length", part.Length, unit);
        writer.Length("width", part.Width, unit);
        writer.WriteString("grain", DocumentWords.Of(Words.Grains, part.Grain));
        writer.WriteNumber("quantity", part.Quantity);
        writer.Length("finishedLength", part.FinishedLength, unit);
        writer.Length("finishedWidth", part.FinishedWidth, unit);
        if (part.PracticeFor is { } other)
            writer.WriteString("practiceFor", other);
    }
}
