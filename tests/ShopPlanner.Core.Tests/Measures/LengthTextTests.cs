using CsCheck;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Measures;

public sealed class LengthTextTests
{
    /// <summary>Both ways: the text is read as so many ticks, and so many ticks are printed as the text.</summary>
    [Theory]
    [InlineData("0", LengthUnit.Inch, 0)]
    [InlineData("1/64", LengthUnit.Inch, 127)]
    [InlineData("1/32", LengthUnit.Inch, 254)]
    [InlineData("3/4", LengthUnit.Inch, 6096)]
    [InlineData("34 1/2", LengthUnit.Inch, 280_416)]
    [InlineData("96", LengthUnit.Inch, 780_288)]
    [InlineData("0.1", LengthUnit.Millimetre, 32)]
    [InlineData("600", LengthUnit.Millimetre, 192_000)]
    [InlineData("876.3", LengthUnit.Millimetre, 280_416)]
    public void Both_ways(string text, LengthUnit unit, long ticks)
    {
        Assert.Equal(Length.FromTicks(ticks), LengthText.Parse(text, unit).Value);
        Assert.Equal(new RoundedText(text, Length.Zero), LengthFormat.Plain(Length.FromTicks(ticks), unit));
    }

    /// <summary>Read only: other ways a builder writes the same.</summary>
    [Theory]
    [InlineData("34-1/2 in", 34.5)]
    [InlineData("34½\"", 34.5)]
    [InlineData("34 ½″", 34.5)]
    [InlineData("11 ¹⁵⁄₁₆", 11.9375)]
    [InlineData("¾", 0.75)]
    [InlineData(".75", 0.75)]
    [InlineData("12.", 12)]
    [InlineData("2/4", 0.5)]
    [InlineData("8 ft", 96)]
    [InlineData("8'", 96)]
    [InlineData("8' 6 1/2\"", 102.5)]
    [InlineData("8′ 6½″", 102.5)]
    [InlineData("8 ft 6 in", 102)]
    [InlineData("2 1/2 ft", 30)]
    [InlineData("  12 Inches ", 12)]
    public void Read_as_inches(string text, double inches) =>
        Assert.Equal(Length.FromInches((decimal)inches), LengthText.Parse(text, LengthUnit.Inch).Value);

    [Theory]
    [InlineData("600 mm", 600)]
    [InlineData("60 cm", 600)]
    [InlineData("0.6 m", 600)]
    [InlineData("1 in", 25.4)]
    [InlineData("8 ft", 2438.4)]
    [InlineData("19.05", 19.05)]
    public void Read_as_millimetres(string text, double millimetres) =>
        Assert.Equal(Length.FromMillimetres((decimal)millimetres), LengthText.Parse(text, LengthUnit.Millimetre).Value);

    [Theory]
    [InlineData(null, "is empty")]
    [InlineData("", "is empty")]
    [InlineData("   ", "is empty")]
    [InlineData("12 1/0", "a fraction is divided by zero")]
    [InlineData("1/0", "a fraction is divided by zero")]
    [InlineData("-5", "is less than zero")]
    [InlineData("−5", "is less than zero")]
    [InlineData("-0", "is less than zero")]
    [InlineData("NaN", "is not a length")]
    [InlineData("Infinity", "is not a length")]
    [InlineData("1e400", "is not a length")]
    [InlineData("1,5", "has a comma")]
    [InlineData("1.500,25", "has a comma")]
    [InlineData("٣", "is not a length")]
    [InlineData("3 1/2 1/2", "is not a length")]
    [InlineData("3.5 1/2", "is not a length")]
    [InlineData("1/2/3", "is not a length")]
    [InlineData("8' 6'", "is not a length")]
    [InlineData("8 ft 6 mm", "is not a length")]
    [InlineData("12 apples", "is not a length")]
    [InlineData("1.2.3", "is not a length")]
    [InlineData("100001 mm", "is more than 3,937 in (328 ft)")]
    [InlineData("999999999999", "is more than 3,937 in (328 ft)")]
    public void Refused_with_the_reason(string? text, string reason)
    {
        var parsed = LengthText.Parse(text, LengthUnit.Inch);
        Assert.False(parsed.Ok);
        Assert.Contains(reason, parsed.Fault.Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => parsed.Value);
    }

    [Fact]
    public void The_greatest_length_is_told_in_the_unit_that_is_typed() =>
        Assert.Equal(
            "is more than 100 m: no stock is that long",
            LengthText.Parse("100001", LengthUnit.Millimetre).Fault!.Message
        );

    [Fact]
    public void Four_hundred_digits_are_refused_and_shown_short()
    {
        var fault = LengthText.Parse(new string('9', 400), LengthUnit.Inch).Fault!;
        Assert.StartsWith("is too long to be a length", fault.Message, StringComparison.Ordinal);
        Assert.Equal(61, fault.Value.Length);
    }

    [Fact]
    public void Fault_names_the_field_and_the_text() =>
        Assert.Equal(
            "parts[3].length: '12 1/0' is not a length: a fraction is divided by zero",
            LengthText.Parse("12 1/0", LengthUnit.Inch).Fault!.At("parts[3].length").ToString()
        );

    [Theory]
    [InlineData("0", false)]
    [InlineData("1/64", true)]
    public void Positive_length_is_more_than_nothing(string text, bool ok) =>
        Assert.Equal(ok, LengthText.ParsePositive(text, LengthUnit.Inch).Ok);

    [Fact]
    public void Exact_text_reads_back_to_the_same_length() =>
        Gen.Select(Gen.Long[0, LengthText.Longest.Ticks], Gen.Enum<LengthUnit>())
            .Sample(
                (ticks, unit) =>
                    Assert.Equal(
                        Length.FromTicks(ticks),
                        LengthText.Parse(LengthFormat.Exact(Length.FromTicks(ticks), unit), unit).Value
                    )
            );

    [Fact]
    public void Set_text_reads_back_to_the_same_length() =>
        Gen.Select(Gen.Long[0, 64 * 3900], Gen.Int[0, 6].Select(power => 1 << power))
            .Sample(
                (steps, denominator) =>
                {
                    var length = Length.FromTicks(steps * 127);
                    var set = LengthFormat.Set(length, LengthUnit.Inch, denominator);
                    Assert.Equal(length, LengthText.Parse(set.Text, LengthUnit.Inch).Value + set.Remainder);
                }
            );

    [Fact]
    public void No_text_is_read_as_something_else_than_it_says_or_throws() =>
        Gen.String[Gen.Char["0123456789 /.-'\"½⅜inftcm,e"], 0, 14]
            .Sample(text =>
            {
                var parsed = LengthText.Parse(text, LengthUnit.Inch);
                Assert.True(!parsed.Ok || (parsed.Value >= Length.Zero && parsed.Value <= LengthText.Longest));
            });
}
