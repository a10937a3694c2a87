using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Reads the members of a cut request one by one; what holds between members is for <see cref="CutRequestRules"/>.
/// </summary>
internal sealed class CutRequestReader(DocumentObject root, LengthUnit unit, int version)
{
    private const double DefaultSeconds = 10;

    public CutRequestDraft Read() =>
        new(
            unit,
            Saw(root["saw"].Object()),
            Keep(root["keep"].Object()),
            Entries("materials", Material),
            Entries("stock", Stock),
            Entries("parts", Part),
            Seconds(root["limits"].Object()["seconds"])
        )
        {
            Store = Store(root["store"]),
            Carry = Carry(root["carry"]),
        };

    private T[] Entries<T>(string name, Func<DocumentObject, T> read) =>
        [
            .. root[name]
                .Required("write a list […]")
                .Items(CutRequestRanges.MostEntries)
                .Select(item => read(item.Required("write an object {…}").Object())),
        ];

    private static double? Seconds(DocumentValue value) =>
        value.Present ? value.Seconds(CutRequestRanges.MostSeconds) : DefaultSeconds;

    private SawDraft Saw(DocumentObject saw) =>
        new(
            saw["kerf"].Length(unit),
            saw["boardEndTrim"].Length(unit),
            saw["sheetEdgeTrim"].Length(unit),
            saw["widestRip"].Size(unit),
            saw["longestCrosscut"].Size(unit)
        );

    private KeepRule Keep(DocumentObject keep) =>
        new(keep["boardLength"].Length(unit), keep["sheetLength"].Length(unit), keep["sheetWidth"].Length(unit));

    private StoreCuts? Store(DocumentValue value)
    {
        if (!value.Present)
            return null;
        var store = value.Object();
        return new(
            store["cuts"].Required("write how many cuts the store makes in one sheet").Count(1, CutRequestRanges.MostStoreCuts)
                ?? 1,
            store["tolerance"].Length(unit) ?? Length.Zero
        );
    }

    private CarryLimit? Carry(DocumentValue value)
    {
        if (!value.Present)
            return null;
        var carry = value.Object();
        return new(Size(carry["longest"]) ?? Length.Zero, Size(carry["widest"]) ?? Length.Zero);
    }

    private MaterialDraft Material(DocumentObject material) =>
        new(
            Id(material["id"]),
            material["form"].Required("write \"board\" or \"sheet\"").OneOf(Words.Forms),
            material["thickness"].Size(unit),
            material["width"].Size(unit)
        );

    private StockDraft Stock(DocumentObject stock) =>
        new(
            Id(stock["id"]),
            MaterialId(stock["material"]),
            Size(stock["length"]),
            stock["width"].Size(unit),
            stock["price"].Present ? stock["price"].Price() : Money.Zero,
            stock["quantity"].Count(0, CutRequestRanges.MostStock),
            stock["offcut"].Flag() ?? false,
            stock["storeCuts"].Flag() ?? true
        )
        {
            Untrimmed = Edges(Later(stock["untrimmed"])),
            BadPlaces =
            [
                .. Later(stock["badPlaces"])
                    .Items(CutStock.MostBadPlaces)
                    .Select(item => Place(item.Required("write an object {…}").Object())),
            ],
        };

    // Another program would pass such a member over in a document of the first version.
    private DocumentValue Later(DocumentValue value)
    {
        if (value.Present && version < Words.PlacesVersion)
            value.Refuse($"belongs to version {Words.PlacesVersion}: write \"version\": {Words.PlacesVersion}");
        return value;
    }

    private static StockEdges? Edges(DocumentValue list)
    {
        if (!list.Present)
            return null;
        var edges = StockEdges.None;
        foreach (var item in list.Items(Words.Edges.Count))
        {
            if (item.Required("write one of " + string.Join(", ", Words.Edges.Keys)).OneOf(Words.Edges) is not { } edge)
                continue;
            if (edges.HasFlag(edge))
                item.Refuse("is given twice: keep one of the two");
            edges |= edge;
        }

        return edges;
    }

    private PlaceDraft Place(DocumentObject place) =>
        new(place["x"].Length(unit), place["y"].Length(unit), Size(place["dx"]), place["dy"].Size(unit));

    private PartDraft Part(DocumentObject part) =>
        new(
            Id(part["id"]),
            part["name"].Text(),
            MaterialId(part["material"]),
            Size(part["length"]),
            part["width"].Size(unit),
            part["grain"].Present ? part["grain"].OneOf(Words.Grains) : Grain.Length,
            part["quantity"].Present ? part["quantity"].Count(1, CutRequestRanges.MostPieces) : 1
        )
        {
            FinishedLength = part["finishedLength"].Size(unit),
            FinishedWidth = part["finishedWidth"].Size(unit),
            PracticeFor = part["practiceFor"].Id(),
        };

    private Length? Size(DocumentValue value) => value.Required("write a length like \"34 1/2\"").Size(unit);

    private static string? Id(DocumentValue value) => value.Required("write a short name, each one once").Id();

    private static string? MaterialId(DocumentValue value) => value.Required("write the id of a material").Id();
}
