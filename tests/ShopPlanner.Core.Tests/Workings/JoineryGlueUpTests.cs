using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Glue-ups against worked figures and by their geometry.</summary>
public sealed class JoineryGlueUpTests
{
    /// <summary>Oracle: by arithmetic, 100 psi on 36 × 3/4 in; five clamps of 600 lb.</summary>
    [Fact]
    public void A_joint_of_36_in_by_three_quarters_at_100_psi_wants_2700_pounds_and_five_clamps_of_600()
    {
        var total = GlueUp.Total(Psi(100), Given("36"), Given("3/4"));
        Assert.Equal(2700, total.Figure.Number(LengthUnit.Inch)!.Value, 0.01);
        var each = Working.Given("each", QuantityKind.Force.ToMetric(600, LengthUnit.Inch), QuantityKind.Force, 0);
        Assert.Equal(5, GlueUp.ClampsByForce(total, each).Value);
        Assert.Equal(
            540,
            GlueUp
                .Force(Psi(100), Given("36"), Given("3/4"), GlueUp.ClampsByForce(total, each))
                .Figure.Number(LengthUnit.Inch)!
                .Value,
            0.01
        );
    }

    /// <summary>Oracle: geometry of pressure that spreads at 45°: 4 in of board and 1 in of caul, 10 in apart, 4 along 36
    /// in.</summary>
    [Fact]
    public void A_4_in_board_and_a_1_in_caul_put_clamps_10_in_apart_and_4_along_36_in()
    {
        var spacing = GlueUp.Spacing(Given("4"), Given("1"));
        Assert.Equal(Asked.Inch("10"), spacing.Value);
        var clamps = GlueUp.Clamps(Given("36"), spacing);
        Assert.Equal(4, clamps.Value);
        Assert.Equal(
            [.. new[] { "4 1/2", "13 1/2", "22 1/2", "31 1/2" }.Select(Asked.Inch)],
            GlueUp.Places(Given("36"), clamps).Value
        );
    }

    public static TheoryData<string, double, double, Certainty, string> Pressures() =>
        new()
        {
            { "softwood", 100, 150, Certainty.Quoted, "a glue maker quoted on trade pages" },
            { "hardwood", 175, 250, Certainty.Quoted, "a glue maker quoted on trade pages" },
            { "pine-eastern-white", 100, 150, Certainty.Quoted, "softwood" },
            { "oak-red", 175, 250, Certainty.Quoted, "hardwood" },
        };

    [Theory]
    [MemberData(nameof(Pressures))]
    public void Pressure_by_wood(string species, double least, double most, Certainty certainty, string source)
    {
        string[] given = ["width=20", "length=40", "species=" + species];
        Assert.Equal(least, Asked.Number("glue-up", "Lowest pressure", given), 0.01);
        Assert.Equal(most, Asked.Number("glue-up", "Highest pressure", given), 0.01);
        Assert.True(certainty == Asked.Result("glue-up", "Lowest pressure", given).Source.Certainty, source);
    }

    [Fact]
    public void A_light_hardwood_is_pressed_between_them_marked_as_common_practice() =>
        Assert.Equal(
            Certainty.CommonPractice,
            Asked.Result("glue-up", "Lowest pressure", "width=20", "length=40", "species=yellow-poplar").Source.Certainty
        );

    [Fact]
    public void Force_grows_with_thickness_and_length_and_is_shared_by_the_clamps() =>
        Gen.Select(Gen.Int[1, 40], Gen.Int[1, 40], Gen.Int[1, 9])
            .Sample(
                (length, thick, clamps) =>
                {
                    double Force(int l, int t, int n) =>
                        GlueUp.Force(Psi(150), Given($"{l}"), Given($"{t}"), Working.Given("n", n, QuantityKind.Bare, 0)).Value;
                    var plain = Force(length, thick, clamps);
                    Assert.Equal(plain * 2, Force(length * 2, thick, clamps), plain * 1e-9);
                    Assert.Equal(plain * 3, Force(length, thick * 3, clamps), plain * 1e-9);
                    Assert.Equal(plain / 2, Force(length, thick, clamps * 2), plain * 1e-9);
                }
            );

    // A board, and what a joint takes of it.
    private static readonly Gen<(long Board, long Lost)> Boards =
        from lost in Gen.Long[0, 900]
        from board in Gen.Long[Math.Max(1000, (lost * 2) + 1), 60_000]
        select (board, lost);

    // Along a joint, so far apart that the clamps can be counted.
    private static readonly Gen<(Length Joint, Length Spacing)> Clamped =
        from joint in Gen.Long[100, 700_000]
        from spacing in Gen.Long[Math.Max(100, (joint + 4999) / 5000), 700_000]
        select (Length.FromTicks(joint), Length.FromTicks(spacing));

