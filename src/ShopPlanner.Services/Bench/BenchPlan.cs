using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>A plan about to be worked on at the bench.</summary>
internal sealed class BenchPlan
{
    private readonly StoredPlan stored;

    private BenchPlan(StoredPlan stored) => (this.stored, Record) = (stored, PlanRecord.Read(stored));

    public PlanRecord Record { get; }

    public CutRequest Request => Record.Draft.Request;

    public static async Task<BenchPlan?> LoadAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        await db.Plans.FindAsync([id], cancel) is { } stored ? new BenchPlan(stored) : null;

    /// <summary>Null when there is such a board or sheet to work on.</summary>
    public Outcome<BenchView>? Refuse(int layout, int copy)
    {
        if (stored.State == PlanState.Withdrawn)
            return Outcome.Faulty<BenchView>(Fault.Of("plan", stored.Name, "was given up: take it back before cutting"));
        if (layout < 0 || layout >= Record.Plan.Layouts.Length)
            return Outcome.Faulty<BenchView>(new Fault("layout", $"{layout}", "is no layout of this plan"));
        var copies = Record.Plan.Layouts[layout].Copies;
        return copy < 1 || copy > copies
            ? Outcome.Faulty<BenchView>(new Fault("copy", $"{copy}", $"is not from 1 to {copies}"))
            : null;
    }

    public CutStock StockOf(int layout) => Request.Stock.Single(stock => stock.Id == Record.Plan.Layouts[layout].Stock);

    public Task<StoredFinish?> FinishAsync(ShopContext db, int layout, int copy, CancellationToken cancel) =>
        db.Finishes.SingleOrDefaultAsync(
            f => f.PlanId == stored.Id && f.Layout == layout && f.Copy == copy && f.Standing,
            cancel
        );

    /// <summary>The plan stands where its ticks and finishes put it.</summary>
    public async Task SettleStateAsync(ShopContext db, CancellationToken cancel)
    {
        var finished = await db.Finishes.CountAsync(f => f.PlanId == stored.Id && f.Standing, cancel);
        var begun = finished > 0 || await db.Cuts.AnyAsync(cut => cut.PlanId == stored.Id && cut.Made, cancel);
        stored.State =
            finished > 0 && finished == stored.Stocks ? PlanState.Cut
            : begun ? PlanState.Cutting
            : PlanState.Ready;
    }

    /// <summary>Sets a tick.</summary>
    public async Task TickAsync(
        ShopContext db,
        (int Layout, int Copy, int Cut) at,
        bool made,
        string device,
        DateTime when,
        CancellationToken cancel
    )
    {
        var tick =
            await db.Cuts.FindAsync([stored.Id, at.Layout, at.Copy, at.Cut], cancel)
            ?? db.Cuts.Add(
                new StoredCut
                {
                    PlanId = stored.Id,
                    Layout = at.Layout,
                    Copy = at.Copy,
                    Cut = at.Cut,
                }
            ).Entity;
        (tick.Made, tick.Device, tick.WhenUtc) = (made, device, when);
    }
}
