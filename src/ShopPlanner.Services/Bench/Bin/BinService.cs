using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Bench.Bin;

internal sealed class BinService(ShopWork work, ShopCommands commands, StockService stock, TimeProvider clock) : IBinService
{
    private const int MostFound = 60;
    private const int MostTaken = 20;

    public Task<Outcome<BinView>> FindAsync(BinSearch search, CancellationToken cancel = default) =>
        work.ReadAsync(db => FindAsync(db, search, cancel), cancel);

    public Task<Outcome<Done>> TakeAsync(
        Guid id,
        int version,
        Guid? project,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            command,
            $"take {id} {version} {project}",
            async db =>
            {
                var reason = "taken";
                if (project is { } wanted)
                {
                    var name = await db
                        .Projects.Where(one => one.Id == wanted)
                        .Select(one => one.Name)
                        .SingleOrDefaultAsync(cancel);
                    if (name is null)
                        return Outcome.Faulty<Done>(new Fault("Project", "", "is no longer there: choose another one"));
                    reason = $"taken for {name}";
                }

                return await TakeAsync(db, (id, version), reason, device, cancel);
            },
            cancel
        );

    public Task<Outcome<Done>> PutBackAsync(
        Guid id,
        int version,
        string length,
        string width,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            command,
            CommandTexts.Asked("put back", id, version, length, width),
            db => PutBackAsync(db, (id, version), (length, width), device, cancel),
            cancel
        );

    public Task<Outcome<Done>> CorrectAsync(
        Guid id,
        int version,
        string length,
        string width,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            command,
            CommandTexts.Asked("measure", id, version, length, width),
            async db =>
            {
                var unit = (await ShopService.ReadAsync(db, cancel)).Unit;
                var note = (await StockNow.FindAsync(db, id, cancel))?.Note ?? "";
                var corrected = await stock.CorrectAsync(db, id, version, (length, width, note), unit, device, cancel);
                return corrected.Ok ? Done.Value : new Outcome<Done>(corrected.Kind, null, corrected.Faults);
            },
            cancel
        );

    public Task<Outcome<Done>> DiscardAsync(
        Guid id,
        int version,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            command,
            $"discard {id} {version}",
            db => stock.DiscardAsync(db, id, version, "thrown away", device, cancel),
            cancel
        );

    public Task<Outcome<Done>> UndoAsync(Guid entry, string device, CommandId command, CancellationToken cancel = default) =>
        RunAsync(command, $"undo {entry}", db => stock.UndoAsync(db, entry, device, cancel), cancel);

    private static async Task<Outcome<BinView>> FindAsync(ShopContext db, BinSearch search, CancellationToken cancel)
    {
        var unit = (await ShopService.ReadAsync(db, cancel)).Unit;
        var (materials, faults) = (await MaterialIndex.LoadAsync(db, cancel), new List<Fault>());
        var wanted = OffcutSearch.Read(search, unit, faults);
        if (faults.Count > 0)
            return Outcome.Faulty<BinView>(faults);
        var bin = (await StockNow.OnHandAsync(db, cancel)).Where(piece => piece.Piece.Place == StockPlace.Bin).ToList();
        var found = bin.Select(piece => wanted.Find(piece, materials))
            .OfType<FoundOffcut>()
            .OrderBy(one => (decimal)one.Piece.Length.Ticks * one.Piece.Width.Ticks)
            .ThenBy(one => one.Piece.Tag.Length)
            .ThenBy(one => one.Piece.Tag, StringComparer.Ordinal);
        return new BinView(
            unit,
            [
                .. bin.Select(piece => materials[piece.Piece.MaterialId])
                    .DistinctBy(material => material.Id)
                    .OrderBy(material => material.Name, StringComparer.OrdinalIgnoreCase)
                    .Select(material => new BinMaterial(material.Id, material.Name)),
            ],
            [.. found.Take(MostFound)],
            [.. await TakenAsync(db, materials, cancel)]
        );
    }

