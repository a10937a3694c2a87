using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stock;

/// <summary>Keeps the money with the piece where a line of the ledger is undone: a purchase stands as long as its piece was
/// bought and not returned.</summary>
internal static class PurchaseUndo
{
    /// <summary>Why what was bought for a plan cannot be taken back: another plan counts on it. Null where it can.</summary>
    public static async Task<Fault?> FindHindranceAsync(ShopContext db, StoredEntry entry, string tag, CancellationToken cancel)
    {
        if (entry.Kind != StockEntryKind.Bought)
            return null;
        var other = await (
            from purchase in db.Purchases
            join promise in db.Promises on purchase.PieceId equals promise.PieceId
            join plan in db.Plans on promise.PlanId equals plan.Id
            where purchase.PieceId == entry.PieceId && promise.Active && promise.PlanId != purchase.PlanId
            select plan.Name
        ).FirstOrDefaultAsync(cancel);
        return other is null ? null : Fault.Of(tag, other, "is going to cut it: cancel that plan first");
    }

    /// <summary>Lets the purchase of a piece follow an undo.</summary>
    /// <param name="db">The database.</param>
    /// <param name="undone">The line that was taken back.</param>
    /// <param name="cancel">Stops it before it is saved.</param>
    public static async Task FollowAsync(ShopContext db, StoredEntry undone, CancellationToken cancel)
    {
        if (undone.Kind is not (StockEntryKind.Bought or StockEntryKind.Returned))
            return;
        if (await db.Purchases.SingleOrDefaultAsync(one => one.PieceId == undone.PieceId, cancel) is not { } purchase)
            return;
        if (undone.Kind == StockEntryKind.Bought)
            await FallAsync(db, purchase, cancel);
        else
            await StandAgainAsync(db, purchase, cancel);
    }

    private static async Task FallAsync(ShopContext db, StoredPurchase purchase, CancellationToken cancel)
    {
        purchase.Standing = false;
        foreach (var promise in await PromisesAsync(db, purchase, cancel))
            promise.Active = false;
    }

    // Its place on the list may have been bought again meanwhile, and so may its plan be over.
    private static async Task StandAgainAsync(ShopContext db, StoredPurchase purchase, CancellationToken cancel)
    {
        var taken = await db
            .Purchases.Where(one => one.PlanId == purchase.PlanId && one.Stock == purchase.Stock && one.Standing)
            .Select(one => one.Place)
            .ToHashSetAsync(cancel);
        if (taken.Contains(purchase.Place))
            purchase.Place = Enumerable.Range(1, taken.Count + 1).First(place => !taken.Contains(place));
        purchase.Standing = true;
        var isOpen = await db.Plans.AnyAsync(
            plan => plan.Id == purchase.PlanId && (plan.State == PlanState.Ready || plan.State == PlanState.Cutting),
            cancel
        );
        foreach (var promise in await PromisesAsync(db, purchase, cancel))
            promise.Active = isOpen;
    }

    private static Task<List<StoredPromise>> PromisesAsync(ShopContext db, StoredPurchase purchase, CancellationToken cancel) =>
        db
            .Promises.Where(promise => promise.PieceId == purchase.PieceId && promise.PlanId == purchase.PlanId)
            .ToListAsync(cancel);
}
