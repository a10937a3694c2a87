using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Projects;

/// <summary>Rows of a parts list at one moment, on one side of a step to undo.</summary>
internal sealed record PartRowsDocument([property: JsonPropertyName("rows")] ImmutableArray<PartRowsDocument.Row> Rows)
{
    /// <summary>Format <c>shop-planner/part-rows</c>.</summary>
    public static readonly StoredFormat<PartRowsDocument> Format = new("shop-planner/part-rows", First);

    /// <summary>The rows of a document.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static List<PartMoment> Read(string text) => [.. Format.Read(text).Rows.Select(row => row.Moment)];

    /// <summary>A document of these rows.</summary>
    public static string Write(IEnumerable<PartMoment> rows) => Format.Write(new([.. rows.Select(Row.Of)]));

    private static JsonObject First(JsonNode moments) => new() { ["rows"] = moments.Items(FirstRow) };

    private static JsonObject FirstRow(JsonNode moment)
    {
        var row = (moment["Texts"] ?? throw new KeyNotFoundException("the member Texts is missing")).Renamed(
            ("Id", "id"),
            ("Mark", "mark"),
            ("Name", "name"),
            ("Material", "material"),
            ("Length", "length"),
            ("Width", "width"),
            ("Quantity", "quantity"),
            ("CanTurn", "canTurn"),
            ("Note", "note"),
            ("LongBy", "longBy"),
            ("WideBy", "wideBy"),
            ("Practice", "practice")
        );
        foreach (var (name, value) in moment.Renamed(("Position", "position"), ("Version", "version")))
            row.Add(name, value?.DeepClone());
        return row;
    }

    internal sealed record Row(
        [property: JsonPropertyName("id")] Guid Id,
        [property: JsonPropertyName("mark")] string Mark,
        [property: JsonPropertyName("name")] string Name,
        [property: JsonPropertyName("material")] string Material,
        [property: JsonPropertyName("length")] string Length,
        [property: JsonPropertyName("width")] string Width,
        [property: JsonPropertyName("quantity")] string Quantity,
        [property: JsonPropertyName("canTurn")] bool CanTurn,
        [property: JsonPropertyName("note")] string Note,
        [property: JsonPropertyName("longBy")] string LongBy,
        [property: JsonPropertyName("wideBy")] string WideBy,
        [property: JsonPropertyName("practice")] string Practice,
        [property: JsonPropertyName("position")] long Position,
        [property: JsonPropertyName("version")] int Version
    )
    {
        [JsonIgnore]
        public PartMoment Moment =>
            new(
                new PartTexts(Id, Mark, Name, Material, Length, Width, Quantity, CanTurn, Note)
                {
                    LongBy = LongBy,
                    WideBy = WideBy,
                    Practice = Practice,
                },
                Position,
                Version
            );

        public static Row Of(PartMoment moment)
        {
            var texts = moment.Texts;
            return new(
                texts.Id,
                texts.Mark,
                texts.Name,
                texts.Material,
                texts.Length,
                texts.Width,
                texts.Quantity,
                texts.CanTurn,
                texts.Note,
                texts.LongBy,
                texts.WideBy,
                texts.Practice,
                moment.Position,
                moment.Version
            );
        }
    }
}
