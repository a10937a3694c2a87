using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stores;

/// <summary>A line that was saved, and its store's whole list.</summary>
internal sealed record SavedPrice(Guid Id, StoreView Store);

/// <summary>Puts read lines into a store's price list.</summary>
internal static class PriceSaving
{
    /// <summary>Adds or changes one line.</summary>
    public static async Task<Outcome<SavedPrice>> SaveAsync(
        ShopContext db,
        Guid storeId,
        PriceEdit edit,
        DateOnly today,
        CancellationToken cancel
    )
    {
        if (await db.Stores.FindAsync([storeId], cancel) is not { } store)
            return Outcome.Missing<SavedPrice>("store");
        var faults = new List<Fault>();
        var read = new PriceReader(store.Unit, await MaterialIndex.LoadAsync(db, cancel)).Read(edit, faults);
        if (read is null)
            return Outcome.Faulty<SavedPrice>(faults);
        var same = await FindAsync(db, storeId, read, cancel);
        if (same is not null && same.Id != edit.Id)
            return Outcome.Faulty<SavedPrice>(
                Fault.Of(nameof(edit.Length), edit.Length, $"is on this list already, at {same.Price}: change the price there")
            );
        var stored = edit.Id is null ? Add(db, storeId, read) : await db.Prices.FindAsync([edit.Id], cancel);
        if (stored is null || stored.StoreId != storeId)
            return Outcome.Missing<SavedPrice>("price");
        if (edit.Id is not null && stored.Version != edit.Version)
            return Outcome.Conflict<SavedPrice>(
                Fault.Of(nameof(edit.Price), stored.Price.ToString(), "is the price now: another device changed it")
            );
        Take(stored, read, today);
        await db.SaveChangesAsync(cancel);
        return new SavedPrice(stored.Id, (await StoreViews.FindAsync(db, storeId, cancel))!);
    }

    /// <summary>Returns a line that was saved, with its store as it is now; null when the line is gone.</summary>
    public static async Task<SavedPrice?> FindAsync(ShopContext db, Guid storeId, Guid id, CancellationToken cancel) =>
        await StoreViews.FindAsync(db, storeId, cancel) is { } store && store.Prices.Any(price => price.Id == id)
            ? new SavedPrice(id, store)
            : null;

    /// <summary>Adds lines of new sizes, updates those that are there.</summary>
    public static async Task PutAllAsync(
        ShopContext db,
        Guid storeId,
        IEnumerable<PriceRead> lines,
        DateOnly today,
        CancellationToken cancel
    )
    {
        var stored = await db
            .Prices.Where(price => price.StoreId == storeId)
            .ToDictionaryAsync(price => (price.MaterialId, price.Length, price.Width), cancel);
        foreach (var line in lines)
            Take(stored.GetValueOrDefault((line.Material.Id, line.Length, line.Width)) ?? Add(db, storeId, line), line, today);
        await db.SaveChangesAsync(cancel);
    }

    private static Task<StoredPrice?> FindAsync(ShopContext db, Guid storeId, PriceRead read, CancellationToken cancel) =>
        db.Prices.SingleOrDefaultAsync(
            price =>
                price.StoreId == storeId
                && price.MaterialId == read.Material.Id
                && price.Length == read.Length
                && price.Width == read.Width,
            cancel
        );

    internal static StoredPrice Add(ShopContext db, Guid storeId, PriceRead read) =>
        db
            .Prices.Add(
                new StoredPrice
                {
                    Id = Guid.CreateVersion7(),
                    StoreId = storeId,
                    MaterialId = read.Material.Id,
                }
            )
            .Entity;

    internal static void Take(StoredPrice stored, PriceRead read, DateOnly today)
    {
        (stored.MaterialId, stored.Length, stored.Width) = (read.Material.Id, read.Length, read.Width);
        (stored.Price, stored.InStock, stored.Seen) = (read.Price, read.InStock, read.Seen ?? today);
    }
}
