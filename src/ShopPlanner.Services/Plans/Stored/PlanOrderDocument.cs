using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>What was asked for, as it is stored with a plan and with a planning run.</summary>
internal sealed record PlanOrderDocument(
    [property: JsonPropertyName("projects")] ImmutableArray<Guid> Projects,
    [property: JsonPropertyName("parts")] ImmutableArray<Guid>? Parts,
    [property: JsonPropertyName("stores")] ImmutableArray<Guid> Stores,
    [property: JsonPropertyName("useRack")] bool UseRack,
    [property: JsonPropertyName("useBin")] bool UseBin,
    [property: JsonPropertyName("seconds")] int Seconds,
    [property: JsonPropertyName("replaces")] Guid? Replaces,
    [property: JsonPropertyName("cutAgain")] bool CutAgain
)
{
    /// <summary>Format <c>shop-planner/plan-order</c>.</summary>
    public static readonly StoredFormat<PlanOrderDocument> Format = new("shop-planner/plan-order", First);

    /// <summary>The order of a document.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static PlanOrder Read(string text)
    {
        var order = Format.Read(text);
        return new(order.Projects, order.Parts, order.Stores, order.UseRack, order.UseBin, order.Seconds, order.Replaces)
        {
            CutAgain = order.CutAgain,
        };
    }

    /// <summary>A document of an order.</summary>
    public static string Write(PlanOrder order) =>
        Format.Write(
            new(
                order.Projects,
                order.Parts,
                order.Stores,
                order.UseRack,
                order.UseBin,
                order.Seconds,
                order.Replaces,
                order.CutAgain
            )
        );

    private static JsonObject First(JsonNode order) =>
        order.Renamed(
            ("Projects", "projects"),
            ("Parts", "parts"),
            ("Stores", "stores"),
            ("UseRack", "useRack"),
            ("UseBin", "useBin"),
            ("Seconds", "seconds"),
            ("Replaces", "replaces"),
            ("CutAgain", "cutAgain")
        );
}
