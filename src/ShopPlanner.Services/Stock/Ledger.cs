using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stock;

/// <summary>What a new line of the ledger says besides its kind.</summary>
internal sealed record LedgerNote(
    Length Length,
    Length Width,
    StockCondition Condition,
    string Note,
    string Reason,
    string Device,
    Guid? FinishId = null
);

/// <summary>The ledger of the rack and the bin: pieces come and go by lines that are only ever added.</summary>
internal static class Ledger
{
    /// <summary>Enters a piece that was not known before, with a tag that was never given: the one proposed, where it is still
    /// free.</summary>
    public static async Task<StoredPiece> EnterAsync(
        ShopContext db,
        StockPlace place,
        string materialId,
        StockEntryKind kind,
        LedgerNote note,
        TimeProvider clock,
        CancellationToken cancel,
        string? proposed = null
    )
    {
        var tag = await TagAsync(db, place, proposed, cancel);
        return await EnterAsync(db, (place, tag), materialId, kind, note, clock, cancel);
    }

    /// <summary>Enters a piece with a tag of its own, which no piece has.</summary>
    public static async Task<StoredPiece> EnterAsync(
        ShopContext db,
        (StockPlace Place, string Tag) name,
        string materialId,
        StockEntryKind kind,
        LedgerNote note,
        TimeProvider clock,
        CancellationToken cancel
    )
    {
        var piece = db
            .Pieces.Add(
                new StoredPiece
                {
                    Id = Guid.CreateVersion7(),
                    Tag = name.Tag,
                    Place = name.Place,
                    MaterialId = materialId,
                }
            )
            .Entity;
        await WriteAsync(db, piece, kind, 1, note, null, clock, cancel);
        return piece;
    }

    /// <summary>Sees that a tag which comes from elsewhere is never given again.</summary>
    public static async Task KeepTagAsync(ShopContext db, string tag, CancellationToken cancel)
    {
        var series = Series(StockTags.PlaceOf(tag));
        if (await db.Counters.FindAsync([series], cancel) is not { } counter)
            db.Counters.Add(counter = new StoredCounter { Name = series });
        counter.Last = Math.Max(counter.Last, StockTags.NumberOf(tag) ?? 0);
    }

    private static string Series(StockPlace place) => place == StockPlace.Bin ? Counters.BinTags : Counters.RackTags;

    // A tag that was proposed, and may be on the wood already, is given where nobody else has got it meanwhile.
    private static async Task<string> TagAsync(ShopContext db, StockPlace place, string? proposed, CancellationToken cancel)
    {
        var series = Series(place);
        var isFree =
            StockTags.NumberOf(proposed, place) is { } number
            && db.Pieces.Local.All(piece => piece.Tag != proposed)
            && !await db.Pieces.AnyAsync(piece => piece.Tag == proposed, cancel)
            && await db.TryTakeAsync(series, number, cancel);
        return isFree ? proposed! : StockTags.Of(place, await db.NextAsync(series, cancel));
    }

    /// <summary>Adds a line about a piece.</summary>
    public static async Task<StoredEntry> WriteAsync(
        ShopContext db,
        StoredPiece piece,
        StockEntryKind kind,
        int count,
        LedgerNote note,
        Guid? undoes,
        TimeProvider clock,
        CancellationToken cancel
    )
    {
        piece.Version++;
        return db
            .Entries.Add(
                new StoredEntry
                {
                    Id = Guid.CreateVersion7(),
                    Number = await db.NextAsync(Counters.Entries, cancel),
                    PieceId = piece.Id,
                    WhenUtc = clock.GetUtcNow().UtcDateTime,
                    Kind = kind,
                    Count = count,
                    Length = note.Length,
                    Width = note.Width,
                    Untrimmed = note.Condition.Untrimmed,
                    BadPlaces = BadPlacesDocument.Write(note.Condition.BadPlaces),
                    Note = note.Note,
                    Reason = note.Reason,
                    Device = note.Device,
                    Undoes = undoes,
                    FinishId = note.FinishId,
                }
            )
            .Entity;
    }

    /// <summary>A piece's lines that stand: those taken back, and those that took them back, are left out. In order.</summary>
    public static async Task<List<StoredEntry>> StandingAsync(ShopContext db, Guid pieceId, CancellationToken cancel)
    {
        var all = await db
            .Entries.AsNoTracking()
            .Where(entry => entry.PieceId == pieceId)
            .OrderBy(entry => entry.Number)
            .ToListAsync(cancel);
        var undone = all.Where(entry => entry.Undoes is not null).Select(entry => entry.Undoes!.Value).ToHashSet();
        return [.. all.Where(entry => entry.Undoes is null && !undone.Contains(entry.Id))];
    }

    /// <summary>Takes the latest standing line of a piece back.</summary>
    public static async Task TakeBackAsync(
        ShopContext db,
        StoredPiece piece,
        List<StoredEntry> standing,
        string reason,
        string device,
        TimeProvider clock,
        CancellationToken cancel
    )
    {
        var last = standing[^1];
        var now = standing.Count > 1 ? standing[^2] : last;
        var condition = new StockCondition(now.Untrimmed, BadPlacesDocument.Read(now.BadPlaces));
        var note = new LedgerNote(now.Length, now.Width, condition, now.Note, reason, device, last.FinishId);
        await WriteAsync(db, piece, StockEntryKind.Undone, -last.Count, note, last.Id, clock, cancel);
    }
}
