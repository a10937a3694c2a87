using System.Collections.Immutable;
using System.Diagnostics;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// Plans a request: material by material, first all of them at a glance, so that a whole plan is there within a moment, then each
/// of them briefly, then those that are not proven with the time that is left, again and again as long as there is any. What an
/// edit left alone is taken over from the plan before it, and what it changed is begun with what that plan's layouts still serve
/// for.
/// </summary>
public sealed class CutPlanner
{
    /// <summary>Rises whenever the same request may get another plan.</summary>
    public const string Version = "4";

    private static readonly TimeSpan FirstLook = TimeSpan.FromMilliseconds(12);

    // Less time than this, or a smaller share of all, is not worth another look.
    private static readonly TimeSpan LeastLook = TimeSpan.FromMilliseconds(30);

    private const double LeastShare = 0.03;

    // Time for each material that is proven at first sight, to choose well among plans of that cost.
    private static readonly TimeSpan ObjectivesLook = TimeSpan.FromMilliseconds(400);

    private const double ObjectivesShare = 0.1;

    // So many pieces take a while to be laid out and written.
    private const int ManyPieces = 2000;

    private const double MostReserve = 0.2;

    private readonly Stopwatch watch;
    private TimeSpan reserve;
    private readonly SearchControl control;
    private readonly ImmutableArray<Job> jobs;
    private readonly JobResult?[] kept;
    private readonly JobResult?[] best;

    private CutPlanner(CutRequest request, ImmutableArray<Job> jobs, SearchControl control, Stopwatch watch)
    {
        (this.jobs, this.control, this.watch) = (jobs, control, watch);
        var sameWayHome = (control.Earlier?.Request.Store, control.Earlier?.Request.Carry) == (request.Store, request.Carry);
        kept = Unchanged.Find(jobs, sameWayHome ? control.Earlier : null);
        best = new JobResult?[jobs.Length];
    }

