using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Opening;

/// <summary>Notes once what an earlier program bought at the bench: it entered the board and left the money out. The plan's price
/// is taken for paid.</summary>
internal sealed class PurchaseUpgrade(ShopContext db, ILogger log)
{
    private const string Fact = "purchases",
        Newest = "1";

    /// <summary>Adds a purchase for each board that a standing finish entered as bought. A plan that cannot be read is named in
    /// the log, and left.</summary>
    public async Task RunAsync(CancellationToken cancel)
    {
        if (await db.Facts.FindAsync([Fact], cancel) is not null)
            return;
        var bought = await (
            from entry in db.Entries.AsNoTracking()
            join finish in db.Finishes.AsNoTracking() on entry.FinishId equals finish.Id
            where entry.Kind == StockEntryKind.Bought && finish.Standing
            orderby entry.Number
            select new BoughtAtBench(entry, finish)
        ).ToListAsync(cancel);
        foreach (var same in bought.GroupBy(one => one.Finish.PlanId))
            await AddAsync(same.Key, same, cancel);
        db.Facts.Add(new StoredFact { Name = Fact, Value = Newest });
        await db.SaveChangesAsync(cancel);
    }

    private async Task AddAsync(Guid plan, IEnumerable<BoughtAtBench> bought, CancellationToken cancel)
    {
        var stored = await db.Plans.AsNoTracking().SingleAsync(one => one.Id == plan, cancel);
        if (Read(stored) is not { } record)
            return;
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var one in bought)
        {
            var id = record.Plan.Layouts[one.Finish.Layout].Stock;
            var stock = record.Draft.Request.Stock.Single(each => each.Id == id);
            places[id] = places.GetValueOrDefault(id) + 1;
            db.Purchases.Add(
                new StoredPurchase
                {
                    Id = Guid.CreateVersion7(),
                    Number = await db.NextAsync(Counters.Purchases, cancel),
                    PlanId = plan,
                    Stock = id,
                    Place = places[id],
                    PieceId = one.Entry.PieceId,
                    Price = stock.Price,
                    Store = record.Draft.Basis.Stocks[id].Store ?? "",
                    FinishId = one.Finish.Id,
                    Standing = true,
                    WhenUtc = one.Entry.WhenUtc,
                    Device = one.Entry.Device,
                }
            );
        }
    }

    private PlanRecord? Read(StoredPlan stored)
    {
        try
        {
            return new ReadPlans().Read(stored);
        }
        catch (StoredDocumentException problem)
        {
            log.LogWarning("What plan {Plan} bought is not counted: {Problem}", stored.Id, problem.Message);
            return null;
        }
    }

    private sealed record BoughtAtBench(StoredEntry Entry, StoredFinish Finish);
}
