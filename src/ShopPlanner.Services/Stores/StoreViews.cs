using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stores;

/// <summary>Stores as shown: price lists by material, shortest first.</summary>
internal static class StoreViews
{
    public static async Task<IReadOnlyList<StoreView>> ListAsync(ShopContext db, CancellationToken cancel)
    {
        var materials = await MaterialIndex.LoadAsync(db, cancel);
        var prices = (await db.Prices.AsNoTracking().ToListAsync(cancel)).ToLookup(price => price.StoreId);
        var stores = await db.Stores.AsNoTracking().OrderBy(store => store.NameKey).ToListAsync(cancel);
        return [.. stores.Select(store => View(store, prices[store.Id], materials))];
    }

    public static async Task<StoreView?> FindAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Stores.AsNoTracking().SingleOrDefaultAsync(store => store.Id == id, cancel) is not { } store)
            return null;
        var prices = await db.Prices.AsNoTracking().Where(price => price.StoreId == id).ToListAsync(cancel);
        return View(store, prices, await MaterialIndex.LoadAsync(db, cancel));
    }

    private static StoreView View(StoredStore store, IEnumerable<StoredPrice> prices, MaterialIndex materials) =>
        new(
            store.Id,
            store.Name,
            store.Unit,
            store.Note,
            [
                .. prices
                    .Select(price => Row(price, materials[price.MaterialId]))
                    .OrderBy(row => materials[row.MaterialId].Form)
                    .ThenBy(row => row.MaterialName, StringComparer.OrdinalIgnoreCase)
                    .ThenBy(row => row.Length)
                    .ThenBy(row => row.Width),
            ],
            store.Version
        )
        {
            FirstCuts = StoreSaw.CutsText(store),
            CutTolerance = StoreSaw.ToleranceText(store),
            TripCost = StoreTripReader.CostText(store),
            TripMinutes = StoreTripReader.MinutesText(store),
        };

    private static PriceRow Row(StoredPrice price, StoredMaterial material) =>
        new(
            price.Id,
            price.MaterialId,
            material.Name,
            price.Length,
            material.Width ?? price.Width,
            price.Price,
            price.InStock,
            price.Seen,
            price.Version
        );
}
