using System.Collections.Immutable;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans;

/// <summary>A stored plan with its documents read.</summary>
internal sealed record PlanRecord(StoredPlan Stored, PlanDraft Draft, CutPlan Plan)
{
    public static PlanRecord Read(StoredPlan stored) =>
        new(
            stored,
            new PlanDraft(
                ShopJson.Read<PlanOrder>(stored.OrderJson),
                ShopJson.Read<CutRequest>(stored.RequestJson),
                ShopJson.Read<PlanBasis>(stored.NamesJson),
                []
            ),
            ShopJson.Read<CutPlan>(stored.PlanJson)
        );

    public PlanSummary Summary(bool outOfDate) =>
        new(
            Stored.Id,
            Stored.Name,
            Stored.MadeUtc,
            Stored.State,
            Stored.Status,
            Stored.Cost,
            Stored.Stocks,
            Draft.Order.Projects,
            outOfDate
        );

    public PlanView View(ImmutableArray<string> changes) =>
        new(
            Summary(changes.Length > 0),
            Draft.Order,
            Draft.Request,
            Plan,
            Draft.Basis.Stocks.ToImmutableDictionary(),
            Draft.Basis.Parts.ToImmutableDictionary(),
            changes,
            Stored.RequestHash
        )
        {
            CutBefore = Draft.Basis.CutBefore.ToImmutableDictionary(),
            Units = Draft.Basis.Units.ToImmutableDictionary(),
        };
}
