using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Dadoes, rabbets and laps beside old rules and geometry.</summary>
public sealed class DadoTests
{
    [Fact]
    public void A_three_quarter_cutter_leaves_a_23_32_sheet_a_thirty_second_loose_geometry()
    {
        string[] given = ["thickness=23/32", "into=3/4", "cutter=3/4"];
        Assert.Equal(Asked.Inch("1/32"), Asked.Length("dado", "Play with this cutter", given));
        Assert.Equal(Asked.Inch("23/32"), Asked.Length("dado", "Width of the cut", given));
        Assert.Contains(Asked.Answer("dado", given).Verdicts, verdict => verdict.Severity == Severity.Watch);
    }

    [
        Theory,
        InlineData("dado", "3/4", "3/16", "training-school rules: a quarter"),
        InlineData("dado", "1", "1/4", "training-school rules: a quarter"),
        InlineData("rabbet", "3/4", "3/8", "common practice: half"),
        InlineData("lap", "3/4", "3/8", "Handwork in Wood: half"),
        InlineData("end-lap", "1 1/2", "3/4", "Handwork in Wood: half")
    ]
    public void Depth_by_joint(string joint, string into, string depth, string source) =>
        Assert.True(
            Asked.Inch(depth) == Asked.Length("dado", "Depth of the cut", "joint=" + joint, "thickness=3/4", "into=" + into),
            source
        );

    // Mission Furniture, part 3: shelves let in 1/4 into sides of 3/4, a third; one more sixteenth is too deep.
    [Theory, InlineData("1/4", false), InlineData("5/16", true)]
    public void A_third_is_the_deepest_dado(string depth, bool isTold) =>
        Assert.Equal(
            isTold,
            Asked
                .Answer("dado", "thickness=3/4", "into=3/4", "depth=" + depth)
                .Verdicts.Any(verdict => verdict.Text.Contains("deeper than a third", StringComparison.Ordinal))
        );

    [Theory, InlineData("30", "1/4", "30 1/2"), InlineData("22 9/16", "3/16", "22 15/16")]
    public void A_shelf_reaches_into_both_dadoes_geometry(string inside, string depth, string shelf) =>
        Assert.Equal(
            Asked.Inch(shelf),
            Asked.Length("dado", "Shelf length", "thickness=23/32", "into=3/4", "inside=" + inside, "depth=" + depth)
        );

    // Handwork in Wood, no. 16: end laps 1/16 in long, trimmed.
    [Fact]
    public void An_end_lap_is_a_sixteenth_long_to_trim() =>
        Assert.Equal(
            Asked.Inch("2 9/16"),
            Asked.Length("dado", "Width of the cut", "joint=end-lap", "thickness=2 1/2", "into=3/4")
        );

    [Theory, InlineData("3/8", 2, "11/32"), InlineData("1/2", 2, "7/32"), InlineData("1/4", 3, "15/32")]
    public void A_narrow_cutter_takes_several_passes_that_end_at_the_width(string cutter, int passes, string shift)
    {
        string[] given = ["thickness=23/32", "into=3/4", "cutter=" + cutter];
        Assert.Equal(passes, Asked.Number("dado", "Passes", given));
        Assert.Equal(Asked.Inch(shift), Asked.Length("dado", "Fence moves, first pass to last", given));
        Assert.Equal(Asked.Inch("23/32"), Asked.Inch(cutter) + Asked.Inch(shift));
    }

    [Fact]
    public void Eighteen_millimeters_fit_eighteen_millimeters()
    {
        var outcome = Asked.Run(LengthUnit.Millimetre, "dado", "thickness=18", "into=18", "inside=600", "depth=6");
        Assert.Equal(18, outcome.Answer!.Results[0].Figure.Number(LengthUnit.Millimetre));
        Assert.Equal(612, outcome.Answer.Results[^1].Figure.Number(LengthUnit.Millimetre));
    }

    [Fact]
    public void A_cut_through_the_piece_is_refused() =>
        Assert.Equal("depth", Assert.Single(Asked.Run("dado", "thickness=3/4", "into=3/4", "depth=3/4").Faults).Field);
}
