using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Stock;

internal sealed class StockExchange(ShopWork work, ShopCommands commands, IStockService stock, TimeProvider clock)
    : IStockExchange
{
    public async Task<string> ExportCsvAsync(CancellationToken cancel = default)
    {
        var unit = await work.ReadAsync(async db => (await ShopService.ReadAsync(db, cancel)).Unit, cancel);
        return StockCsv.Write(await stock.ListAsync(cancel), unit);
    }

    public Task<Outcome<StockPreview>> PreviewCsvAsync(TableFile csv, CancellationToken cancel = default) =>
        work.ReadAsync(db => PreviewAsync(db, csv, cancel), cancel);

    public Task<Outcome<IReadOnlyList<StockPiece>>> ImportCsvAsync(
        TableFile csv,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.AddOnceAsync(
            command,
            CommandTexts.Asked("stock csv", csv.Bytes, csv.Choices),
            db => ImportAsync(db, csv, device, cancel),
            cancel,
            isFile: true
        );

    private static async Task<Outcome<StockPreview>> PreviewAsync(ShopContext db, TableFile csv, CancellationToken cancel)
    {
        if (Refuse(csv) is { } fault)
            return Outcome.Faulty<StockPreview>(fault);
        var unit = (await ShopService.ReadAsync(db, cancel)).Unit;
        var table = StockCsv.Read(csv, unit, await MaterialIndex.LoadAsync(db, cancel));
        var taken = await TakenAsync(db, cancel);
        return new StockPreview(
            [.. table.Lines.Select(line => Row(line, taken))],
            [.. table.Faults],
            table.Unused,
            table.Format,
            unit
        );
    }

    private async Task<Outcome<IReadOnlyList<StockPiece>>> ImportAsync(
        ShopContext db,
        TableFile csv,
        string device,
        CancellationToken cancel
    )
    {
        if ((Refuse(csv) ?? TextRules.Line("device", device, TextRules.NameCharacters)) is { } fault)
            return Outcome.Faulty<IReadOnlyList<StockPiece>>(fault);
        var unit = (await ShopService.ReadAsync(db, cancel)).Unit;
        var table = StockCsv.Read(csv, unit, await MaterialIndex.LoadAsync(db, cancel));
        if (table.Faults.Count > 0)
            return Outcome.Faulty<IReadOnlyList<StockPiece>>(table.Faults);
        if (table.Lines.Sum(line => line.Pieces) > IStockExchange.MostPieces)
            return Outcome.Faulty<IReadOnlyList<StockPiece>>(
                new Fault("file", "", $"has more than {IStockExchange.MostPieces} pieces: split it into smaller files")
            );
        var taken = await TakenAsync(db, cancel);
        var added = new HashSet<Guid>();
        // Tags that are kept come first: those that are given go on after them.
        foreach (var line in table.Lines.OrderByDescending(line => Kept(line, taken).Length > 0))
            for (var i = 0; i < line.Pieces; i++)
                added.Add(await EnterAsync(db, line, Kept(line, taken), device, cancel));
        await db.SaveChangesAsync(cancel);
        return new(OutcomeKind.Ok, await StockService.FindAddedAsync(db, added, cancel) ?? [], []);
    }

    private async Task<Guid> EnterAsync(ShopContext db, StockLineRead line, string tag, string device, CancellationToken cancel)
    {
        var kind = line.Place == StockPlace.Rack ? StockEntryKind.Bought : StockEntryKind.Logged;
        var note = new LedgerNote(line.Length, line.Width, line.Condition, line.Note, "imported", device);
        if (tag.Length == 0)
            return (await Ledger.EnterAsync(db, line.Place, line.Material.Id, kind, note, clock, cancel)).Id;
        await Ledger.KeepTagAsync(db, tag, cancel);
        return (await Ledger.EnterAsync(db, (line.Place, tag), line.Material.Id, kind, note, clock, cancel)).Id;
    }

    private static Fault? Refuse(TableFile csv) =>
        csv.Bytes.Length > IStockExchange.MostBytes ? new Fault("file", "", "is larger than 5 MB, the most that is read") : null;

    private static async Task<HashSet<string>> TakenAsync(ShopContext db, CancellationToken cancel) =>
        (await db.Pieces.Select(piece => piece.Tag).ToListAsync(cancel)).ToHashSet(StringComparer.Ordinal);

    private static string Kept(StockLineRead line, HashSet<string> taken) => taken.Contains(line.Tag) ? "" : line.Tag;

    private static StockPreviewRow Row(StockLineRead line, HashSet<string> taken) =>
        new(
            line.Line,
            Kept(line, taken),
            taken.Contains(line.Tag) ? line.Tag : "",
            line.Place,
            line.Material.Name,
            line.Length,
            line.Width,
            line.Pieces,
            line.Note
        );
}
