using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.Limits;

/// <summary>First cuts by the store, so that every panel goes into the car.</summary>
public sealed class StoreAndCarTests
{
    // Two crosscuts leave three panels of (96 - 2/8) / 3 = 31 11/12 in at least, more than 30; rips leave 96 in long ones.
    [Fact]
    public void Two_store_cuts_do_not_bring_a_sheet_into_a_car_of_60_by_30()
    {
        var plan = Some.Planned(Limited.Sheets([Limited.Panel("A", "20", "15")]).By(2, longest: "60", widest: "30"));
        Assert.Equal(
            "its stock does not fit the car with 2 store cuts: the limit is 60 in × 30 in",
            Assert.Single(plan.Unplaced).Reason
        );
    }

    [Fact]
    public void Three_store_cuts_do()
    {
        var plan = Some.Planned(Limited.Sheets([Limited.Panel("A", "20", "15", 12)]).By(3, longest: "60", widest: "30"));
        var layout = Assert.Single(plan.Layouts);
        Assert.Equal(3, layout.StoreCuts().Length);
        Assert.All(layout.StoreCuts(), cut => Assert.Equal(CutKind.Crosscut, cut.Kind));
        Assert.Equal([1, 2, 3], layout.StoreCuts().Select(cut => cut.N));
    }

    // (48 - 1/8) / 2 = 23 15/16: one rip makes two panels for a car of 96 by 24.
    [Fact]
    public void A_long_narrow_car_takes_a_ripped_sheet()
    {
        var plan = Some.Planned(Limited.Sheets([Limited.Panel("A", "80", "20", 2)]).By(2, longest: "96", widest: "24"));
        Assert.Equal(CutKind.Rip, Assert.Single(Assert.Single(plan.Layouts).StoreCuts()).Kind);
    }

    // A car of 60 by 50 takes half a sheet: the dearer store cuts it, the cheaper one sells it whole only.
    [Fact]
    public void Where_one_store_cuts_and_another_does_not_only_the_first_s_sheets_are_cut()
    {
        var stock = new[]
        {
            Some.Stock("cheap", "96", "48", 40, material: "ply") with
            {
                SoldUncut = true,
            },
            Some.Stock("cut", "96", "48", 60, material: "ply"),
        };
        var request = Some.Request([Some.Sheet()], stock, [Limited.Panel("A", "40", "20", 4)]).By(1, longest: "60", widest: "50");
        var layout = Assert.Single(Some.Planned(request).Layouts);
        Assert.Equal(("cut", 1), (layout.Stock, layout.StoreCuts().Length));
    }

    // The first panel is at most as long as the car, 5 3/4 in. The next begins at 5 7/8 in, and wood is usable from 6 3/4 in on.
    [Fact]
    public void An_end_trim_longer_than_the_car_is_not_cut_into()
    {
        var stock = Some.Stock("s", "12", price: 5);
        var request = Some.Request([Some.Board()], [stock], [Some.Part("A", "3")], endTrim: "6 3/4").By(3, "1/4", "5 3/4");
        Assert.Equal("A", Assert.Single(Some.Planned(request).Unplaced).Part);
    }

    [Fact]
    public void A_panel_of_waste_takes_the_end_trim_in()
    {
        var stock = Some.Stock("s", "12", price: 5);
        var request = Some.Request([Some.Board()], [stock], [Some.Part("A", "3")], endTrim: "6").By(3, "1/4", "5 3/4");
        Assert.Empty(Some.Planned(request).Unplaced);
    }

    [Fact]
    public void A_sheet_that_goes_home_whole_is_not_cut_by_the_store()
    {
        var request = Limited.Sheets([Limited.Panel("A", "40", "20", 3)]);
        var plan = Some.Planned(request.By(2, "1/4", "96", "48"));
        Assert.Empty(plan.Unplaced);
        Assert.DoesNotContain(plan.Layouts.SelectMany(layout => layout.Cuts), cut => cut.ByStore);
    }

    [Fact]
    public void Without_store_cuts_only_what_goes_home_as_bought_is_bought()
    {
        var stock = new[]
        {
            Some.Stock("full", "96", "48", 40, material: "ply"),
            Some.Stock("half", "48", "48", 38, material: "ply"),
        };
        var request = Some.Request([Some.Sheet()], stock, [Limited.Panel("A", "40", "20", 4)]).By(longest: "60", widest: "50");
        Assert.Equal(["half"], Some.Planned(request).Layouts.Select(layout => layout.Stock).Distinct());
    }

