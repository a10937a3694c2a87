namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Parts that cannot be cut are reported with the reason; the rest is planned all the same.</summary>
public sealed class UnplacedTests
{
    [Fact]
    public void Longer_than_any_stock_names_both_lengths()
    {
        var plan = Some.Planned(
            Some.Request(
                [Some.Board()],
                [Some.Stock("s", "96", price: 6)],
                [Some.Part("A", "120"), Some.Part("B", "20")],
                endTrim: "1/2"
            )
        );
        Assert.Equal(
            "longer than any stock of this material: needs 120 in, 95 1/2 in usable",
            Assert.Single(plan.Unplaced).Reason
        );
        Assert.Equal("B", Assert.Single(plan.AllPieces()).Part);
    }

    [Fact]
    public void Wider_than_any_board_asks_for_a_glue_up() =>
        Assert.Contains("glue it up from strips", Reason(Some.Part("A", "20", width: "17")), StringComparison.Ordinal);

    [Fact]
    public void A_material_without_stock_is_named() =>
        Assert.Equal(
            "no stock of this material to cut from",
            Assert.Single(Some.Planned(Some.Request([Some.Board()], [], [Some.Part("A", "20")])).Unplaced).Reason
        );

    [Fact]
    public void A_part_that_fits_only_across_the_grain_says_so()
    {
        var request = Some.Request(
            [Some.Sheet()],
            [Some.Stock("s", "96", "48", 60, material: "ply")],
            [Some.Part("A", "40", 1, "60", material: "ply")]
        );
        Assert.Contains("across the grain", Assert.Single(Some.Planned(request).Unplaced).Reason, StringComparison.Ordinal);
        var turning = request with { Parts = [request.Parts[0] with { Grain = Grain.Any }] };
        Assert.True(Assert.Single(Some.Planned(turning).AllPieces()).Turned);
    }

    [Fact]
    public void Long_and_wide_but_never_both()
    {
        var stock = new[] { Some.Stock("a", "96", "12", 20, material: "ply"), Some.Stock("b", "24", "48", 20, material: "ply") };
        var plan = Some.Planned(Some.Request([Some.Sheet()], stock, [Some.Part("A", "50", 1, "30", material: "ply")]));
        Assert.Equal("no board or sheet of this material is both long and wide enough", Assert.Single(plan.Unplaced).Reason);
    }

    [Fact]
    public void Limited_stock_places_what_it_can()
    {
        var plan = Some.Planned(
            Some.Request([Some.Board()], [Some.Stock("B1", "50", quantity: 1, offcut: true)], [Some.Part("A", "20", 5)])
        );
        Assert.Equal(
            (PlanStatus.Incomplete, 2, 3),
            (plan.Status, plan.AllPieces().Length, Assert.Single(plan.Unplaced).Quantity)
        );
    }

    private static string Reason(CutPart part) =>
        Assert.Single(Some.Planned(Some.Request([Some.Board()], [Some.Stock("s", "96", price: 6)], [part])).Unplaced).Reason;
}
