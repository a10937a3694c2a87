using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Book;

/// <summary>What the book is made from, read once.</summary>
internal sealed class BookRows
{
    public required ShopSettings Shop { get; init; }

    public required MaterialIndex Materials { get; init; }

    public required IReadOnlyDictionary<Guid, StoredPiece> Pieces { get; init; }

    /// <summary>Lines of the ledger that stand, by piece, in order: what was taken back, and what took it back, is left
    /// out.</summary>
    public required ILookup<Guid, StoredEntry> Entries { get; init; }

    /// <summary>Those of them that belong to a finish at the bench, by its id.</summary>
    public required ILookup<Guid, StoredEntry> OfFinish { get; init; }

    /// <summary>Purchases that stand.</summary>
    public required IReadOnlyList<StoredPurchase> Purchases { get; init; }

    /// <summary>Supplies that were bought at a price.</summary>
    public required IReadOnlyList<StoredSupply> Supplies { get; init; }

    /// <summary>Boards and sheets that are finished.</summary>
    public required IReadOnlyList<StoredFinish> Finishes { get; init; }

    /// <summary>Cuts that are made, by plan, layout and copy.</summary>
    public required ILookup<(Guid Plan, int Layout, int Copy), int> Cuts { get; init; }

    public required IReadOnlyDictionary<Guid, PlanOwners> Plans { get; init; }

    public required IReadOnlyDictionary<Guid, string> Projects { get; init; }

    public required IReadOnlyList<StoredPrice> Prices { get; init; }

    public required IReadOnlyDictionary<Guid, string> Stores { get; init; }

    public required IReadOnlyList<PieceNow> OnHand { get; init; }

    /// <summary>How long work took, oldest first.</summary>
    public required IReadOnlyList<WorkLog> Logs { get; init; }

    public static async Task<BookRows> LoadAsync(ShopContext db, ReadPlans plans, CancellationToken cancel)
    {
        var purchases = await db
            .Purchases.AsNoTracking()
            .Where(one => one.Standing)
            .OrderBy(one => one.Number)
            .ToListAsync(cancel);
        var finishes = await db.Finishes.AsNoTracking().Where(one => one.Standing).ToListAsync(cancel);
        var entries = await StandingAsync(db, cancel);
        var names = await db
            .Projects.IgnoreQueryFilters()
            .AsNoTracking()
            .ToDictionaryAsync(one => one.Id, one => one.Name, cancel);
        var wanted = purchases.Select(one => one.PlanId).Concat(finishes.Select(one => one.PlanId)).Distinct().ToList();
        var stored = await db.Plans.AsNoTracking().Where(plan => wanted.Contains(plan.Id)).ToListAsync(cancel);
        return new BookRows
        {
            Shop = await ShopService.ReadAsync(db, cancel),
            Materials = await MaterialIndex.LoadAsync(db, cancel),
            Pieces = await db.Pieces.AsNoTracking().ToDictionaryAsync(piece => piece.Id, cancel),
            Entries = entries.ToLookup(entry => entry.PieceId),
            OfFinish = entries.Where(entry => entry.FinishId is not null).ToLookup(entry => entry.FinishId!.Value),
            Purchases = purchases,
            Supplies = await db.Supplies.AsNoTracking().Where(one => one.Bought && one.Price != null).ToListAsync(cancel),
            Finishes = [.. finishes.OrderBy(one => one.WhenUtc).ThenBy(one => one.Id)],
            Cuts = (await db.Cuts.AsNoTracking().Where(cut => cut.Made).ToListAsync(cancel)).ToLookup(
                cut => (cut.PlanId, cut.Layout, cut.Copy),
                cut => cut.Cut
            ),
            Plans = stored.ToDictionary(plan => plan.Id, plan => PlanOwners.Of(plan, plans, names)),
            Projects = names,
            Prices = await db.Prices.AsNoTracking().ToListAsync(cancel),
            Stores = await db.Stores.AsNoTracking().ToDictionaryAsync(store => store.Id, store => store.Name, cancel),
            OnHand = await StockNow.OnHandAsync(db, cancel),
            Logs = await WorkLogs.ReadAsync(db, cancel),
        };
    }

    private static async Task<List<StoredEntry>> StandingAsync(ShopContext db, CancellationToken cancel)
    {
        var all = await db.Entries.AsNoTracking().OrderBy(entry => entry.Number).ToListAsync(cancel);
        var undone = all.Where(entry => entry.Undoes is not null).Select(entry => entry.Undoes!.Value).ToHashSet();
        return [.. all.Where(entry => entry.Undoes is null && !undone.Contains(entry.Id))];
    }

    /// <summary>What a piece is called, with its tag: <c>R3, Pine 1×3, 8 ft</c>.</summary>
    public string NameOf(StoredPiece piece, StoredEntry entry) =>
        $"{piece.Tag}, {StockOf(piece.MaterialId, entry.Length, entry.Width)}";

    /// <summary>What stock is called: <c>Pine 1×3, 8 ft</c>.</summary>
    public string StockOf(string materialId, Length length, Length width)
    {
        var material = Materials[materialId];
        return $"{material.Name}, {StockWords.Size(length, material.Width ?? width, material.Width, Shop.Unit)}";
    }
}
