using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace ShopPlanner.Services.Storage.Documents;

/// <summary>Texts by name, as they were typed: the values set for an idea, or given to a kept working.</summary>
/// <param name="Texts">By name, in its order.</param>
internal sealed record TextsDocument([property: JsonPropertyName("texts")] ImmutableSortedDictionary<string, string> Texts)
{
    /// <summary>Format <c>shop-planner/texts</c>.</summary>
    public static readonly StoredFormat<TextsDocument> Format = new("shop-planner/texts", First);

    /// <summary>The texts of a document.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static ImmutableSortedDictionary<string, string> Read(string text) => Format.Read(text).Texts;

    /// <summary>A document of these texts.</summary>
    public static string Write(ImmutableSortedDictionary<string, string> texts) => Format.Write(new(texts));

    private static JsonObject First(JsonNode texts) => new() { ["texts"] = texts.DeepClone() };
}
