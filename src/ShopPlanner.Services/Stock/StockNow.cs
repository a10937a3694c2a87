using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stock;

/// <summary>A piece as the sum of its lines makes it.</summary>
internal sealed record PieceNow(
    StoredPiece Piece,
    bool OnHand,
    Length Length,
    Length Width,
    StockCondition Condition,
    string Note,
    Guid? PromisedPlanId,
    string? PromisedTo
);

/// <summary>Sums the ledger.</summary>
internal static class StockNow
{
    /// <summary>Pieces on hand.</summary>
    public static async Task<List<PieceNow>> OnHandAsync(ShopContext db, CancellationToken cancel) =>
        [.. (await SumAsync(db, db.Pieces, db.Entries, cancel)).Where(piece => piece.OnHand)];

    /// <summary>Those of some pieces that are on hand.</summary>
    public static async Task<List<PieceNow>> OnHandAsync(
        ShopContext db,
        IReadOnlyCollection<Guid> ids,
        CancellationToken cancel
    ) => ids.Count == 0 ? [] : [.. (await FindAsync(db, ids, cancel)).Where(piece => piece.OnHand)];

    /// <summary>Some pieces, on hand or not.</summary>
    public static Task<List<PieceNow>> FindAsync(ShopContext db, IReadOnlyCollection<Guid> ids, CancellationToken cancel) =>
        SumAsync(db, db.Pieces.Where(piece => ids.Contains(piece.Id)), cancel);

    /// <summary>One piece, on hand or not; null when there never was one.</summary>
    public static async Task<PieceNow?> FindAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        (await SumAsync(db, db.Pieces.Where(piece => piece.Id == id), cancel)).SingleOrDefault();

    /// <summary>Pieces by tag, on hand or not.</summary>
    public static async Task<Dictionary<string, PieceNow>> ByTagAsync(
        ShopContext db,
        IReadOnlyCollection<string> tags,
        CancellationToken cancel
    ) => (await SumAsync(db, db.Pieces.Where(piece => tags.Contains(piece.Tag)), cancel)).ToDictionary(piece => piece.Piece.Tag);

    // Only the lines of those pieces are summed, not the whole ledger.
    private static Task<List<PieceNow>> SumAsync(ShopContext db, IQueryable<StoredPiece> pieces, CancellationToken cancel) =>
        SumAsync(db, pieces, db.Entries.Where(entry => pieces.Any(piece => piece.Id == entry.PieceId)), cancel);

    private static async Task<List<PieceNow>> SumAsync(
        ShopContext db,
        IQueryable<StoredPiece> pieces,
        IQueryable<StoredEntry> entries,
        CancellationToken cancel
    )
    {
        var sums =
            from piece in pieces.AsNoTracking()
            join sum in entries
                .GroupBy(entry => entry.PieceId)
                .Select(g => new
                {
                    g.Key,
                    Count = g.Sum(e => e.Count),
                    Last = g.Max(e => e.Number),
                })
                on piece.Id equals sum.Key
            join last in db.Entries on sum.Last equals last.Number
            from promise in db.Promises.Where(p => p.PieceId == piece.Id && p.Active).DefaultIfEmpty()
            from plan in db.Plans.Where(p => p.Id == promise!.PlanId).DefaultIfEmpty()
            select new
            {
                Piece = piece,
                sum.Count,
                last.Length,
                last.Width,
                last.Untrimmed,
                last.BadPlaces,
                last.Note,
                PlanId = (Guid?)plan!.Id,
                plan.Name,
            };
        return
        [
            .. (await sums.ToListAsync(cancel)).Select(row => new PieceNow(
                row.Piece,
                row.Count > 0,
                row.Length,
                row.Width,
                new StockCondition(row.Untrimmed, BadPlacesDocument.Read(row.BadPlaces)),
                row.Note,
                row.PlanId,
                row.Name
            )),
        ];
    }
}
