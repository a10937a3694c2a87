using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Materials;

/// <summary>Oracle: the PS 20 table of dressed sizes, as an engineering reference page quotes it.</summary>
public sealed class SoftwoodSizesTests
{
    [Theory]
    [InlineData("3/8", "5/16", "11/32", 7.94)]
    [InlineData("1/2", "7/16", "15/32", 11.11)]
    [InlineData("5/8", "9/16", "19/32", 14.29)]
    [InlineData("3/4", "5/8", "11/16", 15.88)]
    [InlineData("1", "3/4", "25/32", 19.05)]
    [InlineData("1 1/4", "1", "1 1/32", 25.40)]
    [InlineData("1 1/2", "1 1/4", "1 9/32", 31.75)]
    [InlineData("2", "1 1/2", "1 9/16", 38.1)]
    [InlineData("2 1/2", "2", "2 1/16", 50.8)]
    [InlineData("3", "2 1/2", "2 9/16", 63.5)]
    [InlineData("3 1/2", "3", "3 1/16", 76.2)]
    [InlineData("4", "3 1/2", "3 9/16", 88.9)]
    [InlineData("4 1/2", "4", "4 1/16", 101.6)]
    public void Thickness_is_the_standards(string nominal, string dry, string green, double millimetres) =>
        Check(SoftwoodSizes.Thicknesses.Single(s => s.Nominal == In(nominal)), dry, green, millimetres);

    [Theory]
    [InlineData("2", "1 1/2", "1 9/16", 38.1)]
    [InlineData("3", "2 1/2", "2 9/16", 63.5)]
    [InlineData("4", "3 1/2", "3 9/16", 88.9)]
    [InlineData("5", "4 1/2", "4 5/8", 114.3)]
    [InlineData("6", "5 1/2", "5 5/8", 139.7)]
    [InlineData("7", "6 1/2", "6 5/8", 165.1)]
    [InlineData("8", "7 1/4", "7 1/2", 184.15)]
    [InlineData("9", "8 1/4", "8 1/2", 209.55)]
    [InlineData("10", "9 1/4", "9 1/2", 234.95)]
    [InlineData("11", "10 1/4", "10 1/2", 260.35)]
    [InlineData("12", "11 1/4", "11 1/2", 285.75)]
    [InlineData("14", "13 1/4", "13 1/2", 336.55)]
    [InlineData("16", "15 1/4", "15 1/2", 387.35)]
    public void Width_is_the_standards(string nominal, string dry, string green, double millimetres) =>
        Check(SoftwoodSizes.Widths.Single(s => s.Nominal == In(nominal)), dry, green, millimetres);

    [Theory]
    [InlineData("5", "4 1/2", "4 1/2")]
    [InlineData("6", "5 1/2", "5 1/2")]
    [InlineData("7", "6 1/4", "6 1/2")]
    [InlineData("8", "7 1/4", "7 1/2")]
    [InlineData("15", "14 1/4", "14 1/2")]
    [InlineData("16", "15", "15 1/2")]
    [InlineData("20", "19", "19 1/2")]
    public void Timber_loses_more_the_larger_it_is(string nominal, string dry, string green) =>
        Assert.Equal(new NominalSize(In(nominal), In(dry), In(green)), SoftwoodSizes.Timber(In(nominal)));

    [Fact]
    public void Less_than_five_inches_is_no_timber() => Assert.Null(SoftwoodSizes.Timber(In("4 1/2")));

    [Theory]
    [InlineData("1x3", "3/4", "2 1/2")]
    [InlineData("2x4", "1 1/2", "3 1/2")]
    [InlineData("5/4x6", "1", "5 1/2")]
    [InlineData("5/4 X 6", "1", "5 1/2")]
    [InlineData("4×4", "3 1/2", "3 1/2")]
    [InlineData("1x12", "3/4", "11 1/4")]
    [InlineData("6x8", "5 1/2", "7 1/4")]
    public void Section_is_found_by_its_name(string nominal, string thickness, string width)
    {
        Assert.True(MaterialCatalogue.TryFindSection(nominal, WoodKind.Softwood, out var section));
        Assert.Equal((In(thickness), In(width)), (section.Thickness, section.Width));
        Assert.Equal(Certainty.Quoted, section.Source.Certainty);
    }

    [Theory]
    [InlineData("1x13")]
    [InlineData("7/8x3")]
    [InlineData("1")]
    [InlineData("1x2x3")]
    [InlineData("x")]
    [InlineData("0x3")]
    [InlineData("")]
    public void Section_that_is_not_made_is_not_found(string nominal) =>
        Assert.False(MaterialCatalogue.TryFindSection(nominal, WoodKind.Softwood, out _));

    private static void Check(NominalSize size, string dry, string green, double millimetres)
    {
        Assert.Equal((In(dry), In(green)), (size.Dry, size.Green));
        Assert.Equal((decimal)millimetres, Math.Round(size.Dry.ToMillimetres(), 2, MidpointRounding.AwayFromZero));
    }

    private static Length In(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;
}
