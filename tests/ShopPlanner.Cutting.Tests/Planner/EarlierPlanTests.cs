using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>After an edit, what it left alone stays as it was.</summary>
public sealed class EarlierPlanTests
{
    private static readonly CutRequest Before = Some.Request(
        [Some.Board(), Some.Sheet()],
        [Some.Stock("b", "96", price: 6), Some.Stock("s", "96", "48", 60, material: "ply")],
        [
            Some.Part("A", "31", 7),
            Some.Part("P", "23", 9, "15", Grain.Any, "ply"),
            Some.Part("Q", "31", 5, "11", Grain.Length, "ply"),
        ]
    );

    [Fact]
    public void A_material_that_did_not_change_keeps_its_layouts()
    {
        var plan = Some.Planned(Before);
        var after = Before with { Parts = [Before.Parts[0] with { Quantity = 9 }, .. Before.Parts[1..]] };
        var again = Some.Planned(after, Some.Short with { Earlier = new(Before, plan), Seed = 99 });
        Assert.Equal(Sheets(plan), Sheets(again));
        Assert.Equal(9, again.AllPieces().Count(piece => piece.Part == "A"));
    }

    [Fact]
    public void A_dearer_board_is_planned_anew()
    {
        var plan = Some.Planned(Before);
        var after = Before with { Stock = [Before.Stock[0] with { Price = Money.From(7) }, Before.Stock[1]] };
        var again = Some.Planned(after, Some.Short with { Earlier = new(Before, plan) });
        Assert.Equal(7m * plan.Buy[0].Quantity, again.Buy[0].Cost.Amount);
    }

    [Fact]
    public void A_plan_that_left_parts_out_is_not_taken_over()
    {
        var scarce = Before with { Stock = [Before.Stock[0] with { Quantity = 1 }, Before.Stock[1]] };
        var plan = Some.Planned(scarce);
        Assert.Equal(PlanStatus.Incomplete, plan.Status);
        Assert.Equal(
            plan.Unplaced.Sum(one => one.Quantity),
            Some.Planned(scarce, Some.Short with { Earlier = new(scarce, plan) }).Unplaced.Sum(one => one.Quantity)
        );
    }

    [Fact]
    public void The_same_request_again_gives_the_same_plan_at_once()
    {
        var plan = Some.Planned(Before);
        var again = Some.Planned(Before, Some.Short with { Earlier = new(Before, plan) });
        Assert.Equal((plan.Cost, plan.Status), (again.Cost, again.Status));
        Assert.Equal(plan.Layouts, again.Layouts);
    }

    private static IEnumerable<string> Sheets(CutPlan plan) =>
        plan
            .Layouts.Where(layout => layout.Stock == "s")
            .Select(layout => $"{layout.Copies}: {string.Join(' ', layout.Pieces)} {string.Join(' ', layout.Cuts)}");
}
