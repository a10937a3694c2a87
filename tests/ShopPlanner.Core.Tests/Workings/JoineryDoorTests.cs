using System.Globalization;
using CsCheck;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Doors against worked examples of the trade and by their geometry.</summary>
public sealed class JoineryDoorTests
{
    // Sixty-fourths of an inch or tenths of a millimetre: the steps that people set.
    private static readonly Gen<Length> Step = Gen.Bool.Select(isInch =>
        Length.FromTicks(isInch ? Length.TicksPerInch / 64 : Length.TicksPerMillimetre / 10)
    );

    // An opening, what is kept free at each side and between, and how many share the rest.
    private static readonly Gen<(Length Opening, Length Edge, Length Between, int Count)> Openings =
        from step in Step
        from count in Gen.Int[1, 9]
        from edge in Gen.Int[0, 500]
        from between in Gen.Int[0, 500]
        from rest in Gen.Int[count, 20_000]
        select (step * ((edge * 2) + (between * (count - 1)) + rest), step * edge, step * between, count);

    private static readonly Gen<(Length Width, Length Stile, Length Groove, Length Room)> Frames =
        from step in Step
        from stile in Gen.Int[3, 1000]
        from inside in Gen.Int[1, 20_000]
        from groove in Gen.Int[2, stile - 1]
        from room in Gen.Int[1, groove - 1]
        select (step * ((stile * 2) + inside), step * stile, step * groove, step * room);

    public static TheoryData<string, string, string, string> Geometry() =>
        new()
        {
            { "Rail length", "11 1/4", "15 − 2 × 2 1/4 + 2 × 3/8", "Geometry of a cope-and-stick frame" },
            { "Panel width", "11 1/8", "10 1/2 + 2 × 3/8 − 2 × 1/16", "Geometry; 1/16 in at each side across the grain" },
            { "Panel height", "20 3/16", "19 1/2 + 2 × 3/8 − 2 × 1/32", "Geometry; 1/32 in at each end along the grain" },
            { "Stile length", "24", "as high as the door", "Geometry: stiles run through" },
            { "Door width", "15", "no gap", "Geometry" },
            { "Door height", "24", "no gap", "Geometry" },
            { "Stiles cut at", "24 1/2", "24 + 1/2", "Geometry" },
            { "Rails cut at", "11 3/4", "11 1/4 + 1/2", "Geometry" },
            { "Panel cut, across", "11 5/8", "11 1/8 + 1/2", "Geometry" },
            { "Panel cut, along", "20 11/16", "20 3/16 + 1/2", "Geometry" },
            { "Panel's edge in the groove", "5/16", "3/8 − 1/16", "Geometry" },
        };

    [Theory]
    [MemberData(nameof(Geometry))]
    public void A_door_of_15_by_24_in(string result, string expected, string how, string source)
    {
        string[] door =
        [
            "opening-width=15",
            "opening-height=24",
            "gap=0",
            "stile=2 1/4",
            "groove=3/8",
            "clearance=1/16",
            "clearance-along=1/32",
            "oversize=1/2",
        ];
        Assert.True(Asked.Inch(expected) == Asked.Length("door", result, door), $"{source}: {how}");
    }

    [Theory]
    [InlineData("304", "2", "4", "148", "a trade forum: 2 mm at each side, 4 mm in the middle")]
    [InlineData("304", "1.5", "3", "149", "the same with 1.5 and 3 mm, by arithmetic")]
    public void A_pair_of_doors_on_a_case_of_304_mm(string width, string reveal, string gap, string door, string source)
    {
        var outcome = Asked.Run(
            LengthUnit.Millimetre,
            "door",
            "opening-width=" + width,
            "opening-height=700",
            "leaves=2",
            "gap=" + reveal,
            "middle=" + gap,
            "stile=50",
            "clearance=1"
        );
        Assert.True(Mm(door) == ((Working<Length>)outcome.Answer!.Results[0]).Value, source);
        // The same as doors on the face of sides of 18 mm, which they cover but for the reveal.
        var (opening, overlay) = (Mm(width) - Mm("36"), Mm("18") - Mm(reveal));
        Assert.Equal(
            Mm(door),
            DoorSizes.Overlay(Given(opening), Given(Mm("700")), 2, Given(overlay), Given(Mm(gap))).Width.Value
        );
    }

