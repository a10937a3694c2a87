using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Bought;

/// <summary>Where and for how much a piece is bought.</summary>
/// <param name="Place">See <see cref="StoredPurchase.Place"/>.</param>
/// <param name="Price">What was paid for it.</param>
/// <param name="Store">The store's name.</param>
/// <param name="Finish">The finish at the bench that enters it; null where it was ticked on the list.</param>
internal sealed record Booked(int Place, Money Price, string Store, StoredFinish? Finish = null);

/// <summary>Enters what is bought for a plan: the piece into the rack and the money beside it, never one without the
/// other.</summary>
internal sealed class Booking(ShopContext db, PlanRecord record, string device, TimeProvider clock, CancellationToken cancel)
{
    private string Reason => $"bought for {record.Stored.Name}";

    /// <summary>Buys a piece of new stock.</summary>
    public async Task<StoredPiece> BuyAsync(CutStock stock, Booked booked)
    {
        var piece = await Ledger.EnterAsync(
            db,
            StockPlace.Rack,
            stock.Material,
            StockEntryKind.Bought,
            new LedgerNote(stock.Length, stock.Width, AsBought(stock), "", Reason, device, booked.Finish?.Id),
            clock,
            cancel
        );
        db.Purchases.Add(
            new StoredPurchase
            {
                Id = Guid.CreateVersion7(),
                Number = await db.NextAsync(Counters.Purchases, cancel),
                PlanId = record.Stored.Id,
                Stock = stock.Id,
                Place = booked.Place,
                PieceId = piece.Id,
                Price = booked.Price,
                Store = booked.Store,
                FinishId = booked.Finish?.Id,
                Standing = true,
                WhenUtc = clock.GetUtcNow().UtcDateTime,
                Device = device,
            }
        );
        return piece;
    }

    /// <summary>Returns the condition of a new board or sheet: a plan from the rack trims it as a plan from the store
    /// does.</summary>
    public StockCondition AsBought(CutStock stock) =>
        StockCondition.AsBought(record.Draft.Request.Materials.Single(material => material.Id == stock.Material).Form);

    /// <summary>Takes a piece in the rack back to the store.</summary>
    public async Task ReturnAsync(BoughtPiece bought)
    {
        var (now, piece) = (bought.Now, (await db.Pieces.FindAsync([bought.Now.Piece.Id], cancel))!);
        var note = new LedgerNote(now.Length, now.Width, now.Condition, now.Note, Reason, device);
        await Ledger.WriteAsync(db, piece, StockEntryKind.Returned, -1, note, null, clock, cancel);
        bought.Purchase.Standing = false;
    }
}
