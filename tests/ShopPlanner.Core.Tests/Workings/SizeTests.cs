namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Actual sizes and board measure against published tables.</summary>
public sealed class SizeTests
{
    [Theory]
    [
        InlineData("3/8", "5/16"),
        InlineData("1/2", "7/16"),
        InlineData("5/8", "9/16"),
        InlineData("3/4", "5/8"),
        InlineData("1", "3/4"),
        InlineData("1-1/4", "1")
    ]
    [
        InlineData("1-1/2", "1 1/4"),
        InlineData("2", "1 1/2"),
        InlineData("2-1/2", "2"),
        InlineData("3", "2 1/2"),
        InlineData("3-1/2", "3"),
        InlineData("4", "3 1/2")
    ]
    public void Softwood_thickness_dry_PS_20_as_quoted(string nominal, string actual) =>
        Assert.Equal(Asked.Inch(actual), Asked.Length("actual-size", "Thickness", "nominal=" + nominal + "x4"));

    [Theory]
    [
        InlineData("2", "1 1/2"),
        InlineData("3", "2 1/2"),
        InlineData("4", "3 1/2"),
        InlineData("5", "4 1/2"),
        InlineData("6", "5 1/2"),
        InlineData("7", "6 1/2"),
        InlineData("8", "7 1/4")
    ]
    [
        InlineData("9", "8 1/4"),
        InlineData("10", "9 1/4"),
        InlineData("11", "10 1/4"),
        InlineData("12", "11 1/4"),
        InlineData("14", "13 1/4"),
        InlineData("16", "15 1/4")
    ]
    public void Softwood_width_dry_PS_20_as_quoted(string nominal, string actual) =>
        Assert.Equal(Asked.Inch(actual), Asked.Length("actual-size", "Width", "nominal=1x" + nominal));

    [Theory]
    [
        InlineData("3/8", "3/8", "1/4", "3/16"),
        InlineData("1/2", "1/2", "3/8", "5/16"),
        InlineData("5/8", "5/8", "1/2", "7/16"),
        InlineData("3/4", "3/4", "5/8", "9/16")
    ]
    [
        InlineData("4/4", "1", "7/8", "13/16"),
        InlineData("5/4", "1 1/4", "1 1/8", "1 1/16"),
        InlineData("6/4", "1 1/2", "1 3/8", "1 5/16"),
        InlineData("8/4", "2", "1 13/16", "1 3/4")
    ]
    [InlineData("12/4", "3", "2 13/16", "2 3/4"), InlineData("16/4", "4", "3 13/16", "3 3/4")]
    public void Hardwood_thickness_grading_rules_as_quoted(string quarters, string rough, string one, string two)
    {
        string[] given = ["nominal=" + quarters, "kind=hardwood"];
        Assert.Equal(Asked.Inch(rough), Asked.Length("actual-size", "Rough", given));
        Assert.Equal(Asked.Inch(one), Asked.Length("actual-size", "Surfaced on one side", given));
        Assert.Equal(Asked.Inch(two), Asked.Length("actual-size", "Surfaced on two sides", given));
    }

    [Theory]
    [
        InlineData("1x4", "3/4", "3 1/2"),
        InlineData("1x6", "3/4", "5 1/2"),
        InlineData("5/4x4", "1 1/16", "3 1/2"),
        InlineData("2x6", "1 3/4", "5 1/2")
    ]
    public void Ready_planed_hardwood_a_dealers_chart(string nominal, string thickness, string width)
    {
        Assert.Equal(Asked.Inch(thickness), Asked.Length("actual-size", "Thickness", "nominal=" + nominal, "kind=hardwood"));
        Assert.Equal(Asked.Inch(width), Asked.Length("actual-size", "Width", "nominal=" + nominal, "kind=hardwood"));
    }

    [Theory]
    [
        InlineData("1", "12", "10 ft", 10.0, "Carpentry and Woodwork, arithmetic"),
        InlineData("6", "12", "16 ft", 96.0, "Carpentry and Woodwork")
    ]
    [InlineData("9", "6", "14 ft", 63.0, "Carpentry and Woodwork"), InlineData("8", "4", "18 ft", 48.0, "Carpentry and Woodwork")]
    [
        InlineData("1", "11", "14 ft", 12 + (10 / 12.0), "Handwork in Wood, steel square"),
        InlineData("1", "9", "5 ft", 3.75, "Handwork in Wood")
    ]
    [
        InlineData("1", "13", "23 ft", 24 + (11 / 12.0), "Handwork in Wood"),
        InlineData("7/8", "6", "12 ft", 6.0, "Handwork in Wood: nominal thickness counts")
    ]
    public void Board_feet_of_textbook_examples(string thickness, string width, string length, double feet, string source) =>
        Assert.True(
            Math.Abs(
                feet - Asked.Number("board-feet", "Board feet", "thickness=" + thickness, "width=" + width, "length=" + length)
            ) < 1e-9,
            source
        );

    [Fact]
    public void A_packing_case_comes_to_67_and_8_ninths_board_feet_Carpentry_and_Woodwork()
    {
        (string Width, string Length)[] pairs = [("38", "56"), ("30", "56"), ("30", "36")];
        var sum = pairs.Sum(pair =>
            Asked.Number("board-feet", "Board feet", "thickness=1", "width=" + pair.Width, "length=" + pair.Length, "count=2")
        );
        Assert.Equal(67 + (8 / 9.0), sum, 9);
    }

    [Fact]
    public void Stock_under_an_inch_counts_by_its_real_thickness_where_that_is_asked_Carpentry_and_Woodwork() =>
        Assert.Equal(5, Asked.Number("board-feet", "Board feet", "thickness=1/2", "width=12", "length=10 ft", "thin=real"), 9);

    [Fact]
    public void Twice_the_pieces_are_twice_the_board_feet() =>
        Assert.Equal(
            2 * Asked.Number("board-feet", "Board feet", "thickness=5/4", "width=7", "length=9 ft"),
            Asked.Number("board-feet", "Board feet", "thickness=5/4", "width=7", "length=9 ft", "count=2"),
            9
        );
}
