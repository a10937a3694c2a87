using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Materials;

public sealed class HardwoodSizesTests
{
    /// <summary>Oracle: the hardwood grading rules' surfaced thicknesses, as a lumber-dimension page quotes them.</summary>
    [Theory]
    [InlineData("3/8", "3/8", "1/4", "3/16")]
    [InlineData("1/2", "1/2", "3/8", "5/16")]
    [InlineData("5/8", "5/8", "1/2", "7/16")]
    [InlineData("3/4", "3/4", "5/8", "9/16")]
    [InlineData("4/4", "1", "7/8", "13/16")]
    [InlineData("5/4", "1 1/4", "1 1/8", "1 1/16")]
    [InlineData("6/4", "1 1/2", "1 3/8", "1 5/16")]
    [InlineData("8/4", "2", "1 13/16", "1 3/4")]
    [InlineData("12/4", "3", "2 13/16", "2 3/4")]
    [InlineData("16/4", "4", "3 13/16", "3 3/4")]
    public void Thickness_is_the_grading_rules(string name, string rough, string oneSide, string twoSides) =>
        Assert.Equal(
            new HardwoodThickness(name, In(rough), In(oneSide), In(twoSides)),
            HardwoodSizes.Thicknesses.Single(t => t.Name == name)
        );

    /// <summary>Oracle: a dealer's size chart for 4/4, 5/4, 8/4 and for widths 4 and 6; the other widths are common
    /// practice.</summary>
    [Theory]
    [InlineData("1x4", "3/4", "3 1/2", Certainty.Read)]
    [InlineData("4/4x6", "3/4", "5 1/2", Certainty.Read)]
    [InlineData("5/4x4", "1 1/16", "3 1/2", Certainty.Read)]
    [InlineData("8/4x6", "1 3/4", "5 1/2", Certainty.Read)]
    [InlineData("1x3", "3/4", "2 1/2", Certainty.CommonPractice)]
    public void Planed_board_is_the_dealers(string nominal, string thickness, string width, Certainty certainty)
    {
        Assert.True(MaterialCatalogue.TryFindSection(nominal, WoodKind.Hardwood, out var section));
        Assert.Equal((In(thickness), In(width)), (section.Thickness, section.Width));
        Assert.Equal(certainty, section.Source.Certainty);
    }

    [Theory]
    [InlineData("6/4x4")]
    [InlineData("1x7")]
    public void Size_that_is_not_sold_planed_is_not_found(string nominal) =>
        Assert.False(MaterialCatalogue.TryFindSection(nominal, WoodKind.Hardwood, out _));

    private static Length In(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;
}
