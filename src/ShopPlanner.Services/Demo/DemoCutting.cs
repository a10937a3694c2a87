using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Demo;

/// <summary>Plans a project of the demo and cuts half of it, by the rules that every plan is cut by.</summary>
internal sealed class DemoCutting(ICutPlanner planner, PlanStorage storage, ReadPlans plans, TimeProvider clock)
{
    // The start waits for it.
    private static readonly TimeSpan Search = TimeSpan.FromMilliseconds(300);

    /// <summary>Stores a plan, finishes half of its boards and sheets with their leftovers in the bin, and makes the first cut of
    /// the next.</summary>
    /// <exception cref="ShopStartException">The project cannot be planned.</exception>
    public async Task CutHalfAsync(ShopContext db, Guid project, CancellationToken cancel)
    {
        var plan = (await BenchPlan.LoadAsync(db, plans, await PlanAsync(db, project, cancel), cancel))!;
        var stocks = plan
            .Record.Plan.Layouts.SelectMany((layout, at) => Enumerable.Range(1, layout.Copies).Select(copy => (at, copy)))
            .ToList();
        var half = stocks.Count / 2;
        foreach (var (layout, copy) in stocks.Take(half))
            await FinishAsync(db, plan, layout, copy, cancel);
        if (stocks.Count > half && plan.Record.Plan.Layouts[stocks[half].at].Cuts is [var first, ..])
            db.Cuts.Add(Tick(plan, stocks[half].at, stocks[half].copy, first.N));
        await db.SaveChangesAsync(cancel);
        await plan.SettleStateAsync(db, cancel);
        await db.SaveChangesAsync(cancel);
    }

    private async Task<Guid> PlanAsync(ShopContext db, Guid project, CancellationToken cancel)
    {
        var stores = await db.Stores.Select(store => store.Id).ToListAsync(cancel);
        var order = new PlanOrder([project], null, [.. stores], UseRack: true, UseBin: true, Seconds: 1, Replaces: []);
        var draft = RequestBuilder.Build(order, await Snapshot.ForOrderAsync(db, plans, order, cancel));
        DemoSeed.Refuse("projects.json", draft.Faults);
        var plan = planner.Plan(draft.Value!.Request, new SearchControl { Time = Search, Cancel = cancel });
        DemoSeed.Refuse("projects.json", planner.Check(draft.Value.Request, plan));
        var stored = await storage.StoreInAsync(db, draft.Value, plan, planner.Version, null, cancel);
        DemoSeed.Refuse("projects.json", stored.Faults);
        return stored.Value!.Id;
    }

    private async Task FinishAsync(ShopContext db, BenchPlan plan, int layout, int copy, CancellationToken cancel)
    {
        var unit = plan.Record.View([]).UnitOfLayout(layout);
        string Text(Length length) => LengthFormat.Exact(length, unit);
        var left = plan.Record.Plan.Layouts[layout].Leftovers;
        var measured = left.Select((one, i) => new MeasuredLeftover(i, Text(one.Dx), Text(one.Dy), one.Keep)).ToImmutableArray();
        var refusal = await new Finishing(db, plan, DemoSeed.Device, clock, cancel).FinishAsync(
            new FinishedStock(layout, copy, AllCutsMade: true, measured)
        );
        DemoSeed.Refuse("projects.json", refusal?.Faults ?? []);
        await db.SaveChangesAsync(cancel);
    }

    private StoredCut Tick(BenchPlan plan, int layout, int copy, int cut) =>
        new()
        {
            PlanId = plan.Record.Stored.Id,
            Layout = layout,
            Copy = copy,
            Cut = cut,
            Made = true,
            Device = DemoSeed.Device,
            WhenUtc = clock.GetUtcNow().UtcDateTime,
        };
}
