using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stores;

/// <summary>What a line of a price list sells.</summary>
internal sealed record SoldSize(string Material, Length Length, Length Width);

/// <summary>Writes what somebody saw in a store into its price list.</summary>
internal static class PriceNoting
{
    /// <summary>Notes a price, or whether there is any, as seen today; the latest word counts. Null when it was done.</summary>
    /// <param name="db">The database.</param>
    /// <param name="price">Id of the line.</param>
    /// <param name="size">What it is expected to sell.</param>
    /// <param name="seen">What was seen; null leaves it as it is.</param>
    /// <param name="today">The day.</param>
    /// <param name="cancel">Stops it before it is saved.</param>
    public static async Task<Fault?> NoteAsync(
        ShopContext db,
        Guid price,
        SoldSize size,
        (Money? Price, bool? InStock) seen,
        DateOnly today,
        CancellationToken cancel
    )
    {
        if (await db.Prices.FindAsync([price], cancel) is not { } stored || !Sells(stored, size))
            return new Fault("price list", "", "no longer has this size: add it to the store's price list");
        stored.Price = seen.Price ?? stored.Price;
        stored.InStock = seen.InStock ?? stored.InStock;
        stored.Seen = today;
        return null;
    }

    // A board's line has no width: it is its material's.
    private static bool Sells(StoredPrice stored, SoldSize size) =>
        stored.MaterialId == size.Material
        && stored.Length == size.Length
        && (!stored.Width.IsPositive || stored.Width == size.Width);
}
