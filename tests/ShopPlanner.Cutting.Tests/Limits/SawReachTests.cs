using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.Limits;

/// <summary>A small saw: how wide it rips, how long it crosscuts.</summary>
public sealed class SawReachTests
{
    [Fact]
    public void A_long_crosscut_is_avoided_by_ripping_first()
    {
        var plan = Some.Planned(Limited.Sheets([Limited.Panel("A", "30", "20", 4)], trim: "1/4").Saw(crosscut: "24"));
        var layout = Assert.Single(plan.Layouts);
        Assert.Empty(plan.Unplaced);
        Assert.Equal(CutKind.Rip, layout.Cuts[0].Kind);
    }

    [Fact]
    public void A_part_that_needs_a_longer_crosscut_says_so() =>
        Assert.Equal(
            "needs a longer crosscut than your saw makes, 24 in",
            Assert.Single(Some.Planned(Limited.Sheets([Limited.Panel("A", "30", "30")]).Saw(crosscut: "24")).Unplaced).Reason
        );

    // Without trims and tolerance the store's one crosscut at 30 in finishes both ends of a panel, which needs no crosscut at home.
    [Fact]
    public void The_store_makes_the_crosscut_that_is_too_long_at_home()
    {
        var plan = Some.Planned(Limited.Sheets([Limited.Panel("A", "30", "30")]).Saw(crosscut: "24").By(1));
        Assert.Equal(Some.Of("30"), Assert.Single(Assert.Single(plan.Layouts).StoreCuts()).At);
    }

    // Two strips of 29 in on a sheet of 60: any rip between them has 29 in or more on both sides.
    [Fact]
    public void Two_wide_strips_need_two_sheets_or_a_rip_by_the_store()
    {
        var request = Limited.Sheets([Limited.Panel("A", "60", "29", 2)], length: "60", width: "60");
        Assert.Equal(1, Some.Planned(request).Buy.Single().Quantity);
        Assert.Equal(2, Some.Planned(request.Saw(rip: "24")).Buy.Single().Quantity);
        var store = Some.Planned(request.Saw(rip: "24").By(1));
        Assert.Equal((1, CutKind.Rip), (store.Buy.Single().Quantity, Assert.Single(store.Layouts[0].StoreCuts()).Kind));
    }

    // 29 in remain of 60 once 24 in and 6 3/4 in are peeled off the far side.
    [Fact]
    public void Waste_beside_a_wide_part_is_peeled_off_in_strips_that_the_fence_takes()
    {
        var plan = Some.Planned(Limited.Sheets([Limited.Panel("A", "60", "29")], length: "60", width: "60").Saw(rip: "24"));
        Assert.Equal(2, Assert.Single(plan.Layouts).Cuts.Length);
        Assert.NotEmpty(plan.Layouts[0].Leftovers);
        Assert.All(plan.Layouts[0].Leftovers, left => Assert.True(left.Dy <= Some.Of("24")));
    }

    [Fact]
    public void A_strip_is_split_off_in_the_middle_where_both_halves_go_beside_the_fence()
    {
        var plan = Some.Planned(Limited.Sheets([Limited.Panel("A", "96", "23", 2)]).Saw(rip: "23"));
        Assert.Equal(1, plan.Buy.Single().Quantity);
    }

    [Fact]
    public void A_board_wider_than_the_crosscut_is_ripped_first()
    {
        var request = Some.Request(
                [Some.Board(width: "11 1/4")],
                [Some.Stock("s", "96", "11 1/4", 20)],
                [Some.Part("A", "40", 4, "5")],
                endTrim: "1/2"
            )
            .Saw(crosscut: "8");
        var plan = Some.Planned(request);
        Assert.Empty(plan.Unplaced);
        Assert.Equal(CutKind.Rip, plan.Layouts[0].Cuts[0].Kind);
    }

    [Fact]
    public void A_board_of_full_width_that_the_saw_cannot_cross_says_so()
    {
        var request = Some.Request(
                [Some.Board(width: "11 1/4")],
                [Some.Stock("s", "96", "11 1/4", 20)],
                [Some.Part("A", "40", 4, "11 1/4")]
            )
            .Saw(crosscut: "8");
        Assert.Equal("needs a longer crosscut than your saw makes, 8 in", Assert.Single(Some.Planned(request).Unplaced).Reason);
    }

    [Fact]
    public void Limits_together_are_named_together()
    {
        var request = Limited.Sheets([Limited.Panel("A", "30", "30")]).Saw(crosscut: "24").By(2, "1/8", "60", "40");
        var reason = Assert.Single(Some.Planned(request).Unplaced).Reason;
        Assert.Equal("needs a longer crosscut than your saw makes, 24 in", reason);
        var neither = Some.Planned(request.By(longest: "60", widest: "40"));
        Assert.StartsWith(
            "cannot be cut within these limits: car 60 in × 40 in, longest crosscut 24 in",
            Assert.Single(neither.Unplaced).Reason,
            StringComparison.Ordinal
        );
    }
}
