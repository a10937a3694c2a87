using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.BadWood;

/// <summary>Boards with bad ends and knots, and boards whose ends are still to be squared.</summary>
public sealed class BadBoardTests
{
    [Fact]
    public void A_split_end_is_cut_away_first_and_nothing_is_cut_from_it()
    {
        var plan = Some.Planned(Bad.Boards([Bad.Board("B1", "40").At(Bad.Across("0", "6"))], Some.Part("A", "30")));
        var layout = Assert.Single(plan.Layouts);
        Assert.Equal(Some.Of("6"), Assert.Single(layout.Pieces).X);
        Assert.Equal((CutKind.Crosscut, Some.Of("5 7/8")), (layout.Cuts[0].Kind, layout.Cuts[0].At));
        Assert.Equal(PlanStatus.Proven, plan.Status);
    }

    [Fact]
    public void A_bad_far_end_stays_on_the_piece_that_falls_off()
    {
        var plan = Some.Planned(Bad.Boards([Bad.Board("B1", "40").At(Bad.Across("34", "6"))], Some.Part("A", "30")));
        var layout = Assert.Single(plan.Layouts);
        Assert.Equal(Length.Zero, Assert.Single(layout.Pieces).X);
        Assert.Equal(Some.Of("30"), Assert.Single(layout.Cuts).At);
    }

    [Fact]
    public void Parts_lie_on_both_sides_of_a_knot()
    {
        var board = Bad.Board("B1", "60").At(Bad.Place("28", "1", "2", "1"));
        var plan = Some.Planned(Bad.Boards([board], Some.Part("A", "25", 2)));
        Assert.Equal([Length.Zero, Some.Of("30")], Assert.Single(plan.Layouts).Pieces.Select(piece => piece.X).Order());
        Assert.Equal(PlanStatus.Proven, plan.Status);
    }

