using System.Collections.Immutable;
using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Reads a cut request (format <c>shop-planner/cut-request</c>, version 1). Unknown members are ignored.</summary>
public static class CutRequestReader
{
    /// <summary>Seconds to look when the request does not say.</summary>
    public const double UsualSeconds = 10;

    /// <summary>Reads a request; every fault is found and names its member.</summary>
    /// <param name="json">A JSON document in UTF-8, at most 50 MB.</param>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    public static DocumentReading<CutRequest> Read(Stream json)
    {
        ArgumentNullException.ThrowIfNull(json);
        var faults = new FaultList();
        using var document = JsonInput.Load(json, faults);
        return DocumentReading<CutRequest>.Of(document is null ? null : Read(document.RootElement, faults), faults);
    }

    private static CutRequest? Read(JsonElement root, FaultList faults)
    {
        if (Heading.Open(root, Words.Request, faults) is not { } members) return null;
        var materials = members.Objects("materials").Select(ReadMaterial).ToImmutableArray();
        var widths = Widths(materials);
        var request = new CutRequest(
            members.Unit,
            ReadSaw(members.Object("saw")),
            ReadKeep(members.Object("keep")),
            materials,
            [.. members.Objects("stock").Select(stock => ReadStock(stock, widths))],
            [.. members.Objects("parts").Select(part => ReadPart(part, widths))],
            new CutLimits(members.Object("limits").OptionalSeconds("seconds") ?? UsualSeconds));
        CutRequestRules.Check(request, faults);
        return request;
    }

    private static SawSettings ReadSaw(Members saw) => new(
        saw.OptionalLength("kerf") ?? default,
        saw.OptionalLength("boardEndTrim") ?? default,
        saw.OptionalLength("sheetEdgeTrim") ?? default);

    private static KeepRule ReadKeep(Members keep) => new(
        keep.OptionalLength("boardLength"), keep.OptionalLength("sheetLength"), keep.OptionalLength("sheetWidth"));

    private static CutMaterial ReadMaterial(Members material)
    {
        var form = material.Choice("form", Words.Form, null);
        return new(
            material.Text("id"), form, material.OptionalSize("thickness"),
            form == StockForm.Board && material.Has("form") ? material.Size("width") : null);
    }

    private static CutStock ReadStock(Members stock, Dictionary<string, Length?> widths)
    {
        var material = stock.Text("material");
        return new(
            stock.Text("id"), material, stock.Size("length"), Width(stock, material, widths), stock.Price("price"),
            stock.OptionalCount("quantity", 0, int.MaxValue), stock.Flag("offcut"));
    }

    private static CutPart ReadPart(Members part, Dictionary<string, Length?> widths)
    {
        var id = part.Text("id");
        var material = part.Text("material");
        return new(
            id, part.OptionalText("name") ?? id, material, part.Size("length"), Width(part, material, widths),
            part.Choice("grain", Words.Grain, Grain.Length), part.OptionalCount("quantity", 1, CutRequestRules.MostPieces) ?? 1);
    }

    // A board gives its width to what does not say otherwise; a sheet has none to give. Of an unknown material nothing is known.
    private static Length Width(Members members, string material, Dictionary<string, Length?> widths)
    {
        if (!widths.TryGetValue(material, out var boardWidth)) return members.OptionalSize("width") ?? default;
        return boardWidth is { } width ? members.OptionalSize("width") ?? width : members.Size("width");
    }

    private static Dictionary<string, Length?> Widths(ImmutableArray<CutMaterial> materials)
    {
        var widths = new Dictionary<string, Length?>(StringComparer.Ordinal);
        foreach (var material in materials) widths.TryAdd(material.Id, material.Width);
        return widths;
    }
}
