using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Stores;

/// <summary>Takes price lists out of files.</summary>
internal static class PriceImporting
{
    /// <summary>The fault of a file that is too large.</summary>
    public static Fault TooLarge { get; } = new("file", "", "is more than 5 MB: too large for a price list");

    /// <summary>What a file would do.</summary>
    public static async Task<Outcome<PricePreview>> PreviewAsync(
        ShopContext db,
        Guid storeId,
        TableFile file,
        CancellationToken cancel
    )
    {
        if (file.Bytes.Length > PriceCsv.MostBytes)
            return Outcome.Faulty<PricePreview>(TooLarge);
        if (await db.Stores.FindAsync([storeId], cancel) is not { } store)
            return Outcome.Missing<PricePreview>("store");
        var table = PriceCsv.Read(file, store.Unit, await MaterialIndex.LoadAsync(db, cancel));
        var there = await db
            .Prices.Where(price => price.StoreId == storeId)
            .ToDictionaryAsync(price => (price.MaterialId, price.Length, price.Width), price => price.Price, cancel);
        return new PricePreview([.. table.Lines.Select(line => Row(line, there))], [.. table.Faults], table.Unused, table.Format);
    }

    /// <summary>Does it, or nothing where anything is wrong.</summary>
    public static async Task<Outcome<StoreView>> ImportAsync(
        ShopContext db,
        Guid storeId,
        TableFile file,
        DateOnly today,
        CancellationToken cancel
    )
    {
        if (await db.Stores.FindAsync([storeId], cancel) is not { } store)
            return Outcome.Missing<StoreView>("store");
        var table = PriceCsv.Read(file, store.Unit, await MaterialIndex.LoadAsync(db, cancel));
        if (table.Faults.Count > 0)
            return Outcome.Faulty<StoreView>(table.Faults);
        await PriceSaving.PutAllAsync(db, storeId, table.Lines.Select(line => line.Read), today, cancel);
        return (await StoreViews.FindAsync(db, storeId, cancel))!;
    }

    private static PricePreviewRow Row(PriceLineRead line, Dictionary<(string, Length, Length), Money> there)
    {
        var (material, length, width) = (line.Read.Material, line.Read.Length, line.Read.Width);
        Money? before = there.TryGetValue((material.Id, length, width), out var price) ? price : null;
        return new(line.Line, material.Name, length, width, line.Read.Price, before, line.Read.InStock);
    }
}
