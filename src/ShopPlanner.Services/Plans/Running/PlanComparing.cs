using System.Collections.Immutable;
using System.Diagnostics;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Together;
using ShopPlanner.Services.Plans.Stored;

namespace ShopPlanner.Services.Plans.Running;

/// <summary>Plans a draft as it was ordered: from the stores that are worth the trip, and its projects together beside each of
/// them alone.</summary>
internal static class PlanComparing
{
    // The choice of stores takes a share of the time; it needs a fair plan of each, not the best.
    private const double BasketShare = 0.25;

    // Spare parts are filled in last; without any the time stays with the search.
    private const double SpareShare = 0.2;

    /// <summary>Returns the draft with the request that was planned, and its plan.</summary>
    /// <param name="draft">What was ordered.</param>
    /// <param name="planner">Plans one request.</param>
    /// <param name="control">When to stop and whom to tell.</param>
    public static (PlanDraft Draft, ComparedPlan Plan) Plan(PlanDraft draft, ICutPlanner planner, SearchControl control)
    {
        var watch = Stopwatch.StartNew();
        var (bought, baskets) = Buying(draft, planner, control);
        var projects = AloneDrafts.Order(bought);
        var joint = JointPlanner.Plan(
            bought.Request,
            [.. projects.Select(project => new PlanGroup(project.ToString(), AloneDrafts.PartsOf(bought, [project])))],
            AloneDrafts.PartsOf(bought, bought.Order.FromHand),
            control with
            {
                Time = Left(control.Time * (draft.Spares.IsEmpty ? 1 : 1 - SpareShare), watch),
            },
            planner.Plan
        );
        var spared = SpareFilling.Fill(
            bought.Request,
            joint.Plan,
            bought.Spares,
            Left(control.Time, watch),
            (request, earlier, time) => planner.Plan(request, control with { Earlier = earlier, Time = time, Progress = null })
        );
        return (
            bought with
            {
                Request = spared.Request,
            },
            new(spared.Plan, new HeldAgainst(projects.Count > 1 ? Alone(bought, joint) : [], baskets))
        );
    }

    private static TimeSpan? Left(TimeSpan? time, Stopwatch watch) =>
        time - watch.Elapsed is { } left ? TimeSpan.FromTicks(Math.Max(0, left.Ticks)) : null;

    private static ImmutableArray<AloneRecord> Alone(PlanDraft draft, JointPlan joint) =>
        [
            .. joint.Alone.Select(one =>
            {
                var project = Guid.Parse(one.Group);
                return new AloneRecord(project, one.Request, AloneDrafts.Basis(draft, project, one.Request), one.Plan);
            }),
        ];

    private static (PlanDraft Draft, ImmutableArray<StoreBasket> Baskets) Buying(
        PlanDraft draft,
        ICutPlanner planner,
        SearchControl control
    )
    {
        if ((!draft.Order.CountTrips && !draft.Order.OneStore) || draft.Trips.IsEmpty)
            return (draft, []);
        var trips = draft.Order.CountTrips ? draft.Trips : [.. draft.Trips.Select(trip => trip with { Cost = default })];
        var quick = control with { Progress = null, Earlier = null };
        var baskets = StoreBaskets.Of(
            draft.Request,
            trips,
            draft.Order.OneStore,
            control.Time * BasketShare,
            (request, time) => planner.Plan(request, quick with { Time = time })
        );
        var request = StoreBaskets.From(draft.Request, trips, baskets[0]);
        return request.Stock.IsEmpty ? (draft, []) : (draft with { Request = request }, baskets);
    }
}