    [Fact]
    public void What_lies_in_the_rack_is_at_home_already()
    {
        var stock = new[] { Some.Stock("rack", "96", "48", 0, 1, true, "ply") };
        var request = Some.Request([Some.Sheet()], stock, [Limited.Panel("A", "80", "40")]).By(1, longest: "60", widest: "30");
        var plan = Some.Planned(request);
        Assert.Empty(plan.Unplaced);
        Assert.Empty(Assert.Single(plan.Layouts).StoreCuts());
    }

    [Theory]
    [InlineData("40", "35", "too wide for the car: 35 in, and the limit is 30 in")]
    [InlineData("70", "20", "too long for the car: 70 in, and the limit is 60 in")]
    public void A_part_that_the_car_does_not_take_says_so(string length, string width, string reason)
    {
        var plan = Some.Planned(
            Limited.Sheets([Limited.Panel("A", length, width), Limited.Panel("B", "20", "15")]).By(3, longest: "60", widest: "30")
        );
        Assert.Equal(("A", reason), (Assert.Single(plan.Unplaced).Part, plan.Unplaced[0].Reason));
        Assert.Equal("B", Assert.Single(plan.AllPieces()).Part);
    }

    // Panels of 32 in: each store cut takes 1/8 and leaves 1/4 on both sides, to be trimmed at home.
    [Fact]
    public void Tolerance_is_left_on_both_sides_of_a_store_cut_and_trimmed_at_home()
    {
        var plan = Some.Planned(Limited.Sheets([Limited.Panel("A", "31", "47", 3)]).By(2, "1/4", "60", "48"));
        var layout = Assert.Single(plan.Layouts);
        var pieces = layout.Pieces.OrderBy(piece => piece.X).ToList();
        for (var i = 1; i < pieces.Count; i++)
            Assert.True(pieces[i].X - (pieces[i - 1].X + pieces[i - 1].Dx) >= Some.Of("5/8"), $"{pieces[i - 1]} and {pieces[i]}");
        Assert.Contains(layout.Cuts, cut => !cut.ByStore && cut.Kind == CutKind.Crosscut && cut.At == Some.Of("1/8"));
    }

    // 3 × 31 7/8 = 95 5/8 and two cuts of 1/8 make 95 7/8; with a tolerance of 1/16 the three need 96 1/8.
    [Theory]
    [InlineData("0", 1)]
    [InlineData("1/16", 2)]
    public void Tolerance_costs_wood(string tolerance, int sheets)
    {
        var plan = Some.Planned(Limited.Sheets([Limited.Panel("A", "31 7/8", "48", 3)]).By(3, tolerance, "60", "48"));
        Assert.Equal(sheets, plan.Layouts.Sum(layout => layout.Copies));
    }

    [Fact]
    public void Boards_of_16_ft_are_cut_by_the_store_for_a_car_of_8_ft()
    {
        var request = Some.Request(
            [Some.Board()],
            [Some.Stock("16ft", "16 ft", price: 12)],
            [Some.Part("A", "47", 4), Some.Part("B", "90", 2)],
            endTrim: "1/2"
        );
        var plan = Some.Planned(request.By(2, "1/8", "8 ft"));
        Assert.Empty(plan.Unplaced);
        Assert.NotEmpty(plan.Layouts);
        Assert.All(plan.Layouts, layout => Assert.NotEmpty(layout.StoreCuts()));
        Assert.Equal(2, plan.Buy.Single().Quantity);
    }

    [Fact]
    public void A_board_part_longer_than_the_car_says_so()
    {
        var request = Some.Request([Some.Board()], [Some.Stock("16ft", "16 ft", price: 12)], [Some.Part("A", "100")])
            .By(2, "1/8", "8 ft");
        Assert.Equal(
            "too long for the car: 100 in, and the limit is 96 in",
            Assert.Single(Some.Planned(request).Unplaced).Reason
        );
    }

    [Fact]
    public void Boards_that_go_home_are_planned_as_ever()
    {
        var request = Some.Request([Some.Board()], [Some.Stock("8ft", "8 ft", price: 6)], [Some.Part("A", "31", 7)]);
        var (plain, limited) = (Some.Planned(request), Some.Planned(request.By(2, "1/8", "8 ft").Saw("12", "6")));
        Assert.Equal((plain.Cost, PlanStatus.Proven), (limited.Cost, limited.Status));
    }

    [Fact]
    public void A_smaller_car_means_a_new_plan()
    {
        var before = Limited.Sheets([Limited.Panel("A", "20", "40", 3)]).By(3, "1/8", "96", "48");
        var after = before.By(3, "1/8", "60", "30");
        var old = Some.Planned(before);
        Assert.Empty(Assert.Single(old.Layouts).StoreCuts());
        var plan = Some.Planned(after, Some.Short with { Earlier = new(before, old) });
        Assert.Empty(plan.Unplaced);
        Assert.All(plan.Layouts, layout => Assert.NotEmpty(layout.StoreCuts()));
    }
}