    /// <summary>Oracle: trade forum, 3/32 in gaps: a single door is 3/16 in, a pair 9/32 in less than the opening.</summary>
    [Theory]
    [InlineData("1", "3/16")]
    [InlineData("2", "9/32")]
    public void Inset_doors_with_gaps_of_three_thirty_seconds(string leaves, string less)
    {
        var width = Asked.Length("door", "Door width", "opening-width=24", "opening-height=30", "leaves=" + leaves, "gap=3/32");
        Assert.Equal(Asked.Inch("24") - Asked.Inch(less), width * long.Parse(leaves, CultureInfo.InvariantCulture));
    }

    /// <summary>Oracle: a trade article: five fronts in 800 mm with five gaps of 3 mm are 157 mm each. One of its gaps is at the
    /// ends.</summary>
    [Fact]
    public void Five_drawer_fronts_in_800_mm()
    {
        var fronts = EqualFronts.Of("Front", Given(Mm("800")), 5, Given(Mm("1.5")), Given(Mm("3")));
        Assert.Equal(Mm("157"), fronts.Each.Value);
        Assert.Equal([.. new[] { "1.5", "161.5", "321.5", "481.5", "641.5" }.Select(Mm)], fronts.Places);
    }

    /// <summary>Oracle: by arithmetic, a case of 24 in of 23/32 in plywood is 22 9/16 in wide inside; the door that lies over its
    /// edges is
    /// as wide as the case.</summary>
    [Fact]
    public void A_door_over_the_edges_of_a_plywood_case() =>
        Assert.Equal(
            Asked.Inch("24"),
            Asked.Length("door", "Door width", "opening-width=22 9/16", "opening-height=30", "fit=overlay", "overlay=23/32")
        );

    /// <summary>Oracle: Wood Handbook coefficient of yellow-poplar, 14 1/2 in built at 8 %, worst 11 %: 0.1257 in.</summary>
    [Fact]
    public void A_panel_of_yellow_poplar_grows_and_wants_a_sixteenth_at_each_side()
    {
        string[] given = ["opening-width=18 3/8", "opening-height=30", "gap=0", "species=yellow-poplar", "groove=3/8"];
        Assert.Equal(Asked.Inch("14 1/2"), Asked.Length("door", "Panel width", given));
        Assert.Equal(0.1257, Asked.Number("door", "Change in the panel's width", given), 0.0001);
        Assert.Contains(Asked.Answer("door", given).Verdicts, verdict => verdict.Severity == Severity.Fails);
        Assert.DoesNotContain(
            Asked.Answer("door", [.. given, "clearance=5/64"]).Verdicts,
            verdict => verdict.Severity == Severity.Fails
        );
    }

    [Fact]
    public void Doors_and_gaps_fill_the_opening_to_the_tick() =>
        Openings
            .Where(one => one.Count <= 2)
            .Check(
                one => one.Opening > (one.Edge * 2) + (one.Between * (one.Count - 1)),
                one =>
                {
                    var (opening, gap, middle, leaves) = one;
                    var sizes = DoorSizes.Inset(Given(opening), Given(opening), leaves, Given(gap), Given(middle));
                    Assert.Equal(opening, (sizes.Width.Value * leaves) + (gap * 2) + (sizes.Middle?.Value ?? Length.Zero));
                    Assert.Equal(opening, sizes.Height.Value + (gap * 2));
                    if (sizes.Middle is { } between)
                        Assert.Equal(middle + sizes.Rest, between.Value);
                    Assert.InRange(sizes.Rest.Ticks, 0, leaves - 1);
                }
            );

    [Fact]
    public void Doors_on_the_face_cover_it_to_the_tick() =>
        Openings
            .Where(one => one.Count <= 2)
            .Check(
                one => one.Opening + (one.Edge * 2) > one.Between * (one.Count - 1),
                one =>
                {
                    var (opening, overlay, gap, leaves) = one;
                    var sizes = DoorSizes.Overlay(Given(opening), Given(opening), leaves, Given(overlay), Given(gap));
                    Assert.Equal(opening + (overlay * 2), (sizes.Width.Value * leaves) + (sizes.Middle?.Value ?? Length.Zero));
                    Assert.Equal(opening + (overlay * 2), sizes.Height.Value);
                }
            );

