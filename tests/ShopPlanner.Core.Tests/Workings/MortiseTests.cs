using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Mortises and tenons beside old rules of the trade.</summary>
public sealed class MortiseTests
{
    // Handwork in Wood, no. 42: a third; to the nearest chisel or bit.
    [
        Theory,
        InlineData("5/8", "3/16"),
        InlineData("3/4", "1/4"),
        InlineData("13/16", "1/4"),
        InlineData("7/8", "5/16"),
        InlineData("1", "5/16"),
        InlineData("1 1/2", "1/2")
    ]
    public void A_tenon_is_a_third_of_the_rail_to_the_nearest_chisel(string stock, string tenon) =>
        Assert.Equal(
            Asked.Inch(tenon),
            Asked.Length("mortise", "Tenon thickness", "thickness=" + stock, "width=3", "into=2 1/2")
        );

    [Theory, InlineData("18", 6), InlineData("24", 8), InlineData("30", 10), InlineData("45", 15)]
    public void In_millimeters_it_is_a_metric_chisel(string stock, int tenon)
    {
        var answer = Asked.Run(LengthUnit.Millimetre, "mortise", "thickness=" + stock, "width=75", "into=60").Answer!;
        Assert.Equal(tenon, answer.Results[0].Figure.Number(LengthUnit.Millimetre));
    }

    // The words "half the width of the rail, minus the groove" of Handwork in Wood, no. 42, read both ways.
    [
        Theory,
        InlineData("3", "3/8", "1 1/8", "1 ⁵⁄₁₆″"),
        InlineData("2 1/4", "3/8", "3/4", "¹⁵⁄₁₆″"),
        InlineData("4", "1/4", "1 3/4", "1 ⅞″")
    ]
    public void A_haunched_tenon_is_half_the_rail_minus_the_groove_and_the_other_reading_is_told(
        string rail,
        string groove,
        string width,
        string other
    )
    {
        string[] given = ["thickness=3/4", "width=" + rail, "into=2 1/2", "kind=haunched", "groove=" + groove];
        Assert.Equal(Asked.Inch(width), Asked.Length("mortise", "Tenon width", given));
        Assert.Contains(
            Asked.Answer("mortise", given).Verdicts,
            verdict => verdict.Text.Contains(other, StringComparison.Ordinal)
        );
        var all =
            Asked.Length("mortise", "Tenon width", given) + Asked.Length("mortise", "Haunch width", given) + Asked.Inch(groove);
        Assert.Equal(Asked.Inch(rail), all);
        Assert.Equal(Asked.Inch(groove), Asked.Length("mortise", "Haunch length", given));
    }

    // Training-school rules: three to five times as deep as wide, the tenon 1/8 in shorter.
    [Theory, InlineData("3/4", "3"), InlineData("7/8", "3"), InlineData("1 1/2", "3 1/2")]
    public void A_blind_mortise_is_three_to_five_times_as_deep_as_wide_and_an_eighth_deeper_than_its_tenon(
        string stock,
        string into
    )
    {
        string[] given = ["thickness=" + stock, "width=3", "into=" + into];
        var (depth, thick) = (Asked.Length("mortise", "Mortise depth", given), Asked.Length("mortise", "Tenon thickness", given));
        Assert.InRange((double)depth.Ticks / thick.Ticks, 3, 5);
        Assert.Equal(Asked.Inch("1/8"), depth - Asked.Length("mortise", "Tenon length", given));
    }

    // Mission Furniture, part 2: rail 7/8 by 2, tenon 3/8 thick, 1 1/4 wide, 3/4 long.
    [Fact]
    public void A_tenon_of_three_sevenths_as_published_is_allowed()
    {
        string[] given = ["thickness=7/8", "width=2", "into=1 3/4", "cutter=3/8", "edge=3/8", "length=3/4"];
        var answer = Asked.Answer("mortise", given);
        Assert.Equal(Asked.Inch("1 1/4"), Asked.Length("mortise", "Tenon width", given));
        Assert.Equal(Asked.Inch("1/4"), Asked.Length("mortise", "Shoulder on each face", given));
        Assert.DoesNotContain(answer.Verdicts, verdict => verdict.Severity == Severity.Fails);
    }

    // Handwork in Wood, no. 31.
    [Fact]
    public void A_through_tenon_is_at_least_as_long_as_the_piece_is_thick()
    {
        string[] given = ["thickness=3/4", "width=3", "into=2 1/2", "kind=through"];
        Assert.True(Asked.Length("mortise", "Tenon length", given) >= Asked.Inch("2 1/2"));
        Assert.Contains(Asked.Answer("mortise", [.. given, "length=2"]).Verdicts, verdict => verdict.Severity == Severity.Fails);
    }

    [Fact]
    public void A_rail_is_as_long_as_its_shoulders_stand_apart_and_both_tenons()
    {
        string[] given = ["thickness=3/4", "width=2 1/2", "into=2 1/2", "between=12", "length=1 1/4"];
        Assert.Equal(Asked.Inch("14 1/2"), Asked.Length("mortise", "Rail length with both tenons", given));
        Assert.Equal(Asked.Inch("14 1/2"), Assert.Single(Asked.Answer("mortise", given).Parts).Length);
    }

    [
        Theory,
        InlineData("cutter", "thickness=3/4", "width=3", "into=2", "cutter=3/4"),
        InlineData("into", "thickness=3/4", "width=3", "into=3/8"),
        InlineData("length", "thickness=3/4", "width=3", "into=2", "length=2"),
        InlineData("edge", "thickness=3/4", "width=3", "into=2", "edge=1 1/2"),
        InlineData("groove", "thickness=3/4", "width=3/4", "into=2", "kind=haunched", "groove=3/8")
    ]
    public void What_cannot_be_cut_is_refused(string key, params string[] given) =>
        Assert.Equal(key, Assert.Single(Asked.Run("mortise", given).Faults).Field);

    [Fact]
    public void A_tenon_entered_again_gives_the_same_mortise()
    {
        string[] given = ["thickness=7/8", "width=3", "into=2"];
        var length = Asked.Length("mortise", "Tenon length", given);
        string[] again = [.. given, "cutter=5/16", "length=" + LengthFormat.Exact(length, LengthUnit.Inch)];
        Assert.Equal(Asked.Length("mortise", "Mortise depth", given), Asked.Length("mortise", "Mortise depth", again));
    }
}