    /// <summary>The best plan found when every material is proven, the time is up or the search is cancelled.</summary>
    /// <param name="request">Obeys the rules noted on its members.</param>
    /// <param name="control">When to stop and whom to tell; without a time and an iteration limit, the request's seconds.</param>
    public static CutPlan Plan(CutRequest request, SearchControl control)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(control);
        var watch = Stopwatch.StartNew();
        var (jobs, unplaced) = Fitting.Split(request);
        var limited = control is { Time: null, Iterations: null }
            ? control with
            {
                Time = TimeSpan.FromSeconds(request.Limits.Seconds),
            }
            : control;
        var planner = new CutPlanner(request, jobs, limited, watch);
        planner.Run();
        return PlanWriter.Write(request, jobs, [.. planner.best.Select(result => result!)], unplaced, watch);
    }

    private void Run()
    {
        for (var i = 0; i < jobs.Length && control.Time is not null; i++)
            Glance(i);
        for (var i = 0; i < jobs.Length; i++)
            Begin(i);
        Tell("");
        Refine();
        Reserve();
        for (var round = 0; MayGoOn(round) && Open() is { Count: > 0 } open; round++)
        {
            for (var n = 0; n < open.Count && !control.Cancel.IsCancellationRequested; n++)
                Look(open[n], control with { Time = Share(open.Skip(n)), Seed = control.Seed + round });
        }

        Tell("");
    }

    private List<int> Open() => [.. Enumerable.Range(0, jobs.Length).Where(i => IsOpen(i) && !best[i]!.Proven).OrderBy(Weight)];

    // Time that a later material leaves goes back to earlier ones. Without a clock nothing is left over.
    private bool MayGoOn(int round) =>
        !control.Cancel.IsCancellationRequested
        && (
            round == 0
            || (
                control is { Time: { } time, Iterations: null }
                && Left(time) is var left
                && left > LeastLook
                && left > time * LeastShare
            )
        );

    private TimeSpan Left(TimeSpan time) => time - reserve - watch.Elapsed;

    // What the first looks took beyond their time, setting up and laying out, the last ones and writing will take again.
    private void Reserve()
    {
        if (control.Time is not { } time || Brief().Time is not { } brief || jobs.Sum(job => job.Pieces) < ManyPieces)
            return;
        var beyond = watch.Elapsed - (brief * jobs.Length);
        reserve = beyond < time * MostReserve ? beyond : time * MostReserve;
    }

    // What a brief look has proven cheapest has had no time yet for what is preferred among equals: the bin used up, large
    // leftovers.
    private void Refine()
    {
        for (var i = 0; i < jobs.Length && !control.Cancel.IsCancellationRequested; i++)
            if (kept[i] is null && best[i]!.Proven)
                Look(i, control with { Time = ObjectivesTime() });
    }

    private TimeSpan? ObjectivesTime() =>
        control.Time is not { } time ? null
        : Left(time) < ObjectivesLook ? Left(time) * ObjectivesShare
        : Min(ObjectivesLook, time * ObjectivesShare);

    private static TimeSpan Min(TimeSpan a, TimeSpan b) => a < b ? a : b;

    // Where nothing changed at all, planning again asks for a better plan than the one there is.
    private bool IsOpen(int i) => kept[i] is null || kept.All(before => before is not null);

    // A first plan without the solvers, which take a while to load. Without a clock nobody waits for it.
    private void Glance(int i)
    {
        if (kept[i] is not { Proven: true })
            Look(i, control with { Time = TimeSpan.Zero });
    }

    // What an edit left alone stays as it is; a brief look tells how far from the cheapest it may be, where that is not known.
    private void Begin(int i)
    {
        if (kept[i] is not { Proven: true })
            Look(i, Brief());
        if (kept[i] is { } before)
            best[i] =
                best[i] is { } found && found.Cost < before.Cost
                    ? found
                    : before with
                    {
                        Bound = Math.Max(before.Bound, best[i]?.Bound ?? 0),
                    };
    }

    // Without a clock the first look must not depend on one either.
    private SearchControl Brief() =>
        control.Time is { } time
            ? control with
            {
                Time = time < FirstLook * jobs.Length ? time / (2 * jobs.Length) : FirstLook,
            }
            : control with
            {
                Iterations = Math.Min(1, control.Iterations ?? 1),
            };

    private TimeSpan? Share(IEnumerable<int> open)
    {
        if (control.Time is not { } time)
            return null;
        var left = Left(time);
        var weights = open.Select(Weight).ToList();
        return left <= TimeSpan.Zero ? TimeSpan.Zero : left * (weights[0] / weights.Sum());
    }

    // Sheets gain most from time, so a sheet's piece counts for several of a board's.
    private double Weight(int i) => jobs[i].Pieces * (jobs[i].IsCrosscutOnly ? 1.0 : 4.0);

    private void Look(int i, SearchControl how)
    {
        if (how.Time <= TimeSpan.Zero && best[i] is not null)
            return;
        var steered = how with { Progress = progress => Tell(jobs[i].Material.Id, i, progress) };
        var start = best[i] is { Kept: null } known
            ? EarlierLayouts.Of(jobs[i], known)
            : EarlierLayouts.For(jobs[i], control.Earlier);
        var found = jobs[i].IsCrosscutOnly ? BoardJob.Solve(jobs[i], steered, start) : SheetJob.Solve(jobs[i], steered, start);
        best[i] = best[i] is { } earlier ? JobResult.Better(earlier, found) : found;
    }

    private void Tell(string material, int changed = -1, SearchProgress? progress = null)
    {
        if (control.Progress is not { } tell)
            return;
        var cost = best.Select(
                (result, i) =>
                    jobs[i].IsUnpriced && result is not null
                        ? jobs[i].Paid(result)
                        : Lower(i == changed ? progress?.Cost?.Count : null, result is { Complete: true } ? result.Cost : null)
            )
            .ToList();
        var bound = best.Select(
                (result, i) =>
                    jobs[i].IsUnpriced ? 0
                    : i == changed ? Math.Max(progress?.Bound.Count ?? 0, result?.Bound ?? 0)
                    : result?.Bound ?? 0
            )
            .Sum();
        var known = cost.TrueForAll(one => one is not null);
        tell(new(material, known ? Money.FromCount(cost.Sum(one => one!.Value)) : null, Money.FromCount(bound), watch.Elapsed));
    }

    private static long? Lower(long? a, long? b) =>
        a is null ? b
        : b is null ? a
        : Math.Min(a.Value, b.Value);
}
