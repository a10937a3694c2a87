using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Drawer fronts and the boxes behind them.</summary>
public sealed class FrontTests
{
    private static ImmutableArray<Length> Heights(LengthUnit unit, params string[] given)
    {
        var outcome = Asked.Run(unit, "fronts", given);
        Assert.Empty(outcome.Faults);
        return ((Working<ImmutableArray<Length>>)outcome.Answer!.Results[0]).Value;
    }

    [Fact]
    public void Four_equal_fronts_on_30_in_are_7_11_32_high_geometry() =>
        Assert.All(
            Heights(LengthUnit.Inch, "height=30", "width=18", "count=4"),
            height => Assert.Equal(Asked.Inch("7 11/32"), height)
        );

    [Fact]
    public void Four_equal_fronts_on_720_mm_are_177_mm_high_geometry() =>
        Assert.All(
            Heights(LengthUnit.Millimetre, "height=720", "width=500", "count=4", "outer=1.5", "between=3"),
            height => Assert.Equal(177, height.ToMillimetres())
        );

    [Fact]
    public void Three_inset_fronts_in_24_in_with_four_gaps_of_3_32_are_7_7_8_high_geometry() =>
        Assert.All(
            Heights(LengthUnit.Inch, "fit=inset", "height=24", "width=18", "count=3", "outer=3/32", "between=3/32"),
            height => Assert.Equal(Asked.Inch("7 7/8"), height)
        );

    // A trade article: five fronts of 157 mm and five gaps of 3 mm fill 800 mm.
    [Fact]
    public void Five_fronts_of_157_mm_fill_800_mm() =>
        Assert.All(
            Heights(LengthUnit.Millimetre, "height=800", "width=500", "count=5", "outer=1.5", "between=3"),
            height => Assert.Equal(157, height.ToMillimetres())
        );

    [Fact]
    public void Fronts_that_grow_by_an_inch_share_29_3_8_geometry() =>
        Assert.Equal(
            new[] { "5 27/32", "6 27/32", "7 27/32", "8 27/32" }.Select(Asked.Inch),
            Heights(LengthUnit.Inch, "height=29 3/4", "width=18", "count=4", "outer=0", "between=1/8", "graded=step")
        );

    [Fact]
    public void Five_fronts_that_grow_by_three_quarters_fill_36_in_geometry() =>
        Assert.Equal(
            [5.55, 6.30, 7.05, 7.80, 8.55],
            Heights(LengthUnit.Inch, "height=36", "width=18", "count=5", "graded=step", "step=3/4")
                .Select(height => Math.Round((double)height.ToInches(), 3))
        );

    [Fact]
    public void Fronts_that_grow_by_a_quarter_each_share_29_3_8_geometry() =>
        Assert.Equal(
            [5.0949, 6.3686, 7.9607, 9.9509],
            Heights(LengthUnit.Inch, "height=29 3/4", "width=18", "count=4", "outer=0", "graded=ratio")
                .Select(height => Math.Round((double)height.ToInches(), 4)),
            (one, other) => Math.Abs(one - other) < 0.0002
        );

    [Fact]
    public void Fronts_and_gaps_fill_the_height_whatever_the_grading()
    {
        var chance = new Random(5);
        string[] gradings = ["equal", "step", "ratio"];
        for (var i = 0; i < 300; i++)
        {
            var (count, graded) = (1 + chance.Next(8), gradings[chance.Next(3)]);
            var height = Length.FromTicks(chance.NextInt64(200_000, 700_000));
            var outcome = Asked.Run(
                "fronts",
                "height=" + LengthFormat.Exact(height, LengthUnit.Inch),
                "width=20",
                $"count={count}",
                "graded=" + graded,
                "step=1/2"
            );
            if (outcome.Answer is not { } answer)
                continue;
            var fronts = ((Working<ImmutableArray<Length>>)answer.Results[0]).Value;
            var read = LengthText.Parse(LengthFormat.Exact(height, LengthUnit.Inch), LengthUnit.Inch).Value;
            var all = fronts.Aggregate(Asked.Inch("1/4"), (sum, front) => sum + front) + (Asked.Inch("1/8") * (count - 1));
            Assert.InRange((read - all).Ticks, -1, 1);
        }
    }

    [Theory, InlineData("count", "count=20", "height=2"), InlineData("step", "count=6", "height=20", "graded=step", "step=2")]
    public void Fronts_that_leave_nothing_are_refused(string key, params string[] given) =>
        Assert.Equal(key, Assert.Single(Asked.Run("fronts", [.. given, "width=18"]).Faults).Field);

    // Measuring pages of drawer makers: what to take off the opening, by the thickness of the sides.
    [
        Theory,
        InlineData("15", "5/8", "3/8", "13/32"),
        InlineData("15 3/4", "5/8", "3/8", "13/32"),
        InlineData("15", "1/2", "5/8", "21/32"),
        InlineData("20", "15 mm", "7/16", "15/32"),
        InlineData("20", "0.485", "21/32", "11/16")
    ]
    public void A_box_on_undermount_slides_takes_off_what_its_makers_say(string opening, string side, string least, string most)
    {
        var off =
            Asked.Inch(opening)
            - Asked.Length("slides", "Box width, outside", "width=" + opening, "height=6", "depth=22", "side=" + side);
        var hair = Length.FromInches(0.01m);
        Assert.InRange(off, Asked.Inch(least) - hair, Asked.Inch(most) + hair);
    }

    // The same pages: 1 1/16 in off for slides at the sides, at least 1/2 in off the height, 13/16 in for undermount ones.
    [Theory, InlineData("side", "13 15/16", "5 1/2"), InlineData("undermount", null, "5 3/16"), InlineData("roller", null, "5")]
    public void Boxes_on_other_slides(string slide, string? width, string height)
    {
        string[] given = ["slide=" + slide, "width=15", "height=6", "depth=22"];
        if (width is not null)
            Assert.Equal(Asked.Inch(width), Asked.Length("slides", "Box width, outside", given));
        Assert.True(Asked.Length("slides", "Box height, at most", given) <= Asked.Inch(height));
    }

    [Fact]
    public void The_slides_own_sheet_comes_first() =>
        Assert.Equal(
            Asked.Inch("14"),
            Asked.Length("slides", "Box width, outside", "slide=side", "width=15", "height=6", "depth=22", "each=1/2")
        );

    [
        Theory,
        InlineData("depth", "width=15", "height=6", "depth=10"),
        InlineData("height", "width=15", "height=3/4", "depth=20"),
        InlineData("width", "width=1 1/2", "height=6", "depth=20"),
        InlineData("each", "width=15", "height=6", "depth=20", "each=1/2")
    ]
    public void Openings_too_small_for_a_slide_are_refused(string key, params string[] given) =>
        Assert.Equal(key, Assert.Single(Asked.Run("slides", given).Faults).Field);
}
