using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Bought;

/// <summary>Reads what was bought for a plan, and what is left to buy.</summary>
internal static class BoughtLines
{
    /// <summary>Returns each kind of new stock that a plan cuts, in the order of its layouts. Purchases are tracked where the
    /// context tracks.</summary>
    public static async Task<ImmutableArray<BoughtLine>> LoadAsync(ShopContext db, PlanRecord record, CancellationToken cancel)
    {
        var plan = record.Stored.Id;
        var finished = await db
            .Finishes.Where(finish => finish.PlanId == plan && finish.Standing)
            .Select(finish => finish.Layout)
            .ToListAsync(cancel);
        var pieces = (await PiecesAsync(db, record, cancel)).ToLookup(piece => piece.Purchase.Stock);
        var isOpen = record.Stored.State is PlanState.Ready or PlanState.Cutting;
        var layouts = record.Plan.Layouts;
        return
        [
            .. New(record)
                .Select(stock => new BoughtLine(
                    stock,
                    layouts.Where(layout => layout.Stock == stock.Id).Sum(layout => layout.Copies),
                    finished.Count(at => layouts[at].Stock == stock.Id),
                    isOpen,
                    [.. pieces[stock.Id]]
                )),
        ];
    }

    /// <summary>Returns how many boards and sheets are still to be bought for a plan; none for one that is canceled or all
    /// cut.</summary>
    public static async Task<int> LeftAsync(ShopContext db, PlanRecord record, CancellationToken cancel) =>
        (await LoadAsync(db, record, cancel)).Sum(line => line.Left);

    /// <summary>Returns the materials of which everything is bought: what stores ask for them now changes nothing.</summary>
    public static IReadOnlySet<string> Settled(IEnumerable<BoughtLine> lines) =>
        lines
            .GroupBy(line => line.Stock.Material)
            .Where(same => same.All(line => line.Left == 0))
            .Select(same => same.Key)
            .ToHashSet();

    private static IEnumerable<CutStock> New(PlanRecord record)
    {
        var stocks = record.Draft.Request.Stock.Where(stock => !stock.Offcut).ToDictionary(stock => stock.Id);
        return record.Plan.Layouts.Select(layout => layout.Stock).Distinct().Where(stocks.ContainsKey).Select(id => stocks[id]);
    }

    private static async Task<List<BoughtPiece>> PiecesAsync(ShopContext db, PlanRecord record, CancellationToken cancel)
    {
        var plan = record.Stored.Id;
        var purchases = await db
            .Purchases.Where(purchase => purchase.PlanId == plan && purchase.Standing)
            .OrderBy(purchase => purchase.Place)
            .ToListAsync(cancel);
        if (purchases.Count == 0)
            return [];
        var ids = purchases.Select(purchase => purchase.PieceId).ToList();
        var now = (await StockNow.FindAsync(db, ids, cancel)).ToDictionary(piece => piece.Piece.Id);
        var cut = await CutAsync(db, ids, cancel);
        var stocks = record.Draft.Request.Stock.ToDictionary(stock => stock.Id);
        var forms = record.Draft.Request.Materials.ToDictionary(material => material.Id, material => material.Form);
        return
        [
            .. purchases.Select(purchase => new BoughtPiece(
                purchase,
                now[purchase.PieceId],
                cut.Contains(purchase.PieceId)
                    ? BoughtState.Cut
                    : StateOf(
                        now[purchase.PieceId],
                        stocks[purchase.Stock],
                        forms[stocks[purchase.Stock].Material],
                        record.Stored
                    )
            )),
        ];
    }

    // By a finish that stands, of whatever plan.
    private static Task<HashSet<Guid>> CutAsync(ShopContext db, List<Guid> pieces, CancellationToken cancel) =>
        db
            .Entries.Where(entry =>
                entry.Kind == StockEntryKind.Cut
                && pieces.Contains(entry.PieceId)
                && db.Finishes.Any(finish => finish.Id == entry.FinishId && finish.Standing)
            )
            .Select(entry => entry.PieceId)
            .ToHashSetAsync(cancel);

    private static BoughtState StateOf(PieceNow now, CutStock stock, StockForm form, StoredPlan plan) =>
        !now.OnHand ? BoughtState.Gone
        : now.PromisedPlanId is { } other && other != plan.Id ? BoughtState.Promised
        : now.Length < stock.Length || now.Width < stock.Width ? BoughtState.TooSmall
        : !now.Condition.IsAsGoodAsNew(form) ? BoughtState.Flawed
        : BoughtState.InRack;
}
