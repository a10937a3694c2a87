using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Butt hinges and overlays of cup hinges beside published tables.</summary>
public sealed class ButtHingeTests
{
    // Trade pages: one for each 30 in; Radford's Cyclopedia: three over 7 ft high or 4 ft wide.
    [
        Theory,
        InlineData("30", "16", 2),
        InlineData("60", "24", 2),
        InlineData("61", "24", 3),
        InlineData("85", "30", 3),
        InlineData("90", "30", 3),
        InlineData("91", "30", 4),
        InlineData("40", "49", 3)
    ]
    public void Count_by_height_and_width(string height, string width, int count) =>
        Assert.Equal(count, Asked.Number("butt-hinges", "Hinges", "height=" + height, "width=" + width));

    // Trade pages, by thickness and width of the door.
    [
        Theory,
        InlineData("1 3/8", "30", "3 1/2"),
        InlineData("1 3/8", "32", "3 1/2"),
        InlineData("1 3/8", "36", "4"),
        InlineData("1 3/4", "36", "4 1/2"),
        InlineData("1 3/4", "48", "5"),
        InlineData("1 3/4", "50", "6")
    ]
    public void Hinges_for_doors_of_houses(string thickness, string width, string size) =>
        Assert.Equal(
            Asked.Inch(size),
            Asked.Length("butt-hinges", "Hinge length", "height=80", "thickness=" + thickness, "width=" + width)
        );

    // Handwork in Wood: half of the knuckle in each part; Carpentry and Woodwork: about 1/16 for a 1-in box hinge.
    [Theory, InlineData("1/8", "0", "1/16"), InlineData("3/16", "0", "3/32"), InlineData("3/16", "1/16", "1/16")]
    public void A_leaf_is_let_in_by_half_of_what_the_knuckle_leaves(string knuckle, string gap, string gain) =>
        Assert.Equal(
            Asked.Inch(gain),
            Asked.Length("butt-hinges", "Recess for each leaf, deep", "height=30", "width=16", "knuckle=" + knuckle, "gap=" + gap)
        );

    // Handwork in Wood: about one hinge length from the end.
    [Fact]
    public void Furniture_hinges_sit_one_hinge_length_from_the_ends()
    {
        var places = Places("height=30", "width=16", "hinge=2");
        Assert.Equal([Asked.Inch("2"), Asked.Inch("26")], places);
    }

    // Trade pages: 5 in from the top, 10 in from the floor.
    [Fact]
    public void Hinges_of_a_house_door_sit_5_in_from_the_top_and_10_in_from_the_floor()
    {
        var places = Places("height=80", "width=30", "thickness=1 3/8");
        Assert.Equal(Asked.Inch("5"), places[0]);
        Assert.Equal(Asked.Inch("80") - Asked.Inch("10") - Asked.Inch("3 1/2"), places[^1]);
    }

    [Fact]
    public void Low_doors_get_short_hinges_that_never_crowd()
    {
        for (var height = 5; height < 60; height++)
        {
            string[] given = [$"height={height}", "width=12"];
            var (places, size) = (Places(given), Asked.Length("butt-hinges", "Hinge length", given));
            Assert.True(places[0] > Length.Zero && places[^1] + size < Length.FromInches(height));
            Assert.All(places.Zip(places.Skip(1)), pair => Assert.True(pair.Second - pair.First >= size * 2));
        }
    }

    [Theory, InlineData("gap", "gap=3/16", "knuckle=3/16"), InlineData("hinge", "hinge=6", "knuckle=1/4")]
    public void Hinges_that_do_not_fit_are_refused(string key, params string[] given) =>
        Assert.Equal(key, Assert.Single(Asked.Run("butt-hinges", [.. given, "height=20", "width=12"]).Faults).Field);

    [Fact]
    public void A_narrow_thick_door_needs_a_bevel_and_is_told_so()
    {
        // √(4² + 1.75²) − 4 = 0.366 in.
        string[] given = ["height=20", "width=4", "thickness=1 3/4", "gap=1/16"];
        Assert.Equal(0.366, Asked.Number("butt-hinges", "Gap the swinging edge needs", given), 0.001);
        Assert.Contains(
            Asked.Answer("butt-hinges", given).Verdicts,
            verdict => verdict.Text.Contains("bevel", StringComparison.Ordinal)
        );
    }

    // A hinge maker's planning table: constants 0, 3, 9.5 and 19 for full, overlay, half and inset.
    [
        Theory,
        InlineData("full", 7, -2, 24),
        InlineData("full", 5, 0, 20),
        InlineData("full", 3, 3.5, 14.5),
        InlineData("medium", 6, -2, 20),
        InlineData("half", 7, -2, 14.5),
        InlineData("half", 3, 3, 5.5)
    ]
    public void Overlays_of_a_makers_table(string arm, double edge, double plate, double overlay) =>
        Assert.Equal(
            overlay,
            Asked.Number(
                "hinge-overlay",
                "Overlay",
                "arm=" + arm,
                FormattableString.Invariant($"edge={edge}"),
                FormattableString.Invariant($"plate={plate}")
            ),
            9
        );

    [Theory, InlineData(7, 3, 0), InlineData(4, 0, 0), InlineData(3, 0, 1), InlineData(3, 3, 4)]
    public void Gaps_of_inset_doors_of_the_same_table(double edge, double plate, double gap) =>
        Assert.Equal(
            gap,
            Asked.Number(
                "hinge-overlay",
                "Gap beside the door",
                "arm=inset",
                FormattableString.Invariant($"edge={edge}"),
                FormattableString.Invariant($"plate={plate}")
            ),
            9
        );

    // A hardware maker's sheet: center 17.5 mm + edge; screws 9.5 mm farther in from memory.
    [Theory, InlineData(3, 20.5, 30), InlineData(5, 22.5, 32), InlineData(7, 24.5, 34)]
    public void Cups_and_screws_from_the_edge(double edge, double cup, double screws)
    {
        var given = FormattableString.Invariant($"edge={edge}");
        Assert.Equal((decimal)cup, Asked.Length("hinge-overlay", "Cup center from the door's edge", given).ToMillimetres());
        Assert.Equal((decimal)screws, Asked.Length("hinge-overlay", "Cup screws from the door's edge", given).ToMillimetres());
    }

    [Fact]
    public void The_plate_that_is_told_gives_the_overlay_wanted()
    {
        for (var wanted = 4; wanted <= 22; wanted++)
        {
            string[] given = ["arm=full", "edge=4", $"overlay={wanted}"];
            var plate = Asked.Number("hinge-overlay", "Plate height for it", given);
            if (plate is < -2 or > 18)
                continue;
            Assert.Equal(
                wanted,
                Asked.Number("hinge-overlay", "Overlay", "arm=full", "edge=4", FormattableString.Invariant($"plate={plate}")),
                9
            );
        }
    }

    [Fact]
    public void An_inset_plate_is_set_back_by_the_door_and_a_half_millimeter_more_than_one() =>
        Assert.Equal(
            20.5m,
            Asked.Length("hinge-overlay", "Plate set back by", "arm=inset", "plate=6", "door=19 mm").ToMillimetres()
        );

    private static ImmutableArray<Length> Places(params string[] given) =>
        ((Working<ImmutableArray<Length>>)Asked.Result("butt-hinges", "Upper ends of the hinges, from the top", given)).Value;
}