    private static readonly Gen<Length> Any = Gen.Long[100, 700_000].Select(Length.FromTicks);

    [Fact]
    public void Strips_reach_the_width_none_is_wider_than_its_board_and_none_too_many() =>
        Gen.Select(Any, Boards, Gen.Enum<LengthUnit>())
            .Check(
                one => one.Item2.Board > one.Item2.Lost * 2,
                one =>
                {
                    var (width, (board, lost), unit) = one;
                    var (wide, usable, joint) = (Given(width), Given(Length.FromTicks(board)), Given(Length.FromTicks(lost)));
                    var strips = GlueUp.Strips(wide, usable, joint);
                    var strip = GlueUp.StripWidth(wide, strips, joint, unit, usable.Value);
                    Assert.True(GlueUp.Glued(strip, strips, joint).Value >= width);
                    Assert.True(strip.Value <= usable.Value);
                    if (strips.Value > 1)
                        Assert.True((board * (strips.Value - 1)) - (lost * (strips.Value - 2)) < width.Ticks);
                }
            );

    [Fact]
    public void Clamps_stand_no_farther_apart_than_they_may_and_the_ends_within_half_of_that() =>
        Clamped.Check(
            one => one.Joint.Ticks <= one.Spacing.Ticks * 5000,
            one =>
            {
                var (length, spacing) = one;
                var clamps = GlueUp.Clamps(Given(length), Given(spacing));
                var places = GlueUp.Places(Given(length), clamps).Value;
                Assert.Equal(clamps.Value, places.Length);
                Assert.True(places[0] * 2 <= spacing && (length - places[^1]) * 2 <= spacing + Length.FromTicks(2));
                Assert.All(
                    places.Zip(places.Skip(1)),
                    pair => Assert.InRange((pair.Second - pair.First).Ticks, 0, spacing.Ticks + 1)
                );
            }
        );

    [Theory]
    [InlineData("butt", 0)]
    [InlineData("tongue", 2)]
    [InlineData("spline", 4)]
    public void Glue_is_the_joints_area_by_the_labels_rate(string joints, int cheeks)
    {
        // By geometry: joints of 40 1/2 in, 3/4 in thick, cheeks of 1/4 in; a gallon of 231 in³ for 231 ft² is 1/144 in.
        string[] given = ["width=20", "length=40", "joints=" + joints, "spread=231 ft²/gal"];
        var lines = Asked.Number("glue-up", "Strips", given) - 1;
        var area = lines * 40.5 * (0.75 + (cheeks * 0.25));
        Assert.Equal(area / 144, Asked.Number("glue-up", "Glued area", given), 1e-6);
        Assert.Equal(area / 144 / 231 * 128, Asked.Number("glue-up", "Glue", given), 1e-6);
    }

    /// <summary>A strip as it is ripped holds what jointing takes; the panel holds what is trimmed.</summary>
    [Fact]
    public void Allowances_add_up()
    {
        string[] given = ["width=20", "length=40", "jointing=1/16", "oversize=1/2", "board=5 1/2"];
        var (strip, rip) = (
            Asked.Length("glue-up", "Width of each jointed strip", given),
            Asked.Length("glue-up", "Rip each strip at", given)
        );
        Assert.Equal(Asked.Inch("5 1/8"), strip);
        Assert.Equal(strip + Asked.Inch("1/8"), rip);
        Assert.Equal(Asked.Inch("1/2"), Asked.Length("glue-up", "Trimmed off the width", given));
        var part = Assert.Single(Asked.Answer("glue-up", given).Parts);
        Assert.Equal((4, Asked.Inch("40"), Asked.Inch("1/2")), (part.Quantity, part.Length, part.CutLongBy));
        Assert.Equal(rip, part.Width + part.CutWideBy);
    }

    [Fact]
    public void Where_one_board_is_wide_enough_nothing_is_glued()
    {
        var answer = Asked.Answer("glue-up", "width=4", "length=40");
        Assert.DoesNotContain(answer.Results, result => result.Name is "Clamps" or "Glue");
        Assert.Contains(answer.Verdicts, verdict => verdict.Text.Contains("nothing to glue", StringComparison.Ordinal));
    }

    [Fact]
    public void Too_few_clamps_fail()
    {
        string[] given = ["width=20", "length=47 1/2", "board=4 1/2"];
        Assert.Equal(5, Asked.Number("glue-up", "Clamps", given));
        var verdict = Asked.Answer("glue-up", [.. given, "clamps=3"]).Verdicts[0];
        Assert.Equal(Severity.Fails, verdict.Severity);
        // Wider cauls spread the pressure of fewer clamps: 48 ÷ (2 × 3) = 8 in, less the strip of 4 7/64 in.
        Assert.Equal(3, Asked.Number("glue-up", "Clamps", [.. given, "caul=3 57/64"]));
    }