    [Fact]
    public void A_part_that_only_fits_across_the_knot_is_not_cut_and_the_reason_is_said()
    {
        var board = Bad.Board("B1", "60").At(Bad.Place("28", "1", "2", "1"));
        var plan = Some.Planned(Bad.Boards([board], Some.Part("A", "31")));
        Assert.Empty(plan.Layouts);
        Assert.Contains("bad place in the way", Assert.Single(plan.Unplaced).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_narrow_part_is_ripped_from_beside_the_knot()
    {
        var board = Bad.Board("B1", "60").At(Bad.Place("28", "1 1/2", "2", "1"));
        var plan = Some.Planned(Bad.Boards([board], Some.Part("A", "50", width: "1 1/4")));
        Assert.Equal(Length.Zero, Assert.Single(plan.AllPieces()).Y);
        Assert.Equal(PlanStatus.Proven, plan.Status);
    }

    [Fact]
    public void A_leftover_is_cut_free_of_the_bad_end()
    {
        var plan = Some.Planned(Bad.Boards([Bad.Board("B1", "60").At(Bad.Across("56", "4"))], Some.Part("A", "30")));
        var layout = Assert.Single(plan.Layouts);
        var kept = Assert.Single(layout.Leftovers, left => left.Keep);
        Assert.Equal((Some.Of("30 1/8"), Some.Of("25 7/8")), (kept.X, kept.Dx));
        Assert.Equal(2, layout.Cuts.Length);
    }

    [Fact]
    public void What_is_not_worth_a_cut_stays_on_the_bad_end()
    {
        var plan = Some.Planned(Bad.Boards([Bad.Board("B1", "44").At(Bad.Across("40", "4"))], Some.Part("A", "30")));
        var layout = Assert.Single(plan.Layouts);
        Assert.Single(layout.Cuts);
        Assert.DoesNotContain(layout.Leftovers, left => left.Keep);
    }

    [Fact]
    public void A_board_that_is_bad_all_over_offers_nothing()
    {
        var plan = Some.Planned(
            Bad.Boards([Bad.Board("B1", "60").At(Bad.Across("0", "60")), Some.Stock("new", "96", price: 6)], Some.Part("A", "30"))
        );
        Assert.Equal("new", Assert.Single(plan.Layouts).Stock);
    }

    [Fact]
    public void Places_that_overlap_are_bad_together()
    {
        var board = Bad.Board("B1", "60").At(Bad.Across("20", "5"), Bad.Across("23", "5"), Bad.Place("21", "1", "1", "1"));
        var plan = Some.Planned(Bad.Boards([board], Some.Part("A", "20"), Some.Part("B", "32")));
        Assert.Equal(PlanStatus.Proven, plan.Status);
    }

    [Fact]
    public void A_bad_board_that_costs_something_is_paid_for_once()
    {
        var board = Some.Stock("old", "62", price: 5).At(Bad.Across("30", "2"));
        var plan = Some.Planned(Bad.Boards([board, Some.Stock("new", "31", price: 4)], Some.Part("A", "29", 2)));
        Assert.Equal((PlanStatus.Proven, Money.From(5)), (plan.Status, plan.Cost));
        Assert.Equal(1, Assert.Single(plan.Buy).Quantity);
    }

    [Fact]
    public void One_part_does_not_pay_for_half_a_bad_board()
    {
        var board = Some.Stock("old", "62", price: 5).At(Bad.Across("30", "2"));
        var plan = Some.Planned(Bad.Boards([board, Some.Stock("new", "31", price: 4)], Some.Part("A", "29")));
        Assert.Equal((PlanStatus.Proven, Money.From(4)), (plan.Status, plan.Cost));
    }

    [Theory]
    [InlineData(StockEdges.None, "60")]
    [InlineData(StockEdges.Near, "59 1/2")]
    [InlineData(StockEdges.Far, "59 1/2")]
    [InlineData(StockEdges.Ends, "59")]
    public void An_end_to_square_loses_the_trim(StockEdges raw, string usable)
    {
        var board = Bad.Board("B1", "60").Raw(raw);
        var part = Some.Part("A", usable);
        Assert.Equal(PlanStatus.Proven, Some.Planned(Bad.Boards([board], part)).Status);
        var longer = part with { Length = part.Length + Some.Of("1/64") };
        Assert.Equal(PlanStatus.Incomplete, Some.Planned(Bad.Boards([board], longer)).Status);
    }

    [Fact]
    public void New_boards_squared_at_the_store_lose_nothing()
    {
        var plan = Some.Planned(Bad.Boards([Some.Stock("new", "96", price: 6).Raw(StockEdges.None)], Some.Part("A", "96")));
        Assert.Equal(PlanStatus.Proven, plan.Status);
    }

    [Fact]
    public void A_bad_end_as_thin_as_the_blade_is_cut_off_with_the_blade_flush_with_the_end()
    {
        var board = Bad.Board("B1", "40").At(Bad.Across("0", "1/8"));
        var plan = Some.Planned(Bad.Boards([board], Some.Part("A", "39 7/8")));
        Assert.Equal(Length.Zero, Assert.Single(Assert.Single(plan.Layouts).Cuts).At);
    }

    [Fact]
    public void A_plan_before_keeps_its_layouts_on_both_sides_of_a_knot()
    {
        var board = Bad.Board("B1", "60").At(Bad.Across("28", "2"));
        var request = Bad.Boards([board, Some.Stock("new", "96", price: 6)], Some.Part("A", "25", 2), Some.Part("B", "40"));
        var before = Some.Planned(request);
        var again = Some.Planned(request, Some.Short with { Earlier = new(request, before) });
        Assert.Equal(before.Cost, again.Cost);
        var edited = request with { Parts = [.. request.Parts, Some.Part("C", "3")] };
        Assert.Equal(before.Cost, Some.Planned(edited, Some.Short with { Earlier = new(request, before) }).Cost);
    }
}
