using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>Reads wrong cuts that were written down.</summary>
internal sealed class WrongCutViews(ReadPlans plans)
{
    /// <summary>Returns one, or null.</summary>
    public async Task<WrongCutView?> FindAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.WrongCuts.AsNoTracking().SingleOrDefaultAsync(one => one.Id == id, cancel) is not { } wrong)
            return null;
        var record = plans.Read(await db.Plans.AsNoTracking().SingleAsync(plan => plan.Id == wrong.PlanId, cancel));
        var (view, pieces) = (record.View([]), await PiecesAsync(db, id, cancel));
        var marks = new PlanMarks(view);
        var stopped = await StoppedAsync(db, wrong, cancel);
        var shown = stopped.SelectMany(one => one.Pieces).Select(one => one.Tag).ToHashSet();
        var left = await BinnedAsync(db, [.. pieces.Select(one => one.LeftPieceId).OfType<Guid>()], cancel);
        return new(
            wrong.Id,
            wrong.PlanId,
            view.Summary.Name,
            view.UnitOfLayout(wrong.Layout),
            Number(record, wrong.Layout, wrong.Copy),
            wrong.Cut,
            wrong.Reason,
            [.. pieces.Select(one => marks.Of(wrong.Layout, one.Piece, wrong.Copy))],
            [.. stopped.Select(one => new StoppedStock(Number(record, one.Layout, one.Copy), one.Pieces))],
            [.. left.Where(one => !shown.Contains(one.Tag))],
            wrong.RestPlanId,
            wrong.Standing,
            wrong.WhenUtc
        );
    }

    /// <summary>Returns those of a plan that stand, and those that led to it, the latest first.</summary>
    public async Task<IReadOnlyList<WrongCutView>> ListAsync(ShopContext db, Guid plan, CancellationToken cancel)
    {
        var ids = await db
            .WrongCuts.Where(one => one.Standing && (one.PlanId == plan || one.RestPlanId == plan))
            .OrderByDescending(one => one.WhenUtc)
            .Select(one => one.Id)
            .ToListAsync(cancel);
        var views = new List<WrongCutView>();
        foreach (var id in ids)
            views.Add((await FindAsync(db, id, cancel))!);
        return views;
    }

    private static Task<List<StoredWrongPiece>> PiecesAsync(ShopContext db, Guid wrong, CancellationToken cancel) =>
        db.WrongPieces.AsNoTracking().Where(one => one.WrongCutId == wrong).OrderBy(one => one.Piece).ToListAsync(cancel);

    private static async Task<List<(int Layout, int Copy, ImmutableArray<BinnedPiece> Pieces)>> StoppedAsync(
        ShopContext db,
        StoredWrongCut wrong,
        CancellationToken cancel
    )
    {
        var finishes = await db
            .Finishes.AsNoTracking()
            .Where(one => one.WrongCutId == wrong.Id)
            .OrderBy(one => one.Layout)
            .ThenBy(one => one.Copy)
            .ToListAsync(cancel);
        var binned = await BenchReading.BinnedAsync(db, [.. finishes.Select(one => one.Id)], cancel);
        return [.. finishes.Select(one => (one.Layout, one.Copy, binned[one.Id].ToImmutableArray()))];
    }

    private static async Task<List<BinnedPiece>> BinnedAsync(ShopContext db, Guid[] ids, CancellationToken cancel) =>
        await (
            from entry in db.Entries.AsNoTracking()
            join piece in db.Pieces on entry.PieceId equals piece.Id
            where entry.Kind == StockEntryKind.Binned && ids.Contains(piece.Id)
            orderby entry.Number
            select new BinnedPiece(piece.Tag, entry.Length, entry.Width)
        ).ToListAsync(cancel);

    private static int Number(PlanRecord record, int layout, int copy) =>
        record.Plan.Layouts.Take(layout).Sum(one => one.Copies) + copy;
}
