using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>A plan about to be worked on at the bench.</summary>
internal sealed class BenchPlan
{
    private readonly StoredPlan stored;

    private BenchPlan(PlanRecord record) => (stored, Record) = (record.Stored, record);

    public PlanRecord Record { get; }

    public CutRequest Request => Record.Draft.Request;

    public static async Task<BenchPlan?> LoadAsync(ShopContext db, ReadPlans plans, Guid id, CancellationToken cancel) =>
        await db.Plans.FindAsync([id], cancel) is { } stored ? new BenchPlan(plans.Read(stored)) : null;

    /// <summary>Null when there is such a board or sheet to work on.</summary>
    public Fault? Refuse(int layout, int copy) => BenchRules.Refuse(stored, Record.Plan, layout, copy);

    public CutStock StockOf(int layout) => Request.Stock.Single(stock => stock.Id == Record.Plan.Layouts[layout].Stock);

    public Task<StoredFinish?> FinishAsync(ShopContext db, int layout, int copy, CancellationToken cancel) =>
        db.Finishes.SingleOrDefaultAsync(
            f => f.PlanId == stored.Id && f.Layout == layout && f.Copy == copy && f.Standing,
            cancel
        );

    /// <summary>The parts that a board or sheet has given, or will have where every cut is made.</summary>
    public async Task<IEnumerable<PlacedPiece>> GivenAsync(
        ShopContext db,
        int index,
        int copy,
        bool allCutsMade,
        CancellationToken cancel
    )
    {
        var layout = Record.Plan.Layouts[index];
        if (allCutsMade)
            return layout.Pieces;
        var made = await db
            .Cuts.Where(cut => cut.PlanId == stored.Id && cut.Layout == index && cut.Copy == copy && cut.Made)
            .Select(cut => cut.Cut)
            .ToHashSetAsync(cancel);
        return PlanLayouts.Given(Request, layout, made, isFinished: true).Select(i => layout.Pieces[i]);
    }

    /// <summary>The plan stands where its ticks and finishes put it.</summary>
    public async Task SettleStateAsync(ShopContext db, CancellationToken cancel)
    {
        var finished = await db.Finishes.CountAsync(f => f.PlanId == stored.Id && f.Standing, cancel);
        var begun = finished > 0 || await db.Cuts.AnyAsync(cut => cut.PlanId == stored.Id && cut.Made, cancel);
        stored.State = BenchRules.StateOf(stored, finished, begun);
    }

    /// <summary>Ticks every cut of a board or sheet.</summary>
    public async Task TickAllAsync(ShopContext db, int layout, int copy, string device, DateTime when, CancellationToken cancel)
    {
        var ticks = await db
            .Cuts.Where(cut => cut.PlanId == stored.Id && cut.Layout == layout && cut.Copy == copy)
            .ToDictionaryAsync(cut => cut.Cut, cancel);
        foreach (var cut in Record.Plan.Layouts[layout].Cuts)
        {
            if (!ticks.TryGetValue(cut.N, out var tick))
                db.Cuts.Add(
                    tick = new StoredCut
                    {
                        PlanId = stored.Id,
                        Layout = layout,
                        Copy = copy,
                        Cut = cut.N,
                    }
                );
            (tick.Made, tick.Device, tick.WhenUtc) = (true, device, when);
        }
    }
}