    [Fact]
    public void Weak_clamps_are_more()
    {
        // 100 psi on 40 1/2 × 3/4 in is 3037.5 lb: eleven clamps of 300 lb.
        Assert.Equal(11, Asked.Number("glue-up", "Clamps", "width=20", "length=40", "clamp-force=300 lbf"));
    }

    [Theory]
    [InlineData("softwood", false)]
    [InlineData("hardwood", true)]
    public void More_force_than_many_clamps_have_is_said(string species, bool said) =>
        Assert.Equal(
            said,
            Asked
                .Answer("glue-up", "width=20", "length=40", "species=" + species)
                .Verdicts.Any(verdict => verdict.Text.Contains("more than many clamps give", StringComparison.Ordinal))
        );

    public static TheoryData<string, string, string> Refused() =>
        new()
        {
            { "door", "opening-width", "opening-width=480 opening-height=24" },
            { "door", "gap", "opening-width=1 opening-height=24 gap=1/2" },
            { "door", "gap", "opening-width=10 opening-height=24 gap=20" },
            { "door", "gap", "opening-width=24 opening-height=1 gap=1/2" },
            { "door", "middle", "opening-width=1 opening-height=24 gap=1/8 middle=15/16 leaves=2" },
            { "door", "stile", "opening-width=6 opening-height=24 stile=3" },
            { "door", "rail", "opening-width=15 opening-height=10 rail=5" },
            { "door", "groove", "opening-width=15 opening-height=24 stile=1 groove=1" },
            { "door", "clearance", "opening-width=15 opening-height=24 clearance=3/8" },
            { "door", "clearance-along", "opening-width=15 opening-height=24 clearance-along=3/8" },
            { "door", "panel", "opening-width=15 opening-height=24 panel=3/4" },
            { "door", "leaves", "opening-width=15 opening-height=24 leaves=3" },
            { "door", "opening-height", "opening-width=15" },
            { "door", "colour", "opening-width=15 opening-height=24 colour=red" },
            { "door", "species", "opening-width=15 opening-height=24 species=cheese" },
            { "groove", "groove", "stock=3/4 groove=3/4" },
            { "groove", "panel", "stock=3/4 panel=3/4" },
            { "groove", "stock", "stock=-1" },
            { "groove", "cutter", "stock=3/4 groove=1/8 cutter=1/4" },
            { "groove", "fit", "stock=3/4 groove=1/8 fit=1/8" },
            { "groove", "practice", "stock=3/4 practice=-1" },
            { "drawer", "opening-depth", "opening-width=15 opening-height=6 opening-depth=8" },
            { "drawer", "groove", "opening-width=15 opening-height=6 opening-depth=20 groove=1/2" },
            { "drawer", "play", "opening-width=15 opening-height=6 opening-depth=20 groove=1/8 play=1/4" },
            { "drawer", "slide-clearance", "opening-width=2 opening-height=6 opening-depth=20" },
            { "drawer", "height-clearance", "opening-width=15 opening-height=1 opening-depth=20" },
            { "drawer", "bottom", "opening-width=15 opening-height=1-1/4 opening-depth=20" },
            { "drawer", "joint", "opening-width=15 opening-height=6 opening-depth=20 joint=nails" },
            { "drawer", "depth-clearance", "opening-width=15 opening-height=6 opening-depth=10 depth-clearance=11" },
            { "glue-up", "board", "width=20 length=40 board=1/4 joints=tongue" },
            { "glue-up", "board", "width=20 length=40 board=1/2" },
            { "glue-up", "tongue", "width=20 length=40 board=2 tongue=1 joints=spline" },
            { "glue-up", "width", "width=0 length=40" },
            { "glue-up", "length", "width=20 length=200" },
            { "glue-up", "spread", "width=20 length=40 spread=a lot" },
        };

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_cannot_be_is_refused_and_its_key_named(string form, string key, string given)
    {
        var outcome = Asked.Run(form, given.Replace("a lot", "a_lot", StringComparison.Ordinal).Split(' '));
        Assert.Null(outcome.Answer);
        var fault = Assert.Single(outcome.Faults);
        Assert.Equal(key, fault.Field);
        Assert.True(
            fault.Message.Length > 20 && (key is "colour" || fault.Value.Length > 0 || key == "opening-height"),
            fault.ToString()
        );
    }

    private static Working<double> Psi(double psi) =>
        Working.Given("p", QuantityKind.Pressure.ToMetric(psi, LengthUnit.Inch), QuantityKind.Pressure, 2);

    private static Working<Length> Given(string inches) => Given(Asked.Inch(inches));

    private static Working<Length> Given(Length length) => Working.Given("given", length);
}
