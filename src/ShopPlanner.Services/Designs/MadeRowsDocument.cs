using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Designs;

/// <summary>A row of the parts list that stands for a part of the idea.</summary>
/// <param name="Mark">The part's letter.</param>
/// <param name="Row">The row's id.</param>
/// <param name="Said">What the texts that the design wrote into the row mean, the latest first, each by the key of a <see
/// cref="RowField"/>. Undoing brings earlier texts back, so several are known; none where an earlier version of the program made
/// the row.</param>
internal sealed record MadeRow(
    [property: JsonPropertyName("mark")] string Mark,
    [property: JsonPropertyName("row")] Guid Row,
    [property: JsonPropertyName("said")] ImmutableArray<ImmutableSortedDictionary<string, string>> Said
);

/// <summary>The rows of a parts list that were made from an idea.</summary>
internal sealed record MadeRowsDocument([property: JsonPropertyName("rows")] ImmutableArray<MadeRow> Rows)
{
    /// <summary>Format <c>shop-planner/made-rows</c>.</summary>
    public static readonly StoredFormat<MadeRowsDocument> Format = new("shop-planner/made-rows", First, Second);

    /// <summary>The rows of a document.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static ImmutableArray<MadeRow> Read(string text) => Format.Read(text).Rows;

    /// <summary>A document of these rows.</summary>
    public static string Write(IEnumerable<MadeRow> rows) => Format.Write(new([.. rows]));

    private static JsonObject First(JsonNode rows) =>
        new() { ["rows"] = rows.Items(row => row.Renamed(("Mark", "mark"), ("Row", "row"))) };

    private static JsonObject Second(JsonNode document)
    {
        foreach (var row in document["rows"]!.AsArray())
            row!["said"] = new JsonArray();
        return document.AsObject();
    }
}
