using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Buying;

/// <summary>Reads shopping lists.</summary>
internal sealed class ListReading(ReadPlans plans, SupplyKeeping supplies, TimeProvider clock)
{
    /// <summary>A plan's list; null where there is no such plan.</summary>
    public async Task<ShoppingList?> OfPlanAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Plans.FindAsync([id], cancel) is not { } stored)
            return null;
        var record = plans.Read(stored);
        var view = record.View([]);
        var stores = await StoresAsync(db, record, view, cancel);
        var projects = view.Order.Projects.Distinct().ToImmutableArray();
        var others = await SuppliesAsync(db, projects, cancel);
        var totals = Total(stores, others) with { Elsewhere = await ElsewhereAsync(db, id, projects, cancel) };
        return new ShoppingList(
            new ListedPlan(id, view.ShortId, stored.State),
            view.Summary.Name,
            projects,
            stores,
            others,
            Taken(view),
            totals,
            clock.GetUtcNow().UtcDateTime
        );
    }

    /// <summary>What a project needs besides boards and sheets; null where there is no such project.</summary>
    public async Task<ShoppingList?> OfProjectAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await SuppliesAsync(db, [id], cancel) is not [var only])
            return null;
        var totals = Total([], [only]) with { Elsewhere = await ElsewhereAsync(db, null, [id], cancel) };
        return new ShoppingList(null, only.Name, [id], [], [only], [], totals, clock.GetUtcNow().UtcDateTime);
    }

    private static async Task<ImmutableArray<StoreLines>> StoresAsync(
        ShopContext db,
        PlanRecord record,
        PlanView view,
        CancellationToken cancel
    )
    {
        var lines = await BoughtLines.LoadAsync(db, record, cancel);
        var sold = lines
            .Select(line => record.Draft.Basis.StockOrigins[line.Stock.Id])
            .OfType<StockOrigin.PriceOrigin>()
            .Select(origin => origin.Price)
            .ToList();
        var prices = await db
            .Prices.AsNoTracking()
            .Where(price => sold.Contains(price.Id))
            .ToDictionaryAsync(one => one.Id, cancel);
        return
        [
            .. lines
                .GroupBy(line => view.Stocks[line.Stock.Id].Store ?? "")
                .OrderBy(same => same.Key, StringComparer.OrdinalIgnoreCase)
                .Select(same => new StoreLines(
                    same.Key,
                    same.Select(line => Seen(record, line)).Min(),
                    [.. same.Select(line => View(line, record, view, prices))]
                )),
        ];
    }

    private static DateOnly? Seen(PlanRecord record, BoughtLine line) =>
        record.Draft.Basis.Seen.TryGetValue(line.Stock.Id, out var day) ? day : null;

    private static StockLine View(BoughtLine line, PlanRecord record, PlanView view, Dictionary<Guid, StoredPrice> prices)
    {
        var listed = record.Draft.Basis.StockOrigins[line.Stock.Id] is StockOrigin.PriceOrigin sold
            ? prices.GetValueOrDefault(sold.Price)
            : null;
        return new StockLine(
            line.Stock.Id,
            view.Stocks[line.Stock.Id].Name,
            record.Draft.Request.Materials.Single(material => material.Id == line.Stock.Material).Form,
            line.Asked,
            line.Needed,
            line.Left,
            line.Stock.Price,
            listed?.Price,
            listed?.InStock ?? false,
            [.. line.Pieces.Select(View)]
        );
    }

    private static BoughtBoard View(BoughtPiece piece) =>
        new(
            piece.Purchase.Place,
            piece.Now.Piece.Tag,
            piece.Purchase.Price,
            piece.Purchase.Store,
            piece.State,
            piece.Purchase.Device
        );

    private async Task<ImmutableArray<ProjectSupplies>> SuppliesAsync(
        ShopContext db,
        ImmutableArray<Guid> projects,
        CancellationToken cancel
    )
    {
        var wanted = projects.ToList();
        var names = await db
            .Projects.Where(project => wanted.Contains(project.Id))
            .ToDictionaryAsync(project => project.Id, project => project.Name, cancel);
        var all = ImmutableArray.CreateBuilder<ProjectSupplies>();
        foreach (var id in projects.Where(names.ContainsKey))
            all.Add(new ProjectSupplies(id, Bidi.Isolate(names[id]), await supplies.ListAsync(db, id, cancel)));
        return all.ToImmutable();
    }

    private static ImmutableArray<TakenLine> Taken(PlanView view) =>
        [
            .. view
                .Plan.Layouts.Select(layout => view.Stocks[layout.Stock])
                .Where(stock => stock.Tag is not null)
                .Select(stock => new TakenLine(stock.Tag!, stock.Name, stock.Note)),
        ];

    private static BuyTotals Total(ImmutableArray<StoreLines> stores, ImmutableArray<ProjectSupplies> others)
    {
        var lines = stores.SelectMany(store => store.Lines).ToList();
        var needed = others.SelectMany(one => one.Lines).ToList();
        Money Sum(IEnumerable<Money> amounts) => amounts.Aggregate(Money.Zero, (sum, amount) => sum + amount);
        Money Priced(Func<SupplyLine, bool> which) => Sum(needed.Where(which).Select(line => line.Price ?? Money.Zero));
        return new BuyTotals(
            Sum(stores.Select(store => store.Planned)) + Priced(line => line.IsNeeded),
            Sum(lines.Select(line => line.Paid)) + Priced(line => line.Bought),
            Sum(stores.Select(store => store.Left)) + Priced(line => line.IsNeeded && !line.Bought),
            Money.Zero,
            needed.Count(line => line is { IsNeeded: true, Price: null })
        );
    }

    private static async Task<Money> ElsewhereAsync(
        ShopContext db,
        Guid? plan,
        ImmutableArray<Guid> projects,
        CancellationToken cancel
    )
    {
        var wanted = projects.ToList();
        var prices = await db
            .Purchases.Where(one => one.Standing && one.PlanId != plan)
            .Where(one => db.PlanProjects.Any(own => own.PlanId == one.PlanId && wanted.Contains(own.ProjectId)))
            .Select(one => one.Price)
            .ToListAsync(cancel);
        return prices.Aggregate(Money.Zero, (sum, price) => sum + price);
    }
}
