using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Cutting.Tests.Planner;
using ShopPlanner.Cutting.Together;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cutting.Tests.Together;

/// <summary>Several projects in one plan. Part <c>P1</c> belongs to project <c>P</c>.</summary>
public sealed class JointPlannerTests
{
    private static readonly SearchControl Brief = new() { Time = TimeSpan.FromMilliseconds(60), Workers = 1 };

    // Worked by hand: 60 and 30 in each leave a board of 96 in half empty, and together they fill one.
    [Fact]
    public void Two_halves_share_a_board()
    {
        var joint = Joint(
            Some.Request([Some.Board()], [Some.Stock("b8", "96", price: 10)], [Some.Part("P1", "60"), Some.Part("Q1", "30")])
        );
        Assert.Equal([10m, 10m], joint.Alone.Select(one => one.Plan.Cost.Amount));
        Assert.Equal(10m, joint.Plan.Cost.Amount);
    }

    // One offcut of 40 in serves one of them only: the first takes it, the second buys.
    [Fact]
    public void What_one_takes_from_the_bin_the_next_does_not_find()
    {
        var joint = Joint(
            Some.Request(
                [Some.Board()],
                [Some.Stock("b8", "96", price: 10), Some.Stock("bin", "40", quantity: 1, offcut: true)],
                [Some.Part("P1", "38"), Some.Part("Q1", "38")]
            )
        );
        Assert.Equal([0m, 10m], joint.Alone.Select(one => one.Plan.Cost.Amount));
        Assert.DoesNotContain(joint.Alone[1].Request.Stock, stock => stock.Id == "bin");
        Assert.Equal(10m, joint.Plan.Cost.Amount);
    }

    [Fact]
    public void Of_a_hundred_sets_of_projects_none_costs_more_together_than_one_after_another()
    {
        var saved = 0;
        foreach (var request in RandomRequests.From(seed: 18, count: 100, mostParts: 6))
        {
            var joint = Joint(request);
            Assert.Empty(PlanVerifier.Check(request, joint.Plan));
            Assert.All(joint.Alone, one => Assert.Empty(PlanVerifier.Check(one.Request, one.Plan)));
            AssertTakenOnce(request, joint);
            var alone = joint.Alone.Aggregate(Money.Zero, (sum, one) => sum + one.Plan.Cost);
            Assert.True(joint.Plan.Unplaced.Sum(left => left.Quantity) <= joint.Alone.Sum(MissingOf));
            Assert.True(joint.Plan.Cost <= alone, $"{joint.Plan.Cost} together, {alone} one after another");
            saved += joint.Plan.Cost < alone ? 1 : 0;
        }

        Assert.InRange(saved, 10, 100);
    }

    // The planner finds nothing good; what the projects come to alone stands.
    [Fact]
    public void A_search_that_finds_a_dearer_plan_gives_way_to_the_single_plans()
    {
        var request = Some.Request(
            [Some.Board()],
            [Some.Stock("b8", "96", price: 10), Some.Stock("dear", "96", price: 90)],
            [Some.Part("P1", "60"), Some.Part("Q1", "30")]
        );
        var dear = request with { Stock = [.. request.Stock.Where(stock => stock.Id == "dear")] };
        var joint = JointPlanner.Plan(
            request,
            Groups(request),
            [],
            Brief,
            (asked, control) => CutPlanner.Plan(asked.Parts.Length == 2 ? dear : asked, control)
        );
        Assert.Equal(20m, joint.Plan.Cost.Amount);
        Assert.Empty(PlanVerifier.Check(request, joint.Plan));
    }

    // The offcut of 50 in is enough for P, which is cut first; without that wish Q's 48 in would take it.
    [Fact]
    public void What_is_cut_first_comes_from_hand_and_the_rest_is_bought()
    {
        var request = Some.Request(
            [Some.Board()],
            [Some.Stock("b4", "48", price: 6), Some.Stock("bin", "50", quantity: 1, offcut: true)],
            [Some.Part("P1", "46"), Some.Part("Q1", "47", 2)]
        );
        foreach (var first in new[] { "P", "Q" })
        {
            var joint = Joint(request, first);
            Assert.Empty(PlanVerifier.Check(request, joint.Plan));
            Assert.Equal(first, joint.Plan.Layouts.Single(layout => layout.Stock == "bin").Pieces.Single().Part[..1]);
            Assert.Equal(12m, joint.Plan.Cost.Amount);
        }
    }

