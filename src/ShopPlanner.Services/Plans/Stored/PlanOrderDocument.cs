using System.Text.Json.Nodes;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>What was asked for, as it is stored with a plan and with a planning run.</summary>
internal static class PlanOrderDocument
{
    /// <summary>Format <c>shop-planner/plan-order</c>.</summary>
    private static readonly StoredFormat<PlanOrder> Format = new("shop-planner/plan-order", First, Second, Third)
    {
        Names = MemberNames.Of<PlanOrder>(
            (nameof(PlanOrder.Projects), "projects"),
            (nameof(PlanOrder.Parts), "parts"),
            (nameof(PlanOrder.Stores), "stores"),
            (nameof(PlanOrder.UseRack), "useRack"),
            (nameof(PlanOrder.UseBin), "useBin"),
            (nameof(PlanOrder.Seconds), "seconds"),
            (nameof(PlanOrder.Replaces), "replaces"),
            (nameof(PlanOrder.CutAgain), "cutAgain"),
            (nameof(PlanOrder.FromHand), "fromHand"),
            (nameof(PlanOrder.Spares), "spares"),
            (nameof(PlanOrder.CountTrips), "countTrips"),
            (nameof(PlanOrder.OneStore), "oneStore")
        ),
    };

    /// <summary>The order of a document.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static PlanOrder Read(string text) => Format.Read(text);

    /// <summary>A document of an order.</summary>
    public static string Write(PlanOrder order) => Format.Write(order);

    // Those names are what the code called the members then, whatever it calls them now.
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

    // Every project took new wood as readily as old, every part was wanted, and a trip cost nothing.
    private static JsonObject Third(JsonNode order)
    {
        var members = order.AsObject();
        (members["fromHand"], members["spares"]) = (new JsonArray(), new JsonObject());
        (members["countTrips"], members["oneStore"]) = (false, false);
        return members;
    }

    // A plan took the place of one other at most.
    private static JsonObject Second(JsonNode order)
    {
        var members = order.AsObject();
        if (!members.ContainsKey("replaces"))
            throw new KeyNotFoundException("the member replaces is missing");
        members["replaces"] = members["replaces"] is { } one ? new JsonArray(one.DeepClone()) : new JsonArray();
        return members;
    }
}
