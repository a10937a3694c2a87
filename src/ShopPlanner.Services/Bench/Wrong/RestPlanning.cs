using System.Collections.Immutable;
using Microsoft.Extensions.Logging;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>Plans the rest after a wrong cut: proposes it and changes nothing, or puts what was proposed in the plan's
/// place.</summary>
internal sealed class RestPlanning(
    ShopWork work,
    RestDrafting drafting,
    RestLooks looks,
    PlanStorage storage,
    ICutPlanner planner,
    TimeProvider clock,
    ILogger<RestPlanning> log
)
{
    /// <summary>Who waits for it stands at a saw; the search can go on later, as for every plan.</summary>
    private static readonly TimeSpan Time = TimeSpan.FromMilliseconds(300);

    private const string Looking = "look";

    /// <summary>Plans the rest. The shop as it would be is made in a transaction that is given up.</summary>
    public async Task<Outcome<RestProposal>> ProposeAsync(WrongCut wrong, CancellationToken cancel)
    {
        RestDraft? draft = null;
        var tried = await work.WriteAsync(
            async db =>
            {
                var made = await drafting.DraftAsync(db, wrong, Looking, cancel);
                draft = made.Value;
                return made.Ok ? Outcome.Conflict<RestDraft>() : made;
            },
            cancel
        );
        if (draft is null)
            return new Outcome<RestProposal>(tried.Kind, null, tried.Faults);
        var plan = await PlanAsync(draft, cancel);
        var faults = planner.Check(draft.Draft.Request, plan);
        if (faults.IsEmpty)
            return Proposal(draft, plan, looks.Keep(draft.Draft.Request, plan));
        log.LogError("The rest after a wrong cut came out as a plan that cannot be cut: {Faults}", string.Join("; ", faults));
        return Outcome.Faulty<RestProposal>(faults);
    }

    /// <summary>Puts a proposal in the place of the plan, in a transaction that others see to.</summary>
    public async Task<Outcome<RestDraft>> AcceptAsync(
        ShopContext db,
        WrongCut wrong,
        string proposal,
        string device,
        CancellationToken cancel
    )
    {
        var drafted = await drafting.DraftAsync(db, wrong, device, cancel);
        if (!drafted.Ok)
            return drafted;
        var draft = drafted.Value;
        if (looks.Find(proposal, draft.Draft.Request) is not { } plan)
            return Outcome.Conflict<RestDraft>(
                Fault.Of("proposal", draft.Plan.Record.Stored.Name, "changed since this was worked out: look at it once more")
            );
        var stored = await storage.StoreInAsync(db, draft.Draft, plan, planner.Version, null, cancel);
        if (!stored.Ok)
            return new Outcome<RestDraft>(stored.Kind, null, stored.Faults);
        draft.Wrong.RestPlanId = stored.Value.Id;
        var used = draft.Draft.PiecesOf(plan).Select(one => one.PieceId).ToHashSet();
        await new BoardStopping(db, draft.Plan, draft.View, device, clock, cancel).SweepAsync(draft.Stopped, used);
        await db.SaveChangesAsync(cancel);
        return draft;
    }

    // What the wrong cut left alone keeps its layouts.
    private Task<CutPlan> PlanAsync(RestDraft draft, CancellationToken cancel)
    {
        var control = new SearchControl
        {
            Time = Time,
            Cancel = cancel,
            Earlier = new EarlierPlan(draft.Plan.Request, draft.Plan.Record.Plan),
        };
        return Task.Factory.StartNew(
            () => planner.Plan(draft.Draft.Request, control),
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default
        );
    }

    private static RestProposal Proposal(RestDraft draft, CutPlan plan, string key)
    {
        var view = new PlanRecord(Unstored(draft, plan), draft.Draft, plan).View([]) with
        {
            KnownSaws = draft.View.Plan.KnownSaws,
        };
        var used = draft.Draft.PiecesOf(plan).Select(one => one.PieceId).ToHashSet();
        var toBuy = plan.Buy.Aggregate(Money.Zero, (sum, one) => sum + one.Cost);
        return new(
            key,
            view,
            AsBefore(draft, plan),
            Stopped(draft, used),
            [.. draft.Read.Pieces.Select(one => Left(draft, one.Piece, one.Left))],
            toBuy,
            draft.Paid + toBuy - draft.Before
        );
    }

    private static ImmutableArray<StoppedStock> Stopped(RestDraft draft, HashSet<Guid> used) =>
        [
            .. draft
                .Stopped.Where(one => one.IsWanted || used.Contains(one.Piece.Id))
                .GroupBy(one => one.Number)
                .Select(same => new StoppedStock(
                    same.Key,
                    [.. same.Select(one => new BinnedPiece(one.Piece.Tag, one.Left.Length, one.Left.Width))]
                )),
        ];

    private static WrongLeft Left(RestDraft draft, GivenPiece piece, KeptLeftover? left)
    {
        if (left is null)
            return new(piece.Mark, piece.Name, null, []);
        var material = draft.Plan.StockOf(draft.Read.At.Layout).Material;
        var tag = draft.Stopped.FirstOrDefault(one => one.Left == left)?.Piece.Tag ?? "";
        return new(
            piece.Mark,
            piece.Name,
            new BinnedPiece(tag, left.Length, left.Width),
            RestUses.Of(draft.Draft, material, left.Length, left.Width)
        );
    }

    // A board not begun that gives the same parts from the same stock is cut as it was to be.
    private static ImmutableArray<bool> AsBefore(RestDraft draft, CutPlan plan)
    {
        var (earlier, bench) = (draft.Plan.Record.Plan.Layouts, draft.View.Stocks);
        var begun = bench.Where(one => one.Finished || one.Cuts.Any(cut => cut.Made)).Select(one => one.Layout).ToHashSet();
        var known = earlier.Index().Where(one => !begun.Contains(one.Index)).Select(one => Parts(one.Item)).ToHashSet();
        return [.. plan.Layouts.Select(layout => known.Contains(Parts(layout)))];
    }

    private static string Parts(Layout layout) =>
        $"{layout.Stock}: {string.Join(' ', layout.Pieces.Select(piece => piece.Part).Order(StringComparer.Ordinal))}";

    private static StoredPlan Unstored(RestDraft draft, CutPlan plan) =>
        new()
        {
            Id = Guid.Empty,
            Name = draft.Draft.Basis.Name,
            State = PlanState.Ready,
            Status = plan.Status,
            Cost = plan.Cost,
            Stocks = plan.Layouts.Sum(layout => layout.Copies),
            OrderJson = "",
            RequestJson = "",
            PlanJson = "",
            NamesJson = "",
            RequestHash = "",
            PlannerVersion = CutPlannerVersion,
        };

    private static string CutPlannerVersion => Cutting.Planning.CutPlanner.Version;
}
