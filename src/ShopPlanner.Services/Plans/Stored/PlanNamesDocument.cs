using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>What the ids of a stored request stand for.</summary>
internal sealed record PlanNamesDocument(
    [property: JsonPropertyName("name")] string Name,
    [property: JsonPropertyName("stocks")] ImmutableSortedDictionary<string, PlanNamesDocument.Stock> Stocks,
    [property: JsonPropertyName("parts")] ImmutableSortedDictionary<string, PlanNamesDocument.Part> Parts,
    [property: JsonPropertyName("rows")] ImmutableSortedDictionary<string, Guid> Rows,
    [property: JsonPropertyName("pieces")] ImmutableSortedDictionary<string, Guid> Pieces,
    [property: JsonPropertyName("pricesSeen")] ImmutableSortedDictionary<string, DateOnly> PricesSeen,
    [property: JsonPropertyName("materials")] ImmutableSortedDictionary<string, string> Materials,
    [property: JsonPropertyName("units")] ImmutableSortedDictionary<Guid, string> Units,
    [property: JsonPropertyName("cutBefore")] ImmutableSortedDictionary<string, int> CutBefore
)
{
    /// <summary>Format <c>shop-planner/plan-names</c>.</summary>
    public static readonly StoredFormat<PlanNamesDocument> Format = new("shop-planner/plan-names", First);

    /// <summary>The names of a document.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static PlanBasis Read(string text)
    {
        var names = Format.Read(text);
        return new(
            names.Name,
            Each(
                names.Stocks,
                (id, stock) => new PlanStockName(id, stock.Name, stock.Tag, stock.Store, stock.Tint) { Note = stock.Note }
            ),
            Each(names.Parts, (id, part) => new PlanPartName(id, part.Mark, part.Name, part.Project, part.ProjectName)),
            Each(names.Rows, (_, row) => row),
            Each(names.Pieces, (_, piece) => piece),
            Each(names.PricesSeen, (_, day) => day),
            Each(names.Materials, (_, name) => name),
            names.Units.ToImmutableSortedDictionary(pair => pair.Key, pair => UnitOf(pair.Value))
        )
        {
            CutBefore = Each(names.CutBefore, (_, pieces) => pieces),
        };
    }

    /// <summary>A document of these names.</summary>
    public static string Write(PlanBasis basis) =>
        Format.Write(
            new(
                basis.Name,
                Each(basis.Stocks, (_, stock) => new Stock(stock.Name, stock.Tag, stock.Store, stock.Tint, stock.Note)),
                Each(basis.Parts, (_, part) => new Part(part.Mark, part.Name, part.ProjectId, part.Project)),
                basis.Rows,
                basis.Pieces,
                basis.Seen,
                basis.Materials,
                basis.Units.ToImmutableSortedDictionary(
                    pair => pair.Key,
                    pair => DocumentWords.Of(DocumentWords.Units, pair.Value)
                ),
                basis.CutBefore
            )
        );

    // Ids are compared letter by letter, whatever the language of the computer.
    private static ImmutableSortedDictionary<string, TTo> Each<TFrom, TTo>(
        ImmutableSortedDictionary<string, TFrom> values,
        Func<string, TFrom, TTo> change
    ) => values.ToImmutableSortedDictionary(pair => pair.Key, pair => change(pair.Key, pair.Value), StringComparer.Ordinal);

    private static LengthUnit UnitOf(string word) =>
        DocumentWords.Units.TryGetValue(word, out var unit)
            ? unit
            : throw new StoredDocumentException("shop-planner/plan-names", $"is damaged: the unit “{word}” is neither in nor mm");

    private static JsonObject First(JsonNode names)
    {
        var renamed = names.Renamed(
            ("Name", "name"),
            ("Stocks", "stocks"),
            ("Parts", "parts"),
            ("Rows", "rows"),
            ("Pieces", "pieces"),
            ("Seen", "pricesSeen"),
            ("Materials", "materials"),
            ("Units", "units"),
            ("CutBefore", "cutBefore")
        );
        renamed["stocks"] = renamed["stocks"]!.Each(FirstStock);
        renamed["parts"] = renamed["parts"]!.Each(FirstPart);
        renamed["units"] = renamed["units"]!.Each(unit => unit.GetValue<string>() == "Inch" ? "in" : "mm");
        return renamed;
    }

    private static JsonObject FirstStock(JsonNode stock) =>
        stock.Renamed(("Name", "name"), ("Tag", "tag"), ("Store", "store"), ("Tint", "tint"), ("Note", "note"));

    private static JsonObject FirstPart(JsonNode part) =>
        part.Renamed(("Mark", "mark"), ("Name", "name"), ("ProjectId", "project"), ("Project", "projectName"));

    internal sealed record Stock(
        [property: JsonPropertyName("name")] string Name,
        [property: JsonPropertyName("tag")] string? Tag,
        [property: JsonPropertyName("store")] string? Store,
        [property: JsonPropertyName("tint")] string Tint,
        [property: JsonPropertyName("note")] string Note
    );

    internal sealed record Part(
        [property: JsonPropertyName("mark")] string Mark,
        [property: JsonPropertyName("name")] string Name,
        [property: JsonPropertyName("project")] Guid Project,
        [property: JsonPropertyName("projectName")] string ProjectName
    );
}