    [Fact]
    public void Fronts_and_gaps_fill_the_opening_and_no_gap_is_off_by_more_than_their_rest() =>
        Openings.Check(
            one => one.Opening - (one.Edge * 2) - (one.Between * (one.Count - 1)) >= Length.FromTicks(one.Count),
            one =>
            {
                var (opening, edge, between, count) = one;
                var fronts = EqualFronts.Of("Front", Given(opening), count, Given(edge), Given(between));
                Assert.Equal(edge, fronts.Places[0]);
                Assert.Equal(opening - edge, fronts.Places[^1] + fronts.Each.Value + (count == 1 ? fronts.Rest : Length.Zero));
                Assert.InRange(fronts.Rest.Ticks, 0, count - 1);
                foreach (var (near, next) in fronts.Places.Zip(fronts.Places.Skip(1)))
                    Assert.InRange((next - near - fronts.Each.Value - between).Ticks, 0, 2);
            }
        );

    [Fact]
    public void Rails_panels_and_stiles_fill_the_door() =>
        Frames.Check(
            one => one.Stile * 2 < one.Width && one.Groove < one.Stile && one.Room < one.Groove,
            one =>
            {
                var (width, stile, groove, room) = one;
                var parts = FrameDoor.Of(
                    Given(width),
                    Given(width),
                    Given(stile),
                    Given(stile),
                    Given(groove),
                    Given(room),
                    Given(room)
                );
                Assert.Equal(width, parts.Rail.Value + (stile * 2) - (groove * 2));
                Assert.Equal(width, parts.PanelWidth.Value + (room * 2) + ((stile - groove) * 2));
                Assert.Equal(parts.PanelWidth.Value, parts.PanelHeight.Value);
                Assert.Equal(parts.Rail.Value, parts.PanelWidth.Value + (room * 2));
            }
        );

    [Theory]
    [InlineData("1", 2, 2, 1)]
    [InlineData("2", 4, 4, 2)]
    public void Parts_are_proposed_with_what_is_cut_long(string leaves, int stiles, int rails, int panels)
    {
        var answer = Asked.Answer(
            "door",
            "opening-width=30",
            "opening-height=30",
            "leaves=" + leaves,
            "oversize=3/4",
            "thickness=13/16"
        );
        Assert.Equal([stiles, rails, panels], answer.Parts.Select(part => part.Quantity));
        Assert.All(answer.Parts, part => Assert.Equal(Asked.Inch("3/4"), part.CutLongBy));
        Assert.Equal(Asked.Inch("3/4"), answer.Parts[2].CutWideBy);
        Assert.Equal(Length.Zero, answer.Parts[0].CutWideBy);
        Assert.Equal(Asked.Inch("13/16"), answer.Parts[0].Thickness);
        Assert.Contains(Cautions.GrooveWithoutGuard, answer.Cautions);
    }

    [Theory]
    [InlineData("1/16", 5)]
    [InlineData("3/32", 8)]
    [InlineData("1/8", 11)]
    [InlineData("0", 0)]
    public void Gaps_are_told_in_playing_cards_marked_as_common_practice(string gap, int cards)
    {
        var shims = Shims.Of(Given(Asked.Inch(gap)), Given(Asked.Inch("0.0115")));
        Assert.Equal(cards, shims.Count.Value);
        Assert.Equal(Certainty.CommonPractice, shims.Count.Source.Certainty);
        Assert.InRange(Math.Abs((shims.Thickness.Value - Asked.Inch(gap)).Ticks), 0, Asked.Inch("0.0115").Ticks / 2);
    }

    [Fact]
    public void A_panel_that_can_slip_out_at_one_side_fails() =>
        Assert.Contains(
            Asked.Answer("door", "opening-width=15", "opening-height=24", "groove=1/4", "clearance=1/8").Verdicts,
            verdict => verdict.Severity == Severity.Fails && verdict.Text.Contains("slips out", StringComparison.Ordinal)
        );

    [Fact]
    public void The_most_severe_verdict_comes_first_and_lengths_are_told_in_the_unit_asked_for()
    {
        var answer = Asked
            .Run(LengthUnit.Millimetre, "door", "opening-width=700", "opening-height=900", "clearance=5", "groove=9")
            .Answer!;
        Assert.Equal(Severity.Fails, answer.Verdicts[0].Severity);
        Assert.All(answer.Verdicts, verdict => Assert.DoesNotContain("″", verdict.Text));
    }

    private static Length Mm(string text) => LengthText.Parse(text, LengthUnit.Millimetre).Value;

    private static Working<Length> Given(Length length) => Working.Given("given", length);
}
