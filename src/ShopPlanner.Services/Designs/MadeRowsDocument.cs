using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Designs;

/// <summary>A row of the parts list that stands for a part of the idea.</summary>
internal sealed record MadeRow([property: JsonPropertyName("mark")] string Mark, [property: JsonPropertyName("row")] Guid Row);

/// <summary>The rows of a parts list that were made from an idea.</summary>
internal sealed record MadeRowsDocument([property: JsonPropertyName("rows")] ImmutableArray<MadeRow> Rows)
{
    /// <summary>Format <c>shop-planner/made-rows</c>.</summary>
    public static readonly StoredFormat<MadeRowsDocument> Format = new("shop-planner/made-rows", First);

    /// <summary>The rows of a document.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static ImmutableArray<MadeRow> Read(string text) => Format.Read(text).Rows;

    /// <summary>A document of these rows.</summary>
    public static string Write(IEnumerable<MadeRow> rows) => Format.Write(new([.. rows]));

    private static JsonObject First(JsonNode rows) =>
        new() { ["rows"] = rows.Items(row => row.Renamed(("Mark", "mark"), ("Row", "row"))) };
}
