using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Together;

/// <summary>Puts plans together: side by side, or the better of two for each material.</summary>
internal sealed class PlanJoining(CutRequest request, IReadOnlySet<string> fromHand)
{
    private readonly Dictionary<string, CutStock> stock = request.Stock.ToDictionary(one => one.Id);
    private readonly Dictionary<string, CutPart> parts = request.Parts.ToDictionary(one => one.Id);

    /// <summary>Returns plans for shares of the request as one plan of it. None uses stock that another uses up.</summary>
    /// <param name="plans">The plans, in order.</param>
    public CutPlan SideBySide(IReadOnlyList<CutPlan> plans) =>
        Write(
            plans.SelectMany(plan => plan.Layouts).ToList(),
            plans.SelectMany(plan => plan.Unplaced).ToList(),
            Money.Zero,
            plans.Sum(plan => plan.Seconds)
        );

    /// <summary>Returns, for each material, what the better of two plans of the request does; the first where both are as good.
    /// Fewer pieces without a place come first, then fewer pieces from new stock that are to come from what is on hand, then the
    /// lower cost.</summary>
    public CutPlan Better(CutPlan first, CutPlan second)
    {
        var taken = request.Materials.ToDictionary(
            material => material.Id,
            material => Rank(first, material.Id).CompareTo(Rank(second, material.Id)) <= 0 ? first : second
        );
        if (taken.Values.All(plan => ReferenceEquals(plan, first)))
            return first;
        if (taken.Values.All(plan => ReferenceEquals(plan, second)))
            return second;
        return Write(
            [.. request.Materials.SelectMany(one => taken[one.Id].Layouts.Where(layout => MaterialOf(layout) == one.Id))],
            [.. request.Materials.SelectMany(one => taken[one.Id].Unplaced.Where(left => parts[left.Part].Material == one.Id))],
            first.Unplaced.IsEmpty && second.Unplaced.IsEmpty ? Max(first.CostLowerBound, second.CostLowerBound) : Money.Zero,
            first.Seconds + second.Seconds
        );
    }

    private string MaterialOf(Layout layout) => stock[layout.Stock].Material;

    private (int Unplaced, int Bought, Money Cost) Rank(CutPlan plan, string material)
    {
        var layouts = plan.Layouts.Where(layout => MaterialOf(layout) == material).ToList();
        return (
            plan.Unplaced.Where(left => parts[left.Part].Material == material).Sum(left => left.Quantity),
            layouts
                .Where(layout => !stock[layout.Stock].Offcut)
                .Sum(layout => layout.Copies * layout.Pieces.Count(piece => fromHand.Contains(piece.Part))),
            CostOf(layouts)
        );
    }

    private Money CostOf(IEnumerable<Layout> layouts) =>
        layouts.Aggregate(Money.Zero, (sum, layout) => sum + (stock[layout.Stock].Price * layout.Copies));

    private CutPlan Write(List<Layout> layouts, List<UnplacedPart> unplaced, Money bound, double seconds)
    {
        var order = request.Materials.Select((material, i) => (material.Id, i)).ToDictionary(pair => pair.Id, pair => pair.i);
        var cost = CostOf(layouts);
        return new(
            request.Unit,
            unplaced.Count > 0 ? PlanStatus.Incomplete
                : cost <= bound ? PlanStatus.Proven
                : PlanStatus.BestFound,
            cost,
            Min(bound, cost),
            Math.Round(seconds, 3),
            Purchases(layouts),
            [.. layouts.OrderBy(layout => order[MaterialOf(layout)])],
            [
                .. unplaced
                    .GroupBy(left => (left.Part, left.Reason))
                    .Select(same => new UnplacedPart(same.Key.Part, same.Sum(left => left.Quantity), same.Key.Reason)),
            ]
        );
    }

    private ImmutableArray<Purchase> Purchases(List<Layout> layouts)
    {
        var used = layouts.ToLookup(layout => layout.Stock, layout => layout.Copies);
        return
        [
            .. request
                .Stock.Where(one => !one.Offcut && used.Contains(one.Id))
                .Select(one => new Purchase(one.Id, used[one.Id].Sum(), one.Price * used[one.Id].Sum())),
        ];
    }

    private static Money Min(Money a, Money b) => a < b ? a : b;

    private static Money Max(Money a, Money b) => a > b ? a : b;
}
