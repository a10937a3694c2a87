using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Buying;

/// <summary>Prices as they were paid, and as they were seen in the store.</summary>
internal static class PriceKeeping
{
    /// <summary>Corrects what was paid for each piece of a line. Null when it was done.</summary>
    public static async Task<Outcome<ShoppingList>?> CorrectAsync(
        ShopContext db,
        PlanRecord record,
        string stock,
        string price,
        CancellationToken cancel
    )
    {
        var read = MoneyText.Parse(price);
        if (!read.Ok)
            return Outcome.Faulty<ShoppingList>(read.Fault.At("price"));
        var bought = await db
            .Purchases.Where(one => one.PlanId == record.Stored.Id && one.Stock == stock && one.Standing)
            .ToListAsync(cancel);
        if (bought.Count == 0)
            return Outcome.Faulty<ShoppingList>(
                Fault.Of("price", price, "has no purchase to go with: check off what you bought first")
            );
        foreach (var purchase in bought)
            purchase.Price = read.Value;
        return null;
    }

    /// <summary>Writes what was seen in the store into its price list. Null when it was done.</summary>
    public static async Task<Outcome<ShoppingList>?> NoteAsync(
        ShopContext db,
        PlanRecord record,
        SeenInStore seen,
        DateOnly today,
        CancellationToken cancel
    )
    {
        Money? price = null;
        if (seen.Price is { } typed)
        {
            var read = MoneyText.Parse(typed);
            if (!read.Ok)
                return Outcome.Faulty<ShoppingList>(read.Fault.At("price"));
            price = read.Value;
        }

        if (
            record.Draft.Request.Stock.FirstOrDefault(one => one.Id == seen.Stock) is not { } stock
            || record.Draft.Basis.StockOrigins[stock.Id] is not StockOrigin.PriceOrigin sold
        )
            return Outcome.Faulty<ShoppingList>(Fault.Of("line", seen.Stock, "is not on this list: open the list again"));
        var size = new SoldSize(stock.Material, stock.Length, stock.Width);
        var refusal = await PriceNoting.NoteAsync(db, sold.Price, size, (price, seen.InStock), today, cancel);
        return refusal is null ? null : Outcome.Faulty<ShoppingList>(refusal);
    }
}
