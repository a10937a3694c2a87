using System.Collections.Immutable;
using System.Text.Json.Serialization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Together;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>What a plan is held against.</summary>
/// <param name="Alone">Its projects, each planned by itself.</param>
/// <param name="Baskets">Ways to buy, the one that was taken first.</param>
internal sealed record HeldAgainst(ImmutableArray<AloneRecord> Alone, ImmutableArray<StoreBasket> Baskets)
{
    /// <summary>Nothing was compared.</summary>
    public static readonly HeldAgainst Nothing = new([], []);

    /// <summary>Whether there is anything to store.</summary>
    public bool IsEmpty => Alone.IsEmpty && Baskets.IsEmpty;
}

/// <summary>A project planned by itself.</summary>
/// <param name="Project">The project.</param>
/// <param name="Request">What was planned.</param>
/// <param name="Basis">The names in it.</param>
/// <param name="Plan">The answer.</param>
internal sealed record AloneRecord(Guid Project, CutRequest Request, PlanBasis Basis, CutPlan Plan);

/// <summary>What a plan is held against, as it is stored.</summary>
internal sealed record PlanComparisonDocument(
    [property: JsonPropertyName("alone")] ImmutableArray<PlanComparisonDocument.Own> Alone,
    [property: JsonPropertyName("baskets")] ImmutableArray<PlanComparisonDocument.Basket> Baskets
)
{
    /// <summary>Format <c>shop-planner/plan-comparison</c>. There was none before version 1.</summary>
    private static readonly StoredFormat<PlanComparisonDocument> Format = new(
        "shop-planner/plan-comparison",
        _ => throw new FormatException("it does not say what it is")
    );

    /// <summary>What a document tells.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static HeldAgainst Read(string text)
    {
        var read = Format.Read(text);
        return new(
            [
                .. read.Alone.Select(own => new AloneRecord(
                    own.Project,
                    CutDocuments.ReadRequest(own.Request),
                    PlanNamesDocument.Read(own.Names),
                    CutDocuments.ReadPlan(own.Plan)
                )),
            ],
            [
                .. read.Baskets.Select(basket => new StoreBasket(
                    basket.Stores,
                    Money.FromCount(basket.Wood),
                    Money.FromCount(basket.Trips),
                    basket.Minutes,
                    basket.Missing
                )),
            ]
        );
    }

    /// <summary>A document of what a plan is held against.</summary>
    public static string Write(HeldAgainst held) =>
        Format.Write(
            new(
                [
                    .. held.Alone.Select(one => new Own(
                        one.Project,
                        CutRequestJson.Write(one.Request),
                        PlanNamesDocument.Write(one.Basis),
                        CutPlanJson.Write(one.Plan)
                    )),
                ],
                [.. held.Baskets.Select(one => new Basket(one.Stores, one.Wood.Count, one.Trips.Count, one.Minutes, one.Missing))]
            )
        );

    /// <summary>A project planned by itself: three documents as they are stored with a plan.</summary>
    internal sealed record Own(
        [property: JsonPropertyName("project")] Guid Project,
        [property: JsonPropertyName("request")] string Request,
        [property: JsonPropertyName("names")] string Names,
        [property: JsonPropertyName("plan")] string Plan
    );

    /// <summary>A way to buy; money in ten-thousandths.</summary>
    internal sealed record Basket(
        [property: JsonPropertyName("stores")] ImmutableArray<string> Stores,
        [property: JsonPropertyName("wood")] long Wood,
        [property: JsonPropertyName("trips")] long Trips,
        [property: JsonPropertyName("minutes")] int Minutes,
        [property: JsonPropertyName("missing")] int Missing
    );
}
