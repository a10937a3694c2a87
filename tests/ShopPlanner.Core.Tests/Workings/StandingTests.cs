using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Whether a piece stands, by moments about the edge it tips over.</summary>
public sealed class StandingTests
{
    private const string Factor = "Stability factor";

    // Statics: (200 − 60) × 10 ÷ (60 × 10 + 60 × 20) = 0.778; (50 − 30) × 9 ÷ (30 × 9) = 0.667.
    [Theory]
    [InlineData(0.778, "depth=20", "height=50", "weight=200 lb", "open-weight=60 lb", "leaning=60 lb")]
    [InlineData(0.667, "depth=18", "height=26", "weight=50 lb", "open-weight=30 lb", "leaning=0 lb")]
    public void What_is_open_counts_where_it_is_and_not_in_the_case_as_well(double factor, params string[] given)
    {
        Assert.Equal(factor, Asked.Number("stability", Factor, given), 0.001);
        Assert.Equal(Severity.Fails, Asked.Answer("stability", given).Verdicts[0].Severity);
    }

    // Statics: a base set back by 3 in: 100 × (9 − 3) ÷ (10 × (9 + 3) + 30 × (18 + 3)) = 0.8.
    [Fact]
    public void It_tips_over_what_touches_the_floor() =>
        Assert.Equal(
            0.8,
            Asked.Number(
                "stability",
                Factor,
                "depth=18",
                "height=30",
                "weight=110 lb",
                "open-weight=10 lb",
                "leaning=30 lb",
                "toe=3"
            ),
            0.001
        );

    [Fact]
    public void More_doors_open_at_once_tip_it_sooner()
    {
        string[] given = ["depth=16", "height=40", "weight=120 lb", "open-weight=12 lb"];
        var (one, two) = (
            Asked.Number("stability", Factor, [.. given, "doors=1"]),
            Asked.Number("stability", Factor, [.. given, "doors=2"])
        );
        Assert.True(two < one);
        // Statics: (120 − 24) × 8 ÷ (24 × 8 + 60 × 16) = 0.667.
        Assert.Equal(0.667, two, 0.001);
    }

    [Theory]
    [InlineData("open-weight", "depth=16", "height=40", "weight=30 lb", "open-weight=30 lb")]
    [InlineData("open-weight", "depth=16", "height=40", "weight=30 lb", "open-weight=10 lb", "doors=3")]
    [InlineData("toe", "depth=16", "height=40", "weight=30 lb", "toe=8")]
    public void What_leaves_nothing_to_stand_on_is_refused(string key, params string[] given) =>
        Assert.Contains(Asked.Run("stability", given).Faults, fault => fault.Field == key);

    [Fact]
    public void A_climbing_child_that_is_counted_is_not_said_to_be_left_out()
    {
        var heavy = Asked.Answer("stability", "depth=24", "height=20", "weight=400 lb");
        Assert.Equal(Severity.Fine, heavy.Verdicts[0].Severity);
        Assert.DoesNotContain(heavy.Verdicts, verdict => verdict.Text.Contains("limbing", StringComparison.Ordinal));
        var without = Asked.Answer("stability", "depth=24", "height=20", "weight=400 lb", "leaning=0 lb");
        Assert.Contains(without.Verdicts, verdict => verdict.Text.Contains("limb", StringComparison.Ordinal));
    }
}
