using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Setup;

internal sealed class SetupService(ShopWork work, ShopCommands commands, TimeProvider clock) : ISetupService
{
    public Task<Outcome<StoreView>> AddStoreAsync(FirstStore store, CommandId command, CancellationToken cancel = default) =>
        TextRules.Name(nameof(store.Name), store.Name) is { } fault
            ? Task.FromResult(Outcome.Faulty<StoreView>(fault))
            : commands.RunAsync(
                new Making<StoreView>(command, CommandTexts.Asked("first store", store.Name, store.Unit, store.Prices.ToArray()))
                {
                    Make = db => AddStoreAsync(db, store, cancel),
                    Made = made => CommandTexts.Text(made.Id),
                    Find = (db, made) => StoreViews.FindAsync(db, Guid.Parse(made), cancel),
                    What = "store",
                },
                cancel
            );

    public Task<OffcutsRead> PreviewOffcutsAsync(string lines, LengthUnit unit, CancellationToken cancel = default) =>
        work.ReadAsync(
            async db =>
            {
                var faults = new List<Fault>();
                var read = new OffcutReader(await MaterialIndex.LoadAsync(db, cancel), unit).Read(lines, faults);
                return new OffcutsRead([.. read.Select(Line)], [.. faults]);
            },
            cancel
        );

    private static OffcutLine Line(OffcutRead read) => new(read.Number, read.Material.Name, read.Length, read.Width, read.Note);

    public Task<Outcome<IReadOnlyList<StockPiece>>> AddOffcutsAsync(
        string lines,
        LengthUnit unit,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.AddOnceAsync(
            command,
            CommandTexts.Asked("offcuts", lines, unit),
            db => AddOffcutsAsync(db, lines, unit, device, cancel),
            cancel
        );

    private async Task<Outcome<StoreView>> AddStoreAsync(ShopContext db, FirstStore wanted, CancellationToken cancel)
    {
        var added = await StoreService.CreateAsync(db, wanted.Name, wanted.Unit, cancel);
        if (!added.Ok)
            return added;
        var (faults, reader) = (new List<Fault>(), new PriceReader(wanted.Unit, await MaterialIndex.LoadAsync(db, cancel)));
        var lines = wanted.Prices.Select((price, line) => Read(reader, price, FirstStore.PriceField(line), faults)).ToList();
        if (wanted.Prices.Count == 0)
            faults.Add(new Fault("prices", "", "are all blank: type the price of at least one size, or skip this card"));
        if (faults.Count > 0)
            return Outcome.Faulty<StoreView>(faults);
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        await PriceSaving.PutAllAsync(db, added.Value.Id, lines.OfType<PriceRead>(), today, cancel);
        return (await StoreViews.FindAsync(db, added.Value.Id, cancel))!;
    }

    private static PriceRead? Read(PriceReader reader, PriceEdit edit, string field, List<Fault> faults)
    {
        var found = new List<Fault>();
        var read = reader.Read(edit, found);
        faults.AddRange(found.Select(fault => fault.At(field)));
        return read;
    }

    private async Task<Outcome<IReadOnlyList<StockPiece>>> AddOffcutsAsync(
        ShopContext db,
        string lines,
        LengthUnit unit,
        string device,
        CancellationToken cancel
    )
    {
        var faults = new List<Fault>();
        if (TextRules.Line("device", device, TextRules.NameCharacters) is { } wrong)
            faults.Add(wrong);
        var offcuts = new OffcutReader(await MaterialIndex.LoadAsync(db, cancel), unit).Read(lines, faults);
        if (offcuts.Count == 0 && faults.Count == 0)
            faults.Add(new Fault("lines", "", "are blank: write one offcut per line, or skip this card"));
        if (faults.Count > 0)
            return Outcome.Faulty<IReadOnlyList<StockPiece>>(faults);
        var added = new HashSet<Guid>();
        foreach (var offcut in offcuts)
            added.Add(await EnterAsync(db, offcut, device, cancel));
        await db.SaveChangesAsync(cancel);
        return new(OutcomeKind.Ok, await StockService.FindAddedAsync(db, added, cancel) ?? [], []);
    }

    private async Task<Guid> EnterAsync(ShopContext db, OffcutRead offcut, string device, CancellationToken cancel) =>
        (
            await Ledger.EnterAsync(
                db,
                StockPlace.Bin,
                offcut.Material.Id,
                StockEntryKind.Logged,
                new(offcut.Length, offcut.Width, StockCondition.Sound, offcut.Note, "found in the shop", device),
                clock,
                cancel
            )
        ).Id;
}
