using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Staleness;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Plans.Keeping;

/// <summary>Reads a plan with what changed since it was made.</summary>
internal sealed class PlanReading(ReadPlans plans)
{
    /// <summary>The plan; null where there is none.</summary>
    /// <exception cref="StoredDocumentException">One of its documents is damaged, or newer than this program.</exception>
    public async Task<PlanView?> FindAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Plans.AsNoTracking().SingleOrDefaultAsync(plan => plan.Id == id, cancel) is not { } stored)
            return null;
        var record = plans.Read(stored);
        var view = record.View(await ChangesAsync(db, record, cancel));
        return view with
        {
            Summary = view.Summary with { Progress = await PlanHeaders.ProgressAsync(db, stored, cancel) },
            KnownSaws = Saws(ShopTools.Of(await ShopService.ReadAsync(db, cancel))),
        };
    }

    private static ShopSaws Saws(ShopTools tools) =>
        new()
        {
            HasTableSaw = tools.Table is not null,
            GaugeReach = tools.Table?.LongestCrosscut,
            HasMiterSaw = tools.Miter is not null,
            MiterReach = tools.Miter?.WidestCrosscut,
            IsLargeByHand = tools is { Guide: null, Hand: not null },
        };

    // A plan that is cut or given up is history: nothing is held against it.
    private async Task<ImmutableArray<string>> ChangesAsync(ShopContext db, PlanRecord record, CancellationToken cancel) =>
        PlanChanges.IsHistory(record)
            ? []
            : PlanChanges.Find(
                record,
                await Snapshot.ForPlanAsync(db, plans, record, cancel),
                await CutPiecesAsync(db, record.Stored.Id, cancel),
                BoughtLines.Settled(await BoughtLines.LoadAsync(db, record, cancel))
            );

    // Pieces of the plan cut up by a finish that stands.
    private static async Task<IReadOnlySet<Guid>> CutPiecesAsync(ShopContext db, Guid planId, CancellationToken cancel) =>
        await db
            .Entries.Where(entry =>
                entry.Kind == StockEntryKind.Cut
                && db.Finishes.Any(finish => finish.Id == entry.FinishId && finish.PlanId == planId && finish.Standing)
            )
            .Select(entry => entry.PieceId)
            .ToHashSetAsync(cancel);
}
