using System.Collections.Immutable;
using System.Diagnostics;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Together;

/// <summary>
/// Plans several groups of parts together. First each group by itself, one after another, so that stock on hand goes to one of
/// them only; side by side these plans are the plan to beat. The search for all groups at once begins with it, and for each
/// material the better of the two is taken: together never costs more than one after another.
/// <para>Parts that are to come from what is on hand are placed there first, and only what has no room there is bought.</para>
/// </summary>
public sealed class JointPlanner
{
    // Planning each group alone is the comparison and the start; most of the time goes to the groups together.
    private const double AloneShare = 0.4,
        FromHandShare = 0.3;

    private readonly Func<CutRequest, SearchControl, CutPlan> plan;
    private readonly CutRequest request;
    private readonly ImmutableHashSet<string> fromHand;
    private readonly SearchControl control;
    private readonly PlanJoining joining;
    private readonly Stopwatch watch = Stopwatch.StartNew();

    private JointPlanner(
        CutRequest request,
        ImmutableHashSet<string> fromHand,
        SearchControl control,
        Func<CutRequest, SearchControl, CutPlan> plan
    )
    {
        (this.request, this.fromHand, this.plan) = (request, fromHand, plan);
        this.control = control is { Time: null, Iterations: null }
            ? control with
            {
                Time = TimeSpan.FromSeconds(request.Limits.Seconds),
            }
            : control;
        joining = new PlanJoining(request, fromHand);
    }

    /// <summary>Returns the plan of all groups, and each group's own.</summary>
    /// <param name="request">Obeys the rules noted on its members.</param>
    /// <param name="groups">In the order in which they may choose from the stock on hand, one or more.</param>
    /// <param name="fromHand">Ids of parts that are to come from what is on hand, as far as it goes; may be empty.</param>
    /// <param name="control">When to stop and whom to tell; without a time and an iteration limit, the request's seconds.</param>
    /// <param name="plan">Plans one request; what it answers can be cut.</param>
    public static JointPlan Plan(
        CutRequest request,
        IReadOnlyList<PlanGroup> groups,
        ImmutableHashSet<string> fromHand,
        SearchControl control,
        Func<CutRequest, SearchControl, CutPlan> plan
    )
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(groups);
        ArgumentNullException.ThrowIfNull(fromHand);
        ArgumentNullException.ThrowIfNull(control);
        ArgumentNullException.ThrowIfNull(plan);
        var planner = new JointPlanner(request, fromHand, control, plan);
        return groups.Count == 1 ? planner.PlanOne(groups[0]) : planner.PlanAll(groups);
    }

    // A group by itself is compared with nothing.
    private JointPlan PlanOne(PlanGroup group)
    {
        var staged = fromHand.IsEmpty ? null : Staged(request, Share(AloneShare), control.Progress);
        var found = Search(staged);
        return new(found, [new AlonePlan(group.Name, request, found)]);
    }

    private JointPlan PlanAll(IReadOnlyList<PlanGroup> groups)
    {
        var alone = PlanAlone(groups);
        var best = joining.SideBySide([.. alone.Select(one => one.Plan)]);
        if (!fromHand.IsEmpty)
            best = joining.Better(best, Staged(request, Share(FromHandShare), null));
        return new(Search(best), alone);
    }

    private ImmutableArray<AlonePlan> PlanAlone(IReadOnlyList<PlanGroup> groups)
    {
        var (left, found) = (request, ImmutableArray.CreateBuilder<AlonePlan>(groups.Count));
        var pieces = groups.Select(PiecesOf).ToList();
        for (var i = 0; i < groups.Count; i++)
        {
            var own = PartialRequests.Of(left, groups[i].Parts);
            var time = control.Time * AloneShare - watch.Elapsed;
            var answer = Staged(own, time * ((double)pieces[i] / Math.Max(1, pieces.Skip(i).Sum())), Quietly);
            found.Add(new(groups[i].Name, own, answer));
            left = PartialRequests.WithoutStock(left, answer);
        }

        return found.MoveToImmutable();
    }

    private int PiecesOf(PlanGroup group) =>
        request.Parts.Where(part => group.Parts.Contains(part.Id)).Sum(part => part.Quantity);

    // What one group costs says nothing yet of all of them.
    private void Quietly(SearchProgress progress) =>
        control.Progress?.Invoke(progress with { Cost = null, Bound = Money.Zero, Elapsed = watch.Elapsed });

    private CutPlan Search(CutPlan? start)
    {
        var found = plan(
            request,
            control with
            {
                Time = control.Time is { } time ? AtLeastNone(time - watch.Elapsed) : null,
                Earlier = control.Earlier ?? (start is null ? null : new EarlierPlan(request, start)),
                Progress = control.Progress is { } tell ? progress => tell(progress with { Elapsed = watch.Elapsed }) : null,
            }
        );
        var best = start is null ? found : joining.Better(found, start);
        return best with { Seconds = Math.Round(watch.Elapsed.TotalSeconds, 3) };
    }

    private TimeSpan? Share(double share) => control.Time is { } time ? AtLeastNone(time - watch.Elapsed) * share : null;

    // What is to come from hand finds its place first; all else, and what found none, takes what is left and the store.
    private CutPlan Staged(CutRequest wanted, TimeSpan? time, Action<SearchProgress>? tell)
    {
        var quick = control with { Earlier = null, Progress = tell };
        if (!wanted.Parts.Any(part => fromHand.Contains(part.Id)))
            return plan(wanted, quick with { Time = AtLeastNone(time) });
        var first = plan(PartialRequests.FromHand(wanted, fromHand), quick with { Time = AtLeastNone(time / 2) });
        var rest = PartialRequests.Rest(wanted, first);
        var placed = first with { Unplaced = [] };
        if (rest.Parts.IsEmpty)
            return new PlanJoining(wanted, fromHand).SideBySide([placed]);
        var second = plan(rest, quick with { Time = AtLeastNone(time / 2) });
        return new PlanJoining(wanted, fromHand).SideBySide([placed, second]);
    }

    private static TimeSpan? AtLeastNone(TimeSpan? time) => time is { } given ? AtLeastNone(given) : null;

    private static TimeSpan AtLeastNone(TimeSpan time) => time > TimeSpan.Zero ? time : TimeSpan.Zero;
}
