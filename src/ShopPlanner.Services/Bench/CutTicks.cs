using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>A cut and whether it is made, as a device says it.</summary>
internal sealed record CutTick(Guid Plan, int Layout, int Copy, int Cut, bool Made, string Device)
{
    /// <summary>Whether it tells what happened at the saw, perhaps hours ago: it is kept for a canceled plan too.</summary>
    public bool IsFact { get; init; }
}

/// <summary>
/// Sets ticks. People tick with a board on the saw, so a tick asks only for what it touches: its command, then in one
/// question the plan and what stands at its bench.
/// </summary>
internal sealed class CutTicks(ShopCommands commands, ReadPlans plans, TimeProvider clock)
{
    /// <summary>Sets a tick once.</summary>
    public Task<Outcome<Done>> RunAsync(CutTick tick, CommandId command, CancellationToken cancel) =>
        commands.RunAsync(
            new Making<Done>(command, $"cut {tick.Plan} {tick.Layout} {tick.Copy} {tick.Cut} {tick.Made}")
            {
                Subject = $"cut {tick.Plan} {tick.Layout} {tick.Copy} {tick.Cut}",
                Make = db => SetAsync(db, tick, cancel),
                Made = _ => CommandTexts.Text(tick.Plan),
                Find = async (db, _) => await db.Plans.AnyAsync(plan => plan.Id == tick.Plan, cancel) ? Done.Value : null,
                What = "plan",
            },
            cancel
        );

    private async Task<Outcome<Done>> SetAsync(ShopContext db, CutTick tick, CancellationToken cancel)
    {
        if (await Standing(db, tick).SingleOrDefaultAsync(cancel) is not { } at)
            return Outcome.Missing<Done>("plan");
        var plan = CutDocuments.ReadPlan(at.Plan.PlanJson);
        if (BenchRules.RefuseDevice(tick.Device) is { } nameless)
            return Outcome.Faulty<Done>(nameless);
        var isLate = tick.IsFact && BenchRules.IsSuperseded(at.Plan);
        if (
            (
                isLate
                    ? BenchRules.RefusePlace(plan, tick.Layout, tick.Copy)
                    : BenchRules.Refuse(at.Plan, plan, tick.Layout, tick.Copy)
            ) is
            { } fault
        )
            return Outcome.Faulty<Done>(fault);
        if (plan.Layouts[tick.Layout].Cuts.All(cut => cut.N != tick.Cut))
            return Outcome.Faulty<Done>(new Fault("cut", $"{tick.Cut}", "is not a cut of this layout"));
        if (at.FinishedBy is { } device && !tick.Made)
            return Outcome.Conflict<Done>(Fault.Of("copy", device, "has finished this one: reopen it first"));
        if (at.IsWrong && !tick.Made)
            return Outcome.Conflict<Done>(new Fault("cut", $"{tick.Cut}", "was reported as gone wrong: take that back first"));
        var row = at.Tick ?? db.Cuts.Add(RowOf(tick)).Entity;
        (row.Made, row.Device, row.WhenUtc) = (tick.Made, tick.Device, clock.GetUtcNow().UtcDateTime);
        if (!isLate)
            at.Plan.State = BenchRules.StateOf(at.Plan, at.Finished, at.OthersMade || tick.Made);
        if (at.FinishedBy is not null)
            await GiveAsync(db, at.Plan, tick, cancel);
        return Done.Value;
    }

    // Sent late, a tick tells that a finished board gave more than was known.
    private async Task GiveAsync(ShopContext db, StoredPlan plan, CutTick tick, CancellationToken cancel)
    {
        await db.SaveChangesAsync(cancel);
        var finish = await db.Finishes.SingleAsync(
            one => one.PlanId == plan.Id && one.Layout == tick.Layout && one.Copy == tick.Copy && one.Standing,
            cancel
        );
        await LeftOuts.WriteAsync(db, plans.Read(plan), finish, cancel);
    }

    private static IQueryable<BenchStanding> Standing(ShopContext db, CutTick tick) =>
        from plan in db.Plans
        where plan.Id == tick.Plan
        select new BenchStanding
        {
            Plan = plan,
            Tick = db.Cuts.FirstOrDefault(cut =>
                cut.PlanId == plan.Id && cut.Layout == tick.Layout && cut.Copy == tick.Copy && cut.Cut == tick.Cut
            ),
            OthersMade = db.Cuts.Any(cut =>
                cut.PlanId == plan.Id && cut.Made && !(cut.Layout == tick.Layout && cut.Copy == tick.Copy && cut.Cut == tick.Cut)
            ),
            Finished = db.Finishes.Count(finish => finish.PlanId == plan.Id && finish.Standing),
            FinishedBy = db
                .Finishes.Where(finish =>
                    finish.PlanId == plan.Id && finish.Layout == tick.Layout && finish.Copy == tick.Copy && finish.Standing
                )
                .Select(finish => finish.Device)
                .FirstOrDefault(),
            IsWrong = db.WrongCuts.Any(wrong =>
                wrong.PlanId == plan.Id
                && wrong.Layout == tick.Layout
                && wrong.Copy == tick.Copy
                && wrong.Cut == tick.Cut
                && wrong.Standing
            ),
        };

    private static StoredCut RowOf(CutTick tick) =>
        new()
        {
            PlanId = tick.Plan,
            Layout = tick.Layout,
            Copy = tick.Copy,
            Cut = tick.Cut,
        };

    private sealed class BenchStanding
    {
        public required StoredPlan Plan { get; init; }

        public StoredCut? Tick { get; init; }

        public bool OthersMade { get; init; }

        public int Finished { get; init; }

        public string? FinishedBy { get; init; }

        public bool IsWrong { get; init; }
    }
}
