using System.Collections.Immutable;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>A stored plan with its documents read.</summary>
internal sealed record PlanRecord(StoredPlan Stored, PlanDraft Draft, CutPlan Plan)
{
    /// <summary>The plan's line in a list, with nothing cut yet.</summary>
    public PlanSummary Summary =>
        new(
            Stored.Id,
            Bidi.Isolate(Stored.Name),
            Stored.MadeUtc,
            Stored.State,
            Stored.Status,
            Stored.Cost,
            Stored.Stocks,
            Draft.Order.Projects
        )
        {
            Progress = new(0, Stored.Cuts, 0, Stored.Stocks),
        };

    public PlanView View(ImmutableArray<string> changes) =>
        new(
            Summary,
            Draft.Order,
            Draft.Request,
            Plan,
            Draft.Basis.Stocks.ToImmutableDictionary(pair => pair.Key, pair => Isolated(pair.Value)),
            Draft.Basis.Parts.ToImmutableDictionary(pair => pair.Key, pair => Isolated(pair.Value)),
            changes,
            Stored.RequestHash
        )
        {
            ByOlderPlanner = Stored.PlannerVersion != CutPlanner.Version,
            CutBefore = Draft.Basis.CutBefore.ToImmutableDictionary(),
            SpareParts = [.. Draft.Basis.Rows.Keys.Where(Draft.IsSpare)],
            Units = Draft.Basis.Units.ToImmutableDictionary(),
            Materials = Draft.Basis.Materials.ToImmutableDictionary(pair => pair.Key, pair => Bidi.Isolate(pair.Value)),
        };

    // Names stand in the midst of figures, on screen and on paper.
    private static PlanPartName Isolated(PlanPartName name) =>
        name with
        {
            Name = Bidi.Isolate(name.Name),
            Project = Bidi.Isolate(name.Project),
        };

    private static PlanStockName Isolated(PlanStockName name) =>
        name with
        {
            Name = Bidi.Isolate(name.Name),
            Note = Bidi.Isolate(name.Note),
            Store = name.Store is { } store ? Bidi.Isolate(store) : null,
        };
}
