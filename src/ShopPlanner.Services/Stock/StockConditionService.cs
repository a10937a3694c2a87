using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Stock;

internal sealed class StockConditionService(ShopWork work, ShopCommands commands, TimeProvider clock) : IStockConditionService
{
    public Task<Outcome<StockPiece>> AddBadPlaceAsync(
        Guid id,
        BadPlaceTyped place,
        LengthUnit unit,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.RunAsync(
            new Making<StockPiece>(command, CommandTexts.Asked("bad place", id, place, unit))
            {
                Make = db => AddAsync(db, id, place, unit, device, cancel),
                Made = piece => CommandTexts.Text(piece.Id),
                Find = (db, made) => FindAsync(db, Guid.Parse(made), cancel),
                What = "piece",
            },
            cancel
        );

    public Task<Outcome<StockPiece>> RemoveBadPlaceAsync(
        Guid id,
        BadPlace place,
        string device,
        CancellationToken cancel = default
    ) => work.WriteAsync(db => RemoveAsync(db, id, place, device, cancel), cancel);

    public Task<Outcome<StockPiece>> SetEdgeAsync(
        Guid id,
        StockEdges edge,
        bool asBought,
        string device,
        CancellationToken cancel = default
    ) => work.WriteAsync(db => SetAsync(db, id, (edge, asBought), device, cancel), cancel);

    private async Task<Outcome<StockPiece>> AddAsync(
        ShopContext db,
        Guid id,
        BadPlaceTyped typed,
        LengthUnit unit,
        string device,
        CancellationToken cancel
    )
    {
        if (await OnHandAsync(db, id, cancel) is not { } now)
            return Outcome.Missing<StockPiece>("piece");
        var faults = DeviceFaults(device);
        var place = new BadPlaceReader(now, unit, faults).Read(typed);
        if (place is null || faults.Count > 0)
            return Outcome.Faulty<StockPiece>(faults);
        var words = BadPlaceWords.Of(place, now.Length, now.Width, unit);
        var places = BadPlaces.Of([.. now.Condition.BadPlaces, place]);
        return await NoteAsync(db, now, now.Condition with { BadPlaces = places }, $"bad place: {words}", device, cancel);
    }

    private async Task<Outcome<StockPiece>> RemoveAsync(
        ShopContext db,
        Guid id,
        BadPlace place,
        string device,
        CancellationToken cancel
    )
    {
        if (await OnHandAsync(db, id, cancel) is not { } now)
            return Outcome.Missing<StockPiece>("piece");
        var unit = (await ShopService.ReadAsync(db, cancel)).Unit;
        var words = BadPlaceWords.Of(place, now.Length, now.Width, unit);
        var faults = DeviceFaults(device);
        if (!now.Condition.BadPlaces.Contains(place))
            faults.Add(Fault.Of(now.Piece.Tag, words, "is no longer among its bad places: another device changed the piece"));
        if (faults.Count > 0)
            return Outcome.Faulty<StockPiece>(faults);
        var rest = BadPlaces.Of([.. now.Condition.BadPlaces.Where(one => one != place)]);
        return await NoteAsync(db, now, now.Condition with { BadPlaces = rest }, $"bad place removed: {words}", device, cancel);
    }

    private async Task<Outcome<StockPiece>> SetAsync(
        ShopContext db,
        Guid id,
        (StockEdges Edge, bool AsBought) set,
        string device,
        CancellationToken cancel
    )
    {
        if (await OnHandAsync(db, id, cancel) is not { } now)
            return Outcome.Missing<StockPiece>("piece");
        var materials = await MaterialIndex.LoadAsync(db, cancel);
        var (form, faults) = (materials[now.Piece.MaterialId].Form, DeviceFaults(device));
        var its = BadPlaceWords.Each(form == StockForm.Board ? StockEdges.Ends : StockEdges.All);
        if (!its.Contains(set.Edge))
            faults.Add(Fault.Of("edge", $"{set.Edge}", $"isn't one of the piece's: choose {BadPlaceWords.Choice(its)}"));
        if (faults.Count > 0)
            return Outcome.Faulty<StockPiece>(faults);
        var edges = set.AsBought ? now.Condition.Untrimmed | set.Edge : now.Condition.Untrimmed & ~set.Edge;
        if (edges == now.Condition.Untrimmed)
            return StockViews.Of(now, materials);
        var words = $"{BadPlaceWords.Name(set.Edge).ToLowerInvariant()} {(set.AsBought ? "as bought, to trim" : "trimmed")}";
        return await NoteAsync(db, now, now.Condition with { Untrimmed = edges }, words, device, cancel);
    }

    private async Task<Outcome<StockPiece>> NoteAsync(
        ShopContext db,
        PieceNow now,
        StockCondition condition,
        string reason,
        string device,
        CancellationToken cancel
    )
    {
        var piece = await db.Pieces.SingleAsync(one => one.Id == now.Piece.Id, cancel);
        var note = new LedgerNote(now.Length, now.Width, condition, now.Note, reason, device);
        await Ledger.WriteAsync(db, piece, StockEntryKind.Inspected, 0, note, null, clock, cancel);
        await db.SaveChangesAsync(cancel);
        return (await FindAsync(db, piece.Id, cancel))!;
    }

    private static async Task<PieceNow?> OnHandAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        await StockNow.FindAsync(db, id, cancel) is { OnHand: true } now ? now : null;

    private static async Task<StockPiece?> FindAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        await OnHandAsync(db, id, cancel) is { } now ? StockViews.Of(now, await MaterialIndex.LoadAsync(db, cancel)) : null;

    private static List<Fault> DeviceFaults(string device) =>
        TextRules.Line("Device", device, TextRules.NameCharacters) is { } fault ? [fault] : [];
}
