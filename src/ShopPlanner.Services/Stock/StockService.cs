using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Stock;

internal sealed class StockService(ShopWork work, ShopCommands commands, TimeProvider clock) : IStockService
{
    private const int ReasonCharacters = 300;

    public Task<IReadOnlyList<StockPiece>> ListAsync(CancellationToken cancel = default) =>
        work.ReadAsync(db => ListAsync(db, _ => true, cancel), cancel);

    public Task<Outcome<IReadOnlyList<StockPiece>>> AddAsync(
        StockAddition addition,
        LengthUnit unit,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.AddOnceAsync(
            command,
            CommandTexts.Asked("pieces", addition, unit),
            db => AddAsync(db, addition, unit, device, cancel),
            cancel
        );

    public Task<Outcome<StockPiece>> CorrectAsync(
        Guid id,
        int version,
        string length,
        string width,
        string note,
        LengthUnit unit,
        string device,
        CancellationToken cancel = default
    ) => work.WriteAsync(db => CorrectAsync(db, id, version, (length, width, note), unit, device, cancel), cancel);

    public Task<Outcome<Done>> DiscardAsync(
        Guid id,
        int version,
        string reason,
        string device,
        CancellationToken cancel = default
    ) => work.WriteAsync(db => DiscardAsync(db, id, version, reason, device, cancel), cancel);

    public Task<IReadOnlyList<StockEntry>> HistoryAsync(Guid? pieceId, int most, CancellationToken cancel = default) =>
        work.ReadAsync<IReadOnlyList<StockEntry>>(
            async db =>
                await (
                    from entry in db.Entries
                    join piece in db.Pieces on entry.PieceId equals piece.Id
                    where pieceId == null || entry.PieceId == pieceId
                    orderby entry.Number descending
                    select new StockEntry(
                        entry.Id,
                        piece.Id,
                        piece.Tag,
                        entry.WhenUtc,
                        entry.Kind,
                        entry.Length,
                        entry.Width,
                        entry.Reason,
                        entry.Device
                    )
                )
                    .Take(most)
                    .ToListAsync(cancel),
            cancel
        );

    public Task<Outcome<Done>> UndoAsync(Guid entryId, string device, CancellationToken cancel = default) =>
        work.WriteAsync(db => UndoAsync(db, entryId, device, cancel), cancel);

    private static async Task<IReadOnlyList<StockPiece>> ListAsync(
        ShopContext db,
        Func<PieceNow, bool> wanted,
        CancellationToken cancel
    )
    {
        var materials = await MaterialIndex.LoadAsync(db, cancel);
        var pieces = (await StockNow.OnHandAsync(db, cancel)).Where(wanted).Select(piece => StockViews.Of(piece, materials));
        return
        [
            .. pieces
                .OrderBy(piece => piece.Form)
                .ThenBy(piece => piece.MaterialName, StringComparer.OrdinalIgnoreCase)
                .ThenByDescending(piece => piece.Length)
                .ThenByDescending(piece => piece.Width)
                .ThenBy(piece => piece.Tag.Length)
                .ThenBy(piece => piece.Tag),
        ];
    }

    /// <summary>Returns those of the pieces that are on hand; null where none is.</summary>
    internal static async Task<IReadOnlyList<StockPiece>?> FindAddedAsync(
        ShopContext db,
        HashSet<Guid> added,
        CancellationToken cancel
    ) => await ListAsync(db, piece => added.Contains(piece.Piece.Id), cancel) is { Count: > 0 } pieces ? pieces : null;

    private async Task<Outcome<IReadOnlyList<StockPiece>>> AddAsync(
        ShopContext db,
        StockAddition addition,
        LengthUnit unit,
        string device,
        CancellationToken cancel
    )
    {
        var materials = await MaterialIndex.LoadAsync(db, cancel);
        var faults = TextFaults(nameof(addition.Note), addition.Note, device);
        var material = materials.FindTyped(addition.Material);
        if (material is null)
            faults.Add(materials.FaultOf(nameof(addition.Material), addition.Material));
        var (length, width) = PieceReader.Sizes(material, addition.Length, addition.Width, unit, faults);
        var quantity = PieceReader.Quantity(addition.Quantity, faults);
        if (faults.Count > 0)
            return Outcome.Faulty<IReadOnlyList<StockPiece>>(faults);
        var (kind, reason) =
            addition.Place == StockPlace.Rack ? (StockEntryKind.Bought, "bought") : (StockEntryKind.Logged, "found in the shop");
        var condition = addition.Place == StockPlace.Rack ? StockCondition.AsBought(material!.Form) : StockCondition.Sound;
        var added = new HashSet<Guid>();
        for (var i = 0; i < quantity; i++)
            added.Add(
                (
                    await Ledger.EnterAsync(
                        db,
                        addition.Place,
                        material!.Id,
                        kind,
                        new(length, width, condition, addition.Note, reason, device),
                        clock,
                        cancel
                    )
                ).Id
            );
        await db.SaveChangesAsync(cancel);
        return new Outcome<IReadOnlyList<StockPiece>>(
            OutcomeKind.Ok,
            await ListAsync(db, piece => added.Contains(piece.Piece.Id), cancel),
            []
        );
    }

    /// <summary>Enters a new measurement, in a transaction that others see to.</summary>
    internal async Task<Outcome<StockPiece>> CorrectAsync(
        ShopContext db,
        Guid id,
        int version,
        (string Length, string Width, string Note) typed,
        LengthUnit unit,
        string device,
        CancellationToken cancel
    )
    {
        var materials = await MaterialIndex.LoadAsync(db, cancel);
        var (now, refusal) = await FindAsync<StockPiece>(db, id, version, unit, cancel);
        if (now is null)
            return refusal!;
        var faults = TextFaults("Note", typed.Note, device);
        var (length, width) = PieceReader.Sizes(materials[now.Piece.MaterialId], typed.Length, typed.Width, unit, faults);
        if (faults.Count > 0)
            return Outcome.Faulty<StockPiece>(faults);
        var piece = await db.Pieces.SingleAsync(p => p.Id == id, cancel);
        await Ledger.WriteAsync(
            db,
            piece,
            StockEntryKind.Corrected,
            0,
            new(length, width, now.Condition.Resized(now.Length, now.Width, length, width), typed.Note, "measured again", device),
            null,
            clock,
            cancel
        );
        await db.SaveChangesAsync(cancel);
        return StockViews.Of((await StockNow.FindAsync(db, id, cancel))!, materials);
    }

    /// <summary>Throws a piece away, in a transaction that others see to.</summary>
    internal async Task<Outcome<Done>> DiscardAsync(
        ShopContext db,
        Guid id,
        int version,
        string reason,
        string device,
        CancellationToken cancel
    )
    {
        var (now, refusal) = await FindAsync<Done>(db, id, version, null, cancel);
        if (now is null)
            return refusal!;
        var faults = TextFaults("Reason", reason, device);
        if (faults.Count > 0)
            return Outcome.Faulty<Done>(faults);
        var piece = await db.Pieces.SingleAsync(p => p.Id == id, cancel);
        await Ledger.WriteAsync(
            db,
            piece,
            StockEntryKind.Discarded,
            -1,
            new(now.Length, now.Width, now.Condition, now.Note, reason, device),
            null,
            clock,
            cancel
        );
        return Done.Value;
    }

    /// <summary>Takes a line back, in a transaction that others see to.</summary>
    internal async Task<Outcome<Done>> UndoAsync(ShopContext db, Guid entryId, string device, CancellationToken cancel)
    {
        if (await db.Entries.AsNoTracking().SingleOrDefaultAsync(e => e.Id == entryId, cancel) is not { } entry)
            return Outcome.Missing<Done>("entry");
        var piece = await db.Pieces.SingleAsync(p => p.Id == entry.PieceId, cancel);
        var standing = await Ledger.StandingAsync(db, piece.Id, cancel);
        var why = entry switch
        {
            { FinishId: not null } => "comes from the bench: reopen the board there",
            { Kind: StockEntryKind.Undone } => "is an undo itself: add the piece again instead",
            _ when standing.TrueForAll(e => e.Id != entryId) => "is already undone",
            _ when standing[^1].Id != entryId =>
                $"has a later change to the same piece ('{standing[^1].Reason}'): undo that first",
            _ => null,
        };
        if (why is not null)
            return Outcome.Faulty<Done>(Fault.Of(piece.Tag, entry.Reason, why));
        if (await PurchaseUndo.FindHindranceAsync(db, entry, piece.Tag, cancel) is { } fault)
            return Outcome.Conflict<Done>(fault);
        await Ledger.TakeBackAsync(db, piece, standing, $"undone: {entry.Reason}", device, clock, cancel);
        await PurchaseUndo.FollowAsync(db, entry, cancel);
        return Done.Value;
    }

    /// <summary>Returns a piece on hand of a version, or why there is none; its size is told in the unit given, else in the
    /// shop's.</summary>
    internal static async Task<(PieceNow? Now, Outcome<T>? Refusal)> FindAsync<T>(
        ShopContext db,
        Guid id,
        int version,
        LengthUnit? unit,
        CancellationToken cancel
    )
        where T : class
    {
        var now = await StockNow.FindAsync(db, id, cancel);
        if (now is null || !now.OnHand)
            return (null, Outcome.Missing<T>(now?.Piece.Tag ?? "piece"));
        if (now.Piece.Version == version)
            return (now, null);
        var told = unit ?? (await ShopService.ReadAsync(db, cancel)).Unit;
        var stands = $"{LengthFormat.WithUnit(now.Length, told)} × {LengthFormat.WithUnit(now.Width, told)}";
        return (null, Outcome.Conflict<T>(new Fault(now.Piece.Tag, stands, "is its size now: another device changed the piece")));
    }

    private static List<Fault> TextFaults(string field, string text, string device)
    {
        Fault?[] faults =
        [
            TextRules.Line(field, text, ReasonCharacters),
            TextRules.Line("Device", device, TextRules.NameCharacters),
        ];
        return [.. faults.OfType<Fault>()];
    }
}
