using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Storage.Documents;

/// <summary>Why a planning run has no plan.</summary>
/// <param name="Faults">In the order found.</param>
internal sealed record FaultsDocument([property: JsonPropertyName("faults")] ImmutableArray<Fault> Faults)
{
    /// <summary>Format <c>shop-planner/faults</c>.</summary>
    private static readonly StoredFormat<FaultsDocument> Format = new("shop-planner/faults", First)
    {
        Names = MemberNames.Of<Fault>(
            (nameof(Fault.Field), "field"),
            (nameof(Fault.Value), "value"),
            (nameof(Fault.Message), "message")
        ),
    };

    /// <summary>The faults of a document.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static ImmutableArray<Fault> Read(string text) => Format.Read(text).Faults;

    /// <summary>A document of these faults.</summary>
    public static string Write(IEnumerable<Fault> faults) => Format.Write(new([.. faults]));

    private static JsonObject First(JsonNode faults) =>
        new()
        {
            ["faults"] = faults.Items(fault => fault.Renamed(("Field", "field"), ("Value", "value"), ("Message", "message"))),
        };
}
