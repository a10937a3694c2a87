using CsCheck;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Drawers by their geometry.</summary>
public sealed class JoineryDrawerTests
{
    private static readonly string[] Opening =
    [
        "opening-width=15",
        "opening-height=6",
        "opening-depth=21",
        "slide-clearance=1/2",
        "side=1/2",
    ];

    // The length of front and back and what they are let in, for a box of 14 in with sides of 1/2 in.
    [Theory]
    [InlineData("butt", "13", "0", "geometry")]
    [InlineData("rabbet", "13 1/2", "1/4", "half the thickness, common practice; geometry")]
    [InlineData("dado", "13 1/4", "1/8", "training-school rules: a quarter of the thickness")]
    [InlineData("dovetail", "14", "1/2", "geometry of through dovetails")]
    public void Front_and_back_by_joint(string joint, string length, string letIn, string source)
    {
        Assert.True(
            Asked.Inch(length) == Asked.Length("drawer", "Front and back length", [.. Opening, "joint=" + joint]),
            source
        );
        Assert.True(Asked.Inch(letIn) == Asked.Length("drawer", "Let in at each end", [.. Opening, "joint=" + joint]), source);
    }

    [Theory]
    [InlineData("Box width", "14")]
    [InlineData("Box height", "5")]
    [InlineData("Box depth", "20")]
    [InlineData("Side length", "20")]
    [InlineData("Slide length", "20")]
    [InlineData("Bottom, across", "13 7/16")]
    [InlineData("Bottom, front to back", "19 7/16")]
    public void A_drawer_in_an_opening_of_15_by_6_by_21_by_geometry(string result, string expected) =>
        Assert.Equal(Asked.Inch(expected), Asked.Length("drawer", result, Opening));

    [Theory]
    [InlineData("21", LengthUnit.Inch, "20 in")]
    [InlineData("20", LengthUnit.Inch, "20 in")]
    [InlineData("60", LengthUnit.Inch, "28 in")]
    [InlineData("10", LengthUnit.Inch, "10 in")]
    [InlineData("520", LengthUnit.Millimetre, "500 mm")]
    [InlineData("299.9", LengthUnit.Millimetre, "250 mm")]
    public void The_longest_slide_that_fits_is_taken_marked_as_common_practice(string depth, LengthUnit unit, string slide)
    {
        var longest = Slides.Longest(Given(LengthText.Parse(depth, unit).Value), unit)!;
        Assert.Equal(LengthText.Parse(slide, unit).Value, longest.Value);
        Assert.Equal(Certainty.CommonPractice, longest.Source.Certainty);
    }

    [Fact]
    public void A_depth_shorter_than_any_slide_has_none() =>
        Assert.Null(Slides.Longest(Given(Asked.Inch("9 63/64")), LengthUnit.Inch));

    [Fact]
    public void On_runners_of_wood_the_box_is_as_deep_as_the_room_allows()
    {
        string[] given =
        [
            "opening-width=15",
            "opening-height=6",
            "opening-depth=9",
            "slides=none",
            "slide-clearance=1/16",
            "depth-clearance=1/2",
        ];
        Assert.Equal(Asked.Inch("8 1/2"), Asked.Length("drawer", "Box depth", given));
        Assert.Equal(Asked.Inch("14 7/8"), Asked.Length("drawer", "Box width", given));
        Assert.DoesNotContain(Asked.Answer("drawer", given).Results, result => result.Name == "Slide length");
    }

    private static readonly Gen<(Length Opening, Length Clearance, Length Side, Length Groove, Length Play)> Drawers =
        from side in Gen.Long[2, 30_000]
        from clearance in Gen.Long[1, 30_000]
        from inside in Gen.Long[1, 100_000]
        from groove in Gen.Long[1, side - 1]
        from play in Gen.Long[1, (groove * 2) - 1]
        select (
            Length.FromTicks(((clearance + side) * 2) + inside),
            Length.FromTicks(clearance),
            Length.FromTicks(side),
            Length.FromTicks(groove),
            Length.FromTicks(play)
        );

    [Fact]
    public void Box_and_slides_fill_the_opening_and_the_bottom_its_grooves() =>
        Gen.Select(Drawers, Gen.Enum<DrawerJoint>())
            .Check(
                one => (one.Item1.Clearance + one.Item1.Side) * 2 < one.Item1.Opening && one.Item1.Groove < one.Item1.Side,
                one =>
                {
                    var ((opening, clearance, side, groove, play), joint) = one;
                    var box = DrawerBox.Of(
                        Given(opening),
                        Given(opening),
                        Given(opening),
                        Given(clearance),
                        Given(side),
                        joint,
                        Given(groove),
                        Given(play)
                    );
                    Assert.Equal(opening, box.Width.Value + (clearance * 2));
                    Assert.Equal(box.Width.Value, box.FrontBack.Value + ((side - box.LetIn) * 2));
                    Assert.Equal(box.Width.Value, box.BottomWidth.Value + play + ((side - groove) * 2));
                    Assert.Equal(box.Depth.Value, box.BottomDepth.Value + play + ((side - groove) * 2));
                    Assert.InRange(box.LetIn.Ticks, 0, side.Ticks);
                }
            );

    [Fact]
    public void A_bottom_planted_on_from_below_is_as_large_as_the_box() =>
        Assert.Equal(Asked.Inch("14"), Asked.Length("drawer", "Bottom, across", [.. Opening, "groove=0"]));

    [Fact]
    public void Parts_are_proposed_and_tipping_is_cautioned_first()
    {
        var answer = Asked.Answer("drawer", [.. Opening, "bottom=3/8"]);
        Assert.Equal([2, 2, 1], answer.Parts.Select(part => part.Quantity));
        Assert.Equal([.. new[] { "1/2", "1/2", "3/8" }.Select(Asked.Inch)], answer.Parts.Select(part => part.Thickness));
        Assert.Equal(Cautions.Tipping, answer.Cautions[0]);
    }

    private static Working<Length> Given(Length length) => Working.Given("given", length);
}
