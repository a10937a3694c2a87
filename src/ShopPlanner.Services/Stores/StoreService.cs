using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stores;

internal sealed class StoreService(ShopWork work, ShopCommands commands, TimeProvider clock) : IStoreService
{
    public Task<IReadOnlyList<StoreView>> ListAsync(CancellationToken cancel = default) =>
        work.ReadAsync(db => StoreViews.ListAsync(db, cancel), cancel);

    public Task<StoreView?> GetAsync(Guid id, CancellationToken cancel = default) =>
        work.ReadAsync(db => StoreViews.FindAsync(db, id, cancel), cancel);

    public Task<Outcome<StoreView>> CreateAsync(
        string name,
        LengthUnit unit,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        TextRules.Name(nameof(StoreView.Name), name) is { } fault
            ? Task.FromResult(Outcome.Faulty<StoreView>(fault))
            : commands.RunAsync(
                new Making<StoreView>(command, CommandTexts.Asked("store", name, unit))
                {
                    Make = db => CreateAsync(db, name, unit, cancel),
                    Made = store => CommandTexts.Text(store.Id),
                    Find = (db, made) => StoreViews.FindAsync(db, Guid.Parse(made), cancel),
                    What = "store",
                },
                cancel
            );

    public Task<Outcome<StoreView>> SaveAsync(StoreView store, CancellationToken cancel = default) =>
        work.WriteAsync(db => SaveAsync(db, store, cancel), cancel);

    public async Task<Outcome<StoreView>> SavePriceAsync(
        Guid storeId,
        PriceEdit edit,
        CommandId command,
        CancellationToken cancel = default
    )
    {
        var saved = await commands.RunAsync(
            new Making<SavedPrice>(command, CommandTexts.Asked("price", storeId, edit))
            {
                Make = db => PriceSaving.SaveAsync(db, storeId, edit, Today, cancel),
                Made = price => CommandTexts.Text(price.Id),
                Find = (db, made) => PriceSaving.FindAsync(db, storeId, Guid.Parse(made), cancel),
                What = "price",
            },
            cancel
        );
        return saved.Ok ? saved.Value.Store : new Outcome<StoreView>(saved.Kind, null, saved.Faults);
    }

    public Task<Outcome<StoreView>> RemovePriceAsync(Guid storeId, Guid priceId, CancellationToken cancel = default) =>
        work.WriteAsync(
            async db =>
            {
                var gone = await db
                    .Prices.Where(price => price.Id == priceId && price.StoreId == storeId)
                    .ExecuteDeleteAsync(cancel);
                return gone == 0 ? Outcome.Missing<StoreView>("price") : (await StoreViews.FindAsync(db, storeId, cancel))!;
            },
            cancel
        );

    public async Task<string?> ExportCsvAsync(Guid storeId, CancellationToken cancel = default) =>
        await GetAsync(storeId, cancel) is { } store ? PriceCsv.Write(store) : null;

    public Task<Outcome<PricePreview>> PreviewCsvAsync(Guid storeId, TableFile csv, CancellationToken cancel = default) =>
        work.ReadAsync(db => PriceImporting.PreviewAsync(db, storeId, csv, cancel), cancel);

    public async Task<Outcome<StoreView>> ImportCsvAsync(
        Guid storeId,
        Stream csv,
        TableChoices choices,
        CommandId command,
        CancellationToken cancel = default
    )
    {
        using var text = await CappedReading.TakeAsync(csv, PriceCsv.MostBytes, cancel);
        if (text is null)
            return Outcome.Faulty<StoreView>(PriceImporting.TooLarge);
        var file = new TableFile(text.ToArray()) { Choices = choices };
        return await commands.RunAsync(
            new Making<StoreView>(command, CommandTexts.Asked("price list", storeId, file.Bytes, choices))
            {
                Make = db => PriceImporting.ImportAsync(db, storeId, file, Today, cancel),
                Made = store => CommandTexts.Text(store.Id),
                Find = (db, made) => StoreViews.FindAsync(db, Guid.Parse(made), cancel),
                NeedsRoom = true,
                What = "store",
            },
            cancel
        );
    }

    private DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    /// <summary>Adds a store; faulty where another has the name.</summary>
    internal static async Task<Outcome<StoreView>> CreateAsync(
        ShopContext db,
        string name,
        LengthUnit unit,
        CancellationToken cancel
    )
    {
        if (await IsTakenAsync(db, name, null, cancel))
            return NameTaken(name);
        var store = new StoredStore
        {
            Id = Guid.CreateVersion7(),
            Name = TextRules.Tidy(name),
            NameKey = TextRules.Key(name),
            Unit = unit,
        };
        db.Stores.Add(store);
        await db.SaveChangesAsync(cancel);
        return (await StoreViews.FindAsync(db, store.Id, cancel))!;
    }

    private static async Task<Outcome<StoreView>> SaveAsync(ShopContext db, StoreView wanted, CancellationToken cancel)
    {
        if (await db.Stores.FindAsync([wanted.Id], cancel) is not { } stored)
            return Outcome.Missing<StoreView>("store");
        if (stored.Version != wanted.Version)
            return Outcome.Conflict<StoreView>(
                Fault.Of(nameof(wanted.Name), stored.Name, "is the name now: another device changed the store")
            );
        var faults = Check(wanted);
        var saw = StoreSaw.Read(wanted, stored, faults);
        var trip = StoreTripReader.Read(wanted, faults);
        if (faults.Count > 0)
            return Outcome.Faulty<StoreView>(faults);
        if (await IsTakenAsync(db, wanted.Name, wanted.Id, cancel))
            return NameTaken(wanted.Name);
        (stored.FirstCuts, stored.CutTolerance) = saw;
        (stored.TripCost, stored.TripMinutes) = trip;
        (stored.Name, stored.NameKey) = (TextRules.Tidy(wanted.Name), TextRules.Key(wanted.Name));
        (stored.Unit, stored.Note) = (wanted.Unit, wanted.Note);
        await db.SaveChangesAsync(cancel);
        return (await StoreViews.FindAsync(db, stored.Id, cancel))!;
    }

    private static List<Fault> Check(StoreView store)
    {
        Fault?[] found =
        [
            TextRules.Name(nameof(store.Name), store.Name),
            TextRules.Free(nameof(store.Note), store.Note, TextRules.NoteCharacters),
            Enum.IsDefined(store.Unit) ? null : Fault.Of(nameof(store.Unit), store.Unit.ToString(), "isn't a unit"),
        ];
        return [.. found.OfType<Fault>()];
    }

    private static Task<bool> IsTakenAsync(ShopContext db, string name, Guid? except, CancellationToken cancel)
    {
        var key = TextRules.Key(name);
        return db.Stores.AnyAsync(store => store.NameKey == key && store.Id != except, cancel);
    }

    private static Outcome<StoreView> NameTaken(string name) =>
        Outcome.Faulty<StoreView>(Fault.Of(nameof(StoreView.Name), name, "is the name of another store: choose a different one"));
}
