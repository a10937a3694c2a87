using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Boards through the whole planner.</summary>
public sealed class BoardPlanTests
{
    // n = floor((S + k) / (L + k)): arithmetic of a row of equal pieces, exact for any kerf.
    [Theory]
    [InlineData("96", "24", "1/8", 3)]
    [InlineData("96", "23 7/8", "1/8", 4)]
    [InlineData("96 1/4", "24", "1/16", 4)]
    [InlineData("2440 mm", "600 mm", "3.2 mm", 4)]
    public void A_row_of_equal_pieces_gives_as_many_as_the_kerf_leaves(string stock, string length, string kerf, int pieces)
    {
        var fits = Some.Request([Some.Board()], [Some.Stock("s", stock, quantity: 1)], [Some.Part("A", length, pieces)], kerf);
        var over = fits with { Parts = [fits.Parts[0] with { Quantity = pieces + 1 }] };
        Assert.Equal(PlanStatus.Proven, Some.Planned(fits).Status);
        Assert.Equal(1, Assert.Single(Some.Planned(over).Unplaced).Quantity);
    }

    [Fact]
    public void A_part_as_long_as_the_stock_needs_no_cut()
    {
        var plan = Some.Planned(Some.Request([Some.Board()], [Some.Stock("s", "96", price: 5)], [Some.Part("A", "96", 2)]));
        Assert.Equal(Money.From(10), plan.Cost);
        Assert.Empty(Assert.Single(plan.Layouts).Cuts);
    }

    [Fact]
    public void A_strip_narrower_than_the_kerf_becomes_sawdust()
    {
        var plan = Some.Planned(Some.Request([Some.Board()], [Some.Stock("s", "48", price: 5)], [Some.Part("A", "23 7/8", 2)]));
        var layout = Assert.Single(plan.Layouts);
        Assert.Empty(layout.Leftovers);
        Assert.Null(layout.Cuts[^1].Second);
    }

    [Fact]
    public void The_end_trim_is_taken_from_new_boards_only()
    {
        var stock = new[] { Some.Stock("new", "48", price: 5), Some.Stock("B1", "48", quantity: 1, offcut: true) };
        var plan = Some.Planned(Some.Request([Some.Board()], stock, [Some.Part("A", "47 3/4", 2)], endTrim: "1/2"));
        Assert.Equal(PlanStatus.Incomplete, plan.Status);
        Assert.Equal("B1", Assert.Single(plan.Layouts).Stock);
    }

    [Fact]
    public void A_squaring_cut_comes_first_on_a_new_board()
    {
        var plan = Some.Planned(
            Some.Request([Some.Board()], [Some.Stock("new", "48", price: 5)], [Some.Part("A", "20", 2)], endTrim: "1/2")
        );
        var cut = plan.Layouts[0].Cuts[0];
        Assert.Equal((Some.Of("3/8"), CutKind.Crosscut, "board"), (cut.At, cut.Kind, cut.Piece));
        Assert.Equal(Some.Of("1/2"), plan.AllPieces().Min(piece => piece.X));
    }

    [Fact]
    public void An_offcut_is_used_before_a_board_is_bought()
    {
        var stock = new[] { Some.Stock("new", "96", price: 6.48m), Some.Stock("B7", "41 3/8", quantity: 1, offcut: true) };
        var plan = Some.Planned(Some.Request([Some.Board()], stock, [Some.Part("A", "34 1/2")]));
        Assert.Equal(Money.Zero, plan.Cost);
        Assert.Empty(plan.Buy);
    }

    [Fact]
    public void The_cheapest_mix_of_lengths_is_bought()
    {
        // 8 ft for 6, 10 ft for 8: three pieces of 39 in fit the long board, two the short one; five pieces cost 14 at least.
        var stock = new[] { Some.Stock("8ft", "8 ft", price: 6), Some.Stock("10ft", "10 ft", price: 8) };
        var plan = Some.Planned(Some.Request([Some.Board()], stock, [Some.Part("A", "39", 5)]));
        Assert.Equal((PlanStatus.Proven, Money.From(14)), (plan.Status, plan.Cost));
    }

    [Fact]
    public void A_narrower_part_is_ripped_from_the_board()
    {
        var plan = Some.Planned(
            Some.Request(
                [Some.Board(width: "5 1/2")],
                [Some.Stock("s", "96", "5 1/2", 9)],
                [Some.Part("A", "40", 4, "2 5/8"), Some.Part("B", "12", 1, "5 1/2")]
            )
        );
        Assert.Equal(1, plan.Buy.Sum(one => one.Quantity));
        Assert.Contains(plan.Layouts[0].Cuts, cut => cut.Kind == CutKind.Rip);
    }

    [Fact]
    public void Inches_and_millimetres_without_a_common_measure_are_planned_exactly()
    {
        var parts = new[] { Some.Part("A", "300.1 mm", 3), Some.Part("B", "11 63/64", 4), Some.Part("C", "7.3 mm", 5) };
        var plan = Some.Planned(
            Some.Request(
                [Some.Board()],
                [Some.Stock("s", "8 ft", price: 6), Some.Stock("m", "2400 mm", price: 6)],
                parts,
                "2.7 mm"
            )
        );
        Assert.Equal((PlanStatus.Proven, 12), (plan.Status, plan.AllPieces().Length));
    }

    [Fact]
    public void Equal_parts_under_different_ids_each_get_their_own_pieces()
    {
        var plan = Some.Planned(
            Some.Request([Some.Board()], [Some.Stock("s", "96", price: 6)], [Some.Part("A", "23", 4), Some.Part("B", "23", 4)])
        );
        Assert.Equal((Money.From(12), 4), (plan.Cost, plan.AllPieces().Count(piece => piece.Part == "B")));
    }

    [Fact]
    public void Stock_of_which_there_is_none_is_not_cut()
    {
        var stock = new[] { Some.Stock("none", "96", price: 1, quantity: 0), Some.Stock("s", "96", price: 6) };
        Assert.Equal("s", Assert.Single(Some.Planned(Some.Request([Some.Board()], stock, [Some.Part("A", "20")])).Layouts).Stock);
    }
}
