using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Movement where one formula ends and the next begins, and its direction.</summary>
public sealed class MovementSeamTests
{
    private const string Change = "Change in width";

    public static TheoryData<string> Woods => [.. ShrinkageTable.All.Select(row => row.SpeciesId)];

    // At 6 and 14 % the Wood Handbook changes from Eq. 13-2 to Eq. 13-3: the wood does not.
    [Theory]
    [MemberData(nameof(Woods))]
    public void It_does_not_jump_where_the_formulas_change(string species)
    {
        foreach (var cut in new[] { "flat", "quarter", "mixed" })
        foreach (var (from, to) in new[] { (14.0, 6.0), (6.0, 14.0), (6.0, 10.0), (14.0, 10.0) })
        {
            var at = Moved(species, cut, from, to);
            Assert.Equal(at, Moved(species, cut, from + 0.01, to), 0.006);
            Assert.Equal(at, Moved(species, cut, from - 0.01, to), 0.006);
            Assert.Equal(at, Moved(species, cut, from, to + 0.01), 0.006);
            Assert.Equal(at, Moved(species, cut, from, to - 0.01), 0.006);
        }
    }

    // The slopes on both sides of a seam differ by less than 2 %, as Eq. 13-2 and 13-3 do for a wood of which the handbook's
    // two tables agree.
    [Theory]
    [MemberData(nameof(Woods))]
    public void The_slopes_on_both_sides_of_a_seam_agree_within_two_percent(string species)
    {
        foreach (var cut in new[] { "flat", "quarter", "mixed" })
        {
            Agree(Moved(species, cut, 14, 13.5), Moved(species, cut, 14.5, 14));
            Agree(Moved(species, cut, 6, 6.5), Moved(species, cut, 5.5, 6));
        }
    }

    [Theory]
    [MemberData(nameof(Woods))]
    public void Drier_is_narrower_and_damper_is_wider(string species)
    {
        for (var from = 0; from <= 30; from += 3)
        {
            var last = double.NegativeInfinity;
            for (var to = 0.0; to <= 32; to += 0.5)
            {
                var moved = Moved(species, "flat", from, to);
                Assert.True(moved >= last, $"{species} {from} → {to} %: {moved} after {last}");
                last = moved;
            }
        }

        for (var to = 0; to <= 30; to += 3)
        {
            var last = double.PositiveInfinity;
            for (var from = 0.0; from <= 32; from += 0.5)
            {
                var moved = Moved(species, "flat", from, to);
                Assert.True(moved <= last, $"{species} {from} → {to} %: {moved} after {last}");
                last = moved;
            }
        }
    }

    // Worked by hand with both equations for yellow-poplar of 12 in, S 8.2 %, C 0.00289: 20 → 14 % by Eq. 13-3 is 12 × −6 ÷
    // (3000 ÷ 8.196 − 30 + 20) = −0.2022 in (8.196 % is the shrinkage that stands behind the coefficient), 14 → 8 % by
    // Eq. 13-2 is 11.798 × 0.00289 × −6 = −0.2046 in.
    [Fact]
    public void Outside_six_to_fourteen_percent_each_stretch_has_its_equation() =>
        Assert.Equal(-0.4068, Asked.Number("movement", Change, "species=yellow-poplar", "width=12", "from=20", "to=8"), 0.0003);

    [Theory]
    [InlineData("mahogany-true", true)]
    [InlineData("oak-red", true)]
    [InlineData("yellow-poplar", false)]
    [InlineData("cherry-black", false)]
    public void Where_two_tables_of_the_handbook_differ_on_a_wood_it_is_said_once(string species, bool isSaid) =>
        Assert.Equal(
            isSaid ? 1 : 0,
            Asked
                .Answer("movement", "species=" + species, "width=12")
                .Verdicts.Count(verdict => verdict.Text.Contains("Two tables", StringComparison.Ordinal))
        );

    [Fact]
    public void A_panel_that_shrinks_is_held_in_its_groove_and_one_that_swells_gets_room()
    {
        var dry = Asked.Answer("movement", "width=15", "from=11", "to=6");
        Assert.DoesNotContain(dry.Results, result => result.Name.Contains("Clearance", StringComparison.Ordinal));
        // Red oak: 15 × 0.00369 × 5 = 0.277 in, and 1/8 in that stays in: up to the next sixteenth, 7/16.
        var hold = (Working<Length>)dry.Results.Single(result => result.Name == "Panel's edges in the groove, at least");
        Assert.Equal(Asked.Inch("7/16"), hold.Value);
        Assert.Contains(dry.Verdicts, verdict => verdict.Text.Contains("shrinks", StringComparison.Ordinal));
        var damp = Asked.Answer("movement", "width=15", "from=6", "to=11");
        Assert.DoesNotContain(damp.Results, result => result.Name.Contains("in the groove", StringComparison.Ordinal));
        // Half of 0.277 in is 0.138: the next thirty-second that is not less is 5/32.
        var room = (Working<Length>)damp.Results.Single(result => result.Name == "Clearance for a panel at each side");
        Assert.Equal(Asked.Inch("5/32"), room.Value);
        Assert.Contains(damp.Verdicts, verdict => verdict.Text.Contains("swells", StringComparison.Ordinal));
    }

    [Fact]
    public void A_slot_is_told_as_a_mark_of_the_rule_that_is_long_enough()
    {
        // Red oak of 36 in, 6 → 11 %: 0.664 in; the next sixteenth is 11/16.
        var slot = Asked.Result("movement", "Slot length beyond the screw, total", "width=36");
        Assert.Equal("¹¹⁄₁₆″", slot.Figure.Text(LengthUnit.Inch));
    }

    [Fact]
    public void A_door_panel_that_falls_out_in_the_driest_season_is_told()
    {
        string[] door = ["opening-width=30", "opening-height=24", "species=oak-red", "built-at=12", "groove=1/4", "dampest=12"];
        var dry = Asked.Answer("door", [.. door, "driest=5"]);
        // 25 7/8 in of panel × 0.00369 × 6 % and about 1 % more: 0.67 in, more than a groove of 1/4 in holds.
        Assert.Contains(
            dry.Verdicts,
            verdict => verdict.Severity == Severity.Fails && verdict.Text.Contains("shrinks", StringComparison.Ordinal)
        );
        Assert.Contains(dry.Results, result => result.Name == "Panel shrinks by, until the driest season");
        Assert.DoesNotContain(
            Asked.Answer("door", [.. door, "driest=12"]).Verdicts,
            verdict => verdict.Text.Contains("shrinks", StringComparison.Ordinal)
        );
    }

    private static void Agree(double a, double b) => Assert.InRange(Math.Abs(a) / Math.Abs(b), 0.98, 1.02);

    // Of 100 in, so that a tick is nothing.
    private static double Moved(string species, string cut, double from, double to) =>
        Asked.Number(
            "movement",
            Change,
            "species=" + species,
            "width=100",
            "cut=" + cut,
            "from=" + Math.Max(0, from).ToString(CultureInfo.InvariantCulture),
            "to=" + Math.Max(0, to).ToString(CultureInfo.InvariantCulture)
        );
}