    // Pieces whose latest line says that they were taken; the line of an undo is the latest otherwise.
    private static async Task<IEnumerable<TakenOffcut>> TakenAsync(
        ShopContext db,
        MaterialIndex materials,
        CancellationToken cancel
    )
    {
        var rows = await (
            from entry in db.Entries
            join piece in db.Pieces on entry.PieceId equals piece.Id
            where entry.Kind == StockEntryKind.Taken
            where !db.Entries.Any(later => later.PieceId == entry.PieceId && later.Number > entry.Number)
            orderby entry.Number descending
            select new { Entry = entry, Piece = piece }
        )
            .Take(MostTaken)
            .ToListAsync(cancel);
        return rows.Select(row => new TakenOffcut(
            row.Piece.Id,
            row.Piece.Tag,
            materials[row.Piece.MaterialId].Name,
            row.Entry.Length,
            row.Entry.Width,
            row.Entry.Reason,
            row.Entry.WhenUtc,
            row.Piece.Version
        ));
    }

    private async Task<Outcome<Done>> TakeAsync(
        ShopContext db,
        (Guid Id, int Version) of,
        string reason,
        string device,
        CancellationToken cancel
    )
    {
        var (now, refusal) = await StockService.FindAsync<Done>(db, of.Id, of.Version, null, cancel);
        if (now is null)
            return refusal!;
        if (BenchRules.RefuseDevice(device) is { } fault)
            return Outcome.Faulty<Done>(fault);
        if (now.PromisedPlanId is not null)
            return Outcome.Conflict<Done>(
                Fault.Of(now.Piece.Tag, now.PromisedTo, "is going to cut this piece: plan again without it, or take another")
            );
        return await WriteAsync(db, now, StockEntryKind.Taken, -1, (now.Length, now.Width), reason, device, cancel);
    }

    private async Task<Outcome<Done>> PutBackAsync(
        ShopContext db,
        (Guid Id, int Version) of,
        (string Length, string Width) typed,
        string device,
        CancellationToken cancel
    )
    {
        if (await StockNow.FindAsync(db, of.Id, cancel) is not { } now)
            return Outcome.Missing<Done>("piece");
        var last = (await Ledger.StandingAsync(db, of.Id, cancel)).LastOrDefault();
        if (now.OnHand || last?.Kind != StockEntryKind.Taken || now.Piece.Version != of.Version)
            return Outcome.Conflict<Done>(new Fault(now.Piece.Tag, "", "is not out of the bin now: look at it again"));
        var unit = (await ShopService.ReadAsync(db, cancel)).Unit;
        var (material, faults) = ((await MaterialIndex.LoadAsync(db, cancel))[now.Piece.MaterialId], new List<Fault>());
        var size = PieceReader.Sizes(material, typed.Length, typed.Width, unit, faults);
        if (BenchRules.RefuseDevice(device) is { } fault)
            faults.Add(fault);
        if (faults.Count == 0 && (size.Length > now.Length || size.Width > now.Width))
            faults.Add(
                Fault.Of(
                    "Length",
                    $"{typed.Length} × {typed.Width}",
                    $"is larger than {now.Piece.Tag} was: at most {LengthFormat.WithUnit(now.Length, unit)} × "
                        + LengthFormat.WithUnit(now.Width, unit)
                )
            );
        if (faults.Count > 0)
            return Outcome.Faulty<Done>(faults);
        return await WriteAsync(db, now, StockEntryKind.PutBack, 1, size, "put back", device, cancel);
    }

    private async Task<Outcome<Done>> WriteAsync(
        ShopContext db,
        PieceNow now,
        StockEntryKind kind,
        int count,
        (Length Length, Length Width) size,
        string reason,
        string device,
        CancellationToken cancel
    )
    {
        var piece = await db.Pieces.SingleAsync(one => one.Id == now.Piece.Id, cancel);
        var condition = now.Condition.Resized(now.Length, now.Width, size.Length, size.Width);
        var note = new LedgerNote(size.Length, size.Width, condition, now.Note, reason, device);
        await Ledger.WriteAsync(db, piece, kind, count, note, null, clock, cancel);
        return Done.Value;
    }

    private Task<Outcome<Done>> RunAsync(
        CommandId command,
        string asked,
        Func<ShopContext, Task<Outcome<Done>>> make,
        CancellationToken cancel
    ) =>
        commands.RunAsync(
            new Making<Done>(command, asked)
            {
                Make = make,
                Made = _ => "",
                Find = (_, _) => Task.FromResult<Done?>(Done.Value),
                What = "piece",
            },
            cancel
        );
}
