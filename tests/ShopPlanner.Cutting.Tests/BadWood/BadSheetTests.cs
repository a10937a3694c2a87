using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Limits;
using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.BadWood;

/// <summary>Sheets with crushed corners, holes and split edges.</summary>
public sealed class BadSheetTests
{
    private static readonly CutStock New = Some.Stock("new", "96", "48", 60, material: "ply");

    [Fact]
    public void A_panel_lies_beside_a_crushed_corner()
    {
        var sheet = Bad.Sheet("B1", "40", "30").At(Bad.Place("0", "0", "4", "3"));
        var plan = Some.Planned(Bad.Sheets([sheet, New], Bad.Panel("A", "36", "30")));
        Assert.Equal((PlanStatus.Proven, Money.Zero), (plan.Status, plan.Cost));
        Assert.Equal(Some.Of("4"), Assert.Single(plan.AllPieces()).X);
    }

    [Fact]
    public void A_panel_lies_above_the_corner_where_it_is_too_long_to_lie_beside()
    {
        var sheet = Bad.Sheet("B1", "40", "30").At(Bad.Place("0", "0", "4", "3"));
        var plan = Some.Planned(Bad.Sheets([sheet, New], Bad.Panel("A", "40", "27")));
        Assert.Equal((Money.Zero, Some.Of("3")), (plan.Cost, Assert.Single(plan.AllPieces()).Y));
    }

    [Fact]
    public void Four_panels_lie_around_a_hole_in_the_middle()
    {
        var sheet = Bad.Sheet("B1", "60", "40").At(Bad.Place("29", "19", "2", "2"));
        var plan = Some.Planned(Bad.Sheets([sheet, New], Bad.Panel("A", "28", "18", 4)));
        Assert.Equal((PlanStatus.Proven, Money.Zero), (plan.Status, plan.Cost));
    }

    [Fact]
    public void What_is_clear_beside_the_corner_is_kept_and_the_corner_is_waste()
    {
        var sheet = Bad.Sheet("B1", "60", "30").At(Bad.Place("57 1/8", "0", "2", "3"));
        var plan = Some.Planned(Bad.Sheets([sheet], Bad.Panel("A", "20", "30")));
        var kept = Assert.Single(Assert.Single(plan.Layouts).Leftovers, left => left.Keep);
        Assert.Equal((Some.Of("37"), Some.Of("30")), (kept.Dx, kept.Dy));
    }

    [Fact]
    public void A_new_sheet_bought_with_a_hole_is_still_squared()
    {
        var sheet = Some.Stock("R1", "96", "48", offcut: true, material: "ply")
            .At(Bad.Place("0", "40", "8", "8"))
            .Raw(StockEdges.All);
        var plan = Some.Planned(Bad.Sheets([sheet], Bad.Panel("A", "95 1/2", "39 1/2"), Bad.Panel("B", "87", "7")));
        Assert.Equal(PlanStatus.Proven, plan.Status);
        Assert.All(plan.AllPieces(), piece => Assert.True(piece.X >= Some.Of("1/4") && piece.Y >= Some.Of("1/4")));
    }

    [Fact]
    public void Only_the_edges_named_lose_the_margin()
    {
        var sheet = Bad.Sheet("B1", "40", "30").Raw(StockEdges.Near | StockEdges.Back);
        Assert.Equal(PlanStatus.Proven, Some.Planned(Bad.Sheets([sheet], Bad.Panel("A", "39 3/4", "29 3/4"))).Status);
        Assert.Equal(PlanStatus.Incomplete, Some.Planned(Bad.Sheets([sheet], Bad.Panel("A", "39 3/4", "30"))).Status);
    }

    [Fact]
    public void Cuts_around_a_bad_place_are_within_the_reach_of_the_saw()
    {
        var sheet = Bad.Sheet("B1", "60", "40").At(Bad.Place("29", "19", "2", "2"));
        var request = Bad.Sheets([sheet, New], Bad.Panel("A", "28", "18", 4), Bad.Panel("C", "60", "12")).Saw("24", "24");
        var plan = Some.Planned(request);
        Assert.Empty(plan.Unplaced);
    }

    [Fact]
    public void The_store_makes_no_cuts_in_a_sheet_with_a_bad_place()
    {
        var whole = Some.Stock("old", "96", "48", 10, material: "ply").At(Bad.Place("0", "0", "2", "2"));
        var request = Bad.Sheets([whole, New], Bad.Panel("A", "40", "20")).By(2, "1/4", "60", "48");
        Assert.Equal("new", Assert.Single(Some.Planned(request).Layouts).Stock);
    }

    [Fact]
    public void A_bad_sheet_that_costs_something_is_bought_where_it_is_cheaper()
    {
        var whole = Some.Stock("old", "96", "48", 10, material: "ply").At(Bad.Place("0", "0", "2", "2"));
        var plan = Some.Planned(Bad.Sheets([whole, New], Bad.Panel("A", "40", "20", 4)));
        Assert.Equal((PlanStatus.Proven, Money.From(10)), (plan.Status, plan.Cost));
    }
}
