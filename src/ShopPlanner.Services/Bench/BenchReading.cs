using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Bench;

/// <summary>Reads a plan as it stands at the bench.</summary>
internal sealed class BenchReading(PlanReading reading)
{
    public async Task<BenchView?> FindAsync(ShopContext db, Guid planId, CancellationToken cancel)
    {
        if (await reading.FindAsync(db, planId, cancel) is not { } plan)
            return null;
        var made = (await db.Cuts.AsNoTracking().Where(cut => cut.PlanId == planId && cut.Made).ToListAsync(cancel))
            .Select(cut => (cut.Layout, cut.Copy, cut.Cut))
            .ToHashSet();
        var finished = await FinishedAsync(db, planId, cancel);
        var stocks = plan.Plan.Layouts.SelectMany(
            (layout, index) => Enumerable.Range(1, layout.Copies).Select(copy => (layout, index, copy))
        );
        return new BenchView(
            plan,
            [
                .. stocks.Select(
                    (at, n) =>
                        new BenchStock(
                            n + 1,
                            at.index,
                            at.copy,
                            plan.Stocks[at.layout.Stock],
                            [.. at.layout.Cuts.Select(cut => new BenchCut(cut, made.Contains((at.index, at.copy, cut.N))))],
                            finished.ContainsKey((at.index, at.copy)),
                            finished.GetValueOrDefault((at.index, at.copy), [])
                        )
                ),
            ]
        );
    }

    /// <summary>Returns where a board or sheet stands, from the plan's own document alone.</summary>
    public static async Task<BenchPlace?> FindPlaceAsync(ShopContext db, Guid planId, int number, CancellationToken cancel)
    {
        var document = await db.Plans.Where(plan => plan.Id == planId).Select(plan => plan.PlanJson).SingleOrDefaultAsync(cancel);
        if (document is null)
            return null;
        return CutDocuments
            .ReadPlan(document)
            .Layouts.SelectMany((layout, index) => Enumerable.Range(1, layout.Copies).Select(copy => new BenchPlace(index, copy)))
            .ElementAtOrDefault(number - 1);
    }

    // Finished boards and sheets with what went into the bin.
    private static async Task<Dictionary<(int Layout, int Copy), ImmutableArray<BinnedPiece>>> FinishedAsync(
        ShopContext db,
        Guid planId,
        CancellationToken cancel
    )
    {
        var finishes = await db.Finishes.AsNoTracking().Where(f => f.PlanId == planId && f.Standing).ToListAsync(cancel);
        var byFinish = await BinnedAsync(db, [.. finishes.Select(finish => finish.Id)], cancel);
        return finishes.ToDictionary(finish => (finish.Layout, finish.Copy), finish => byFinish[finish.Id].ToImmutableArray());
    }

    /// <summary>Returns what finishes put into the bin and left there, by finish.</summary>
    internal static async Task<ILookup<Guid?, BinnedPiece>> BinnedAsync(
        ShopContext db,
        IReadOnlyCollection<Guid> finishes,
        CancellationToken cancel
    )
    {
        var binned = await (
            from entry in db.Entries.AsNoTracking()
            join piece in db.Pieces on entry.PieceId equals piece.Id
            where entry.Kind == StockEntryKind.Binned && entry.FinishId != null && finishes.Contains(entry.FinishId.Value)
            where
                !db.Entries.Any(one =>
                    one.PieceId == piece.Id && one.FinishId == entry.FinishId && one.Kind == StockEntryKind.Discarded
                )
            orderby entry.Number
            select new { entry.FinishId, Binned = new BinnedPiece(piece.Tag, entry.Length, entry.Width) }
        ).ToListAsync(cancel);
        return binned.ToLookup(row => row.FinishId, row => row.Binned);
    }
}
