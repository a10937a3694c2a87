using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Measures;

/// <summary>Areas and shares of them in words.</summary>
public sealed class AreaFormatTests
{
    // A sheet of 4 × 8 ft has 32 sq ft, and 2.97 m²: 1.2192 m × 2.4384 m = 2.97289… m².
    [Theory]
    [InlineData(96, 48, LengthUnit.Inch, "32 sq ft")]
    [InlineData(96, 48, LengthUnit.Millimetre, "2.97 m²")]
    [InlineData(30, 2.5, LengthUnit.Inch, "0.5 sq ft")]
    [InlineData(3, 2.5, LengthUnit.Inch, "under 0.1 sq ft")]
    [InlineData(3, 2.5, LengthUnit.Millimetre, "under 0.01 m²")]
    [InlineData(0, 48, LengthUnit.Inch, "0 sq ft")]
    public void An_area_is_told_in_the_unit_that_goes_with_its_lengths(double a, double b, LengthUnit unit, string text) =>
        Assert.Equal(text, AreaFormat.Of(Face(a, b), unit));

    [Theory]
    [InlineData(0, "0%")]
    [InlineData(0.1, "under 1%")]
    [InlineData(0.5, "1%")]
    [InlineData(14.5, "15%")]
    [InlineData(100, "100%")]
    public void A_share_is_told_in_whole_percent(double part, string text) =>
        Assert.Equal(text, AreaFormat.Percent(Face(part, 10), Face(100, 10)));

    [Fact]
    public void A_share_of_nothing_is_none() => Assert.Equal("0%", AreaFormat.Percent(Face(1, 1), Area.Zero));

    private static Area Face(double a, double b) => Area.Of(Length.FromInches((decimal)a), Length.FromInches((decimal)b));
}
