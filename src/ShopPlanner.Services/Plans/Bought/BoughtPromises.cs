using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Bought;

/// <summary>Keeps what was bought for a plan for it, as many as it still cuts; the rest is free stock of the rack.</summary>
internal static class BoughtPromises
{
    /// <summary>Makes the promises of what was bought for a plan what its need is now. What comes before is saved
    /// already.</summary>
    public static async Task SettleAsync(ShopContext db, PlanRecord record, CancellationToken cancel)
    {
        var plan = record.Stored.Id;
        var own = await db
            .Purchases.Where(purchase => purchase.PlanId == plan)
            .Select(purchase => purchase.PieceId)
            .ToListAsync(cancel);
        if (own.Count == 0)
            return;
        var kept = (await BoughtLines.LoadAsync(db, record, cancel))
            .SelectMany(line => line.Ready.Take(line.Needed))
            .Select(piece => piece.Now.Piece.Id)
            .ToHashSet();
        var promises = await db
            .Promises.Where(promise => promise.PlanId == plan && own.Contains(promise.PieceId))
            .ToListAsync(cancel);
        foreach (var promise in promises)
            promise.Active = kept.Remove(promise.PieceId);
        foreach (var piece in kept)
            db.Promises.Add(
                new StoredPromise
                {
                    Id = Guid.CreateVersion7(),
                    PieceId = piece,
                    PlanId = plan,
                    Active = true,
                }
            );
        await db.SaveChangesAsync(cancel);
    }
}
