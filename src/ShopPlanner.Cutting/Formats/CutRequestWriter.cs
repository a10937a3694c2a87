namespace ShopPlanner.Cutting.Formats;

/// <summary>Writes a cut request; <see cref="CutRequestReader"/> reads the same back.</summary>
public static class CutRequestWriter
{
    /// <summary>Writes the whole document.</summary>
    /// <exception cref="IOException">The stream cannot be written.</exception>
    public static void Write(CutRequest request, Stream to)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(to);
        using var json = new JsonOutput(to, Words.Request, request.Unit);
        json.Object("saw", () => WriteSaw(json, request.Saw));
        json.Object("keep", () => WriteKeep(json, request.Keep));
        json.Objects("materials", request.Materials, material => WriteMaterial(json, material));
        json.Objects("stock", request.Stock, stock => WriteStock(json, stock));
        json.Objects("parts", request.Parts, part => WritePart(json, part));
        json.Object("limits", () => json.Seconds("seconds", request.Limits.Seconds));
    }

    private static void WriteSaw(JsonOutput json, SawSettings saw)
    {
        json.Length("kerf", saw.Kerf);
        json.Length("boardEndTrim", saw.BoardEndTrim);
        json.Length("sheetEdgeTrim", saw.SheetEdgeTrim);
    }

    private static void WriteKeep(JsonOutput json, KeepRule keep)
    {
        json.Length("boardLength", keep.BoardLength);
        json.Length("sheetLength", keep.SheetLength);
        json.Length("sheetWidth", keep.SheetWidth);
    }

    private static void WriteMaterial(JsonOutput json, CutMaterial material)
    {
        json.Text("id", material.Id);
        json.Text("form", Words.Form.Word(material.Form));
        json.Length("thickness", material.Thickness);
        json.Length("width", material.Width);
    }

    private static void WriteStock(JsonOutput json, CutStock stock)
    {
        json.Text("id", stock.Id);
        json.Text("material", stock.Material);
        json.Length("length", stock.Length);
        json.Length("width", stock.Width);
        json.Money("price", stock.Price);
        if (stock.Quantity is { } quantity) json.Count("quantity", quantity);
        json.Flag("offcut", stock.Offcut);
    }

    private static void WritePart(JsonOutput json, CutPart part)
    {
        json.Text("id", part.Id);
        json.Text("name", part.Name);
        json.Text("material", part.Material);
        json.Length("length", part.Length);
        json.Length("width", part.Width);
        json.Text("grain", Words.Grain.Word(part.Grain));
        json.Count("quantity", part.Quantity);
    }
}