    [Fact]
    public void What_is_cut_first_and_has_no_room_on_hand_is_bought_all_the_same()
    {
        var joint = Joint(
            Some.Request([Some.Board()], [Some.Stock("b8", "96", price: 10)], [Some.Part("P1", "60"), Some.Part("Q1", "30")]),
            "P"
        );
        Assert.Empty(joint.Plan.Unplaced);
        Assert.Equal(10m, joint.Plan.Cost.Amount);
    }

    [Fact]
    public void Each_project_s_wood_adds_up_to_the_plan_s()
    {
        foreach (var request in RandomRequests.From(seed: 5, count: 30, mostParts: 6))
        {
            var plan = Joint(request).Plan;
            var owners = Groups(request).Select(group => group.Name).ToList();
            var shares = WoodShares.Of(request, plan, owners, OwnerOf);
            var whole = WoodUse.Of(request, plan).Aggregate(default(WoodUse), (sum, one) => sum + one.Use);
            Assert.Equal(whole, shares.Aggregate(default(WoodUse), (sum, one) => sum + one));
            Assert.Equal(whole.Waste, shares.Aggregate(Area.Zero, (sum, one) => sum + one.Waste));
            var costs = CostShares.Of(request, plan, owners, OwnerOf);
            Assert.Equal(plan.Cost, costs.Aggregate(Money.Zero, (sum, one) => sum + one.Cost));
        }
    }

    // Half of the board's parts each, by hand: 96 x 2 1/2 in; 30 and 60 in of parts, so a third and two thirds of all else.
    [Fact]
    public void A_board_s_waste_is_shared_by_the_parts_cut_from_it()
    {
        var request = Some.Request(
            [Some.Board()],
            [Some.Stock("b8", "96", price: 9)],
            [Some.Part("P1", "30"), Some.Part("Q1", "60")],
            keep: new(null, null, null)
        );
        var shares = WoodShares.Of(request, Some.Planned(request), ["P", "Q"], OwnerOf);
        Assert.Equal(
            [2m * 2.5m / 144, 4m * 2.5m / 144],
            shares.Select(share => Math.Round(share.Waste.ToSquareFeet(), 20)).Select(Near)
        );
    }

    private static decimal Near(decimal area) => Math.Round(area * 144 / 2.5m, 6) * 2.5m / 144;

    private static int MissingOf(AlonePlan alone) => alone.Plan.Unplaced.Sum(left => left.Quantity);

    private static void AssertTakenOnce(CutRequest request, JointPlan joint)
    {
        foreach (var stock in request.Stock.Where(stock => stock.Quantity is not null))
            Assert.True(
                joint.Alone.Sum(one => one.Plan.Layouts.Where(layout => layout.Stock == stock.Id).Sum(layout => layout.Copies))
                    <= stock.Quantity
            );
    }

    private static JointPlan Joint(CutRequest request, string first = "") =>
        JointPlanner.Plan(
            request,
            Groups(request, first),
            [.. request.Parts.Select(part => part.Id).Where(id => first.Length > 0 && OwnerOf(id) == first)],
            Brief,
            CutPlanner.Plan
        );

    private static List<PlanGroup> Groups(CutRequest request, string first = "") =>
        [
            .. request
                .Parts.GroupBy(part => OwnerOf(part.Id))
                .OrderBy(own => own.Key != first)
                .Select(own => new PlanGroup(own.Key, [.. own.Select(part => part.Id)])),
        ];

    // Made-up requests number their parts: even ones belong to one project, odd ones to another.
    private static string OwnerOf(string part) =>
        char.IsUpper(part[0]) ? part[..1]
        : (part[^1] - '0') % 2 == 0 ? "even"
        : "odd";
}
