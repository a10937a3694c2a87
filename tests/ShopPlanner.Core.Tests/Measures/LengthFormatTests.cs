using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Measures;

public sealed class LengthFormatTests
{
    /// <summary>Oracle: arithmetic on the definition 1 in = 25.4 mm.</summary>
    [Theory]
    [InlineData(64, 0.396875)]
    [InlineData(32, 0.79375)]
    [InlineData(16, 1.5875)]
    [InlineData(8, 3.175)]
    public void Fraction_of_an_inch_is_exact(int denominator, double millimetres)
    {
        Assert.Equal((decimal)millimetres, Length.FromInches(0, 1, denominator).ToMillimetres());
        Assert.Equal(19.05m, Length.FromInches(0, 3, 4).ToMillimetres());
    }

    /// <summary>Oracle: arithmetic: the nearest sixteenth.</summary>
    [Theory]
    [InlineData(11.28, "11 1/4", 1)]
    [InlineData(11.29, "11 5/16", -1)]
    [InlineData(23.97, "24", -1)]
    [InlineData(0.03, "0", 1)]
    [InlineData(0.04, "1/16", -1)]
    [InlineData(-0.04, "−1/16", 1)]
    [InlineData(-0.03, "0", -1)]
    [InlineData(-11.28, "−11 1/4", -1)]
    public void Sixteenths(double inches, string text, int remainderSign)
    {
        var rounded = LengthFormat.Plain(Length.FromInches((decimal)inches), LengthUnit.Inch, 16);
        Assert.Equal((text, remainderSign), (rounded.Text, Math.Sign(rounded.Remainder.Ticks)));
    }

    /// <summary>Our rule for ties, stated in the type: away from zero.</summary>
    [Theory]
    [InlineData(0.09375, "1/8")]
    [InlineData(0.03125, "1/16")]
    [InlineData(-0.09375, "−1/8")]
    public void Half_a_step_rounds_away_from_zero(double inches, string text) =>
        Assert.Equal(text, LengthFormat.Plain(Length.FromInches((decimal)inches), LengthUnit.Inch, 16).Text);

    /// <summary>Oracle: arithmetic: five parts of 6.30 in are 31.5 in; five rounded ones would be 31 9/16.</summary>
    [Fact]
    public void Sums_are_made_of_lengths_and_not_of_texts()
    {
        var part = Length.FromInches(6.30m);
        Assert.Equal("6 5/16", LengthFormat.Plain(part, LengthUnit.Inch, 16).Text);
        Assert.Equal("31 1/2", LengthFormat.Plain(part * 5, LengthUnit.Inch, 16).Text);
    }

    [Theory]
    [InlineData(34.5, "34 ½″")]
    [InlineData(0.75, "¾″")]
    [InlineData(11.9375, "11 ¹⁵⁄₁₆″")]
    [InlineData(0.1, "just over ³⁄₃₂″")]
    public void Set_for_reading(double inches, string text) =>
        Assert.Equal(text, LengthFormat.WithUnit(Length.FromInches((decimal)inches), LengthUnit.Inch, inches == 0.1 ? 32 : 64));

    [Theory]
    [InlineData("96", "48", LengthUnit.Inch, LengthUnit.Inch)]
    [InlineData("340 mm", "330 mm", LengthUnit.Inch, LengthUnit.Millimetre)]
    [InlineData("41 3/8", "2 1/2", LengthUnit.Millimetre, LengthUnit.Inch)]
    [InlineData("1 in", "254 mm", LengthUnit.Millimetre, LengthUnit.Millimetre)]
    [InlineData("1/3", "340 mm", LengthUnit.Inch, LengthUnit.Inch)]
    public void Lengths_tell_the_unit_that_they_were_made_in(string a, string b, LengthUnit preferred, LengthUnit made) =>
        Assert.Equal(
            made,
            LengthFormat.MadeIn(preferred, LengthText.Parse(a, LengthUnit.Inch).Value, LengthText.Parse(b, LengthUnit.Inch).Value)
        );

    [Theory]
    [InlineData(876.3, "876.3 mm")]
    [InlineData(876.34, "just over 876.3 mm")]
    [InlineData(876.35, "just under 876.4 mm")]
    [InlineData(600, "600 mm")]
    public void Millimetres_have_at_most_one_decimal(double millimetres, string text) =>
        Assert.Equal(text, LengthFormat.WithUnit(Length.FromMillimetres((decimal)millimetres), LengthUnit.Millimetre));

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(128)]
    public void Rule_has_no_such_marks(int denominator) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthFormat.Plain(Length.Zero, LengthUnit.Inch, denominator));
}
