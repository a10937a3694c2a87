using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Fastened tops by the Wood Handbook's coefficients.</summary>
public sealed class TopTests
{
    // Coefficients of the Wood Handbook, Table 13-5; travel is distance × coefficient × change of moisture.
    [
        Theory,
        InlineData("oak-red", "flat", "36", "center", 3, 2, 0.199, 0.133, 0.496),
        InlineData("walnut-black", "flat", "42", "center", 4, 2, 0.230, 0.115, 0.509),
        InlineData("cherry-black", "flat", "24", "edge", 3, 2, 0.179, 0.119, 0.462),
        InlineData("oak-white", "quarter", "40", "center", 3, 2, 0.108, 0.072, 0.344)
    ]
    public void Travel_and_slot_for_a_number_8_screw(
        string species,
        string sawn,
        string width,
        string fixedAt,
        int swell,
        int shrink,
        double outward,
        double inward,
        double slot
    )
    {
        string[] given =
        [
            "species=" + species,
            "sawn=" + sawn,
            "width=" + width,
            "length=60",
            "overhang=0",
            "fixed=" + fixedAt,
            $"swell={swell}",
            $"shrink={shrink}",
        ];
        Assert.Equal(outward, Asked.Number("top-fastening", "Travel outward", given), 0.001);
        Assert.Equal(inward, Asked.Number("top-fastening", "Travel inward", given), 0.001);
        Assert.Equal(slot, Asked.Number("top-fastening", "Slot, at least long", given), 0.001);
        var cut = Asked.Length("top-fastening", "Cut the slot", given);
        Assert.InRange(cut - Asked.Length("top-fastening", "Slot, at least long", given), Length.Zero, Asked.Inch("1/16"));
    }

    [Fact]
    public void Red_oak_of_36_in_takes_a_slot_of_half_an_inch() =>
        Assert.Equal(Asked.Inch("1/2"), Asked.Length("top-fastening", "Cut the slot", "width=36", "length=60", "overhang=0"));

    // A trade magazine: the first about 2 in from the corner, about 20 in apart.
    [Theory, InlineData("60", 4), InlineData("44", 3), InlineData("24", 2), InlineData("8", 1)]
    public void Fasteners_begin_2_in_from_the_corner_and_are_at_most_20_in_apart(string length, int count)
    {
        var places = (
            (Working<ImmutableArray<Length>>)
                Asked.Result("top-fastening", "Along each long rail, from its end", "width=30", "overhang=0", "length=" + length)
        ).Value;
        Assert.Equal(count, places.Length);
        Assert.All(places.Zip(places.Skip(1)), pair => Assert.True(pair.Second - pair.First <= Asked.Inch("20")));
        if (count > 1)
            Assert.Equal((Asked.Inch("2"), Asked.Inch(length) - Asked.Inch("2")), (places[0], places[^1]));
    }

    // The same magazine: figure-eights to about 18 in wide; a clip's groove lower by 1/32.
    [Theory, InlineData("18", false), InlineData("24", true)]
    public void Figure_eights_are_for_narrow_tops(string width, bool isRefused) =>
        Assert.Equal(
            isRefused,
            Asked
                .Answer("top-fastening", "width=" + width, "length=30", "fastener=eights")
                .Verdicts.Any(verdict => verdict.Severity == Severity.Fails)
        );

    [Fact]
    public void A_clips_groove_is_a_thirty_second_lower_than_its_offset() =>
        Assert.Equal(
            Asked.Inch("15/32"),
            Asked.Length(
                "top-fastening",
                "Groove from the top of the rail",
                "width=30",
                "length=40",
                "fastener=clips",
                "offset=7/16"
            )
        );

    [Fact]
    public void Rings_that_are_not_known_move_no_less_than_either_kind()
    {
        double Out(string sawn) => Asked.Number("top-fastening", "Travel outward", "width=30", "length=40", "sawn=" + sawn);
        Assert.True(Out("mixed") >= Math.Max(Out("flat"), Out("quarter")));
    }

    [Fact]
    public void Too_much_overhang_leaves_no_frame() =>
        Assert.Equal("overhang", Assert.Single(Asked.Run("top-fastening", "width=20", "length=40", "overhang=10").Faults).Field);
}
