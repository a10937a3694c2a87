using CsCheck;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Measures;

public sealed class MoneyTests
{
    [Theory]
    [InlineData("0.00", 0)]
    [InlineData("6.48", 64_800)]
    [InlineData("0.879", 8_790)]
    [InlineData("0.8799", 8_799)]
    [InlineData("64.00", 640_000)]
    [InlineData("1000000.00", 10_000_000_000)]
    public void Both_ways(string text, long count)
    {
        Assert.Equal(Money.FromCount(count), MoneyText.Parse(text).Value);
        Assert.Equal(text, Money.FromCount(count).ToString());
    }

    [Theory]
    [InlineData("$6.48", 6.48)]
    [InlineData(" € 6.5 ", 6.5)]
    [InlineData("£64", 64)]
    [InlineData(".5", 0.5)]
    public void Read_only(string text, double amount) => Assert.Equal(Money.From((decimal)amount), MoneyText.Parse(text).Value);

    [Theory]
    [InlineData(null, "is empty")]
    [InlineData("$", "is empty")]
    [InlineData("6,48", "has a comma: write the decimal point as a period, 6.48")]
    [InlineData("1.500,25", "has a comma: write the decimal point as a period, 1500.25")]
    [InlineData("1,038.98", "has a comma: write 1038.98")]
    [InlineData("12,345,678.9", "has a comma: write 12345678.9")]
    [InlineData("1,038", "has a comma: write 1038, or 1.038 if the comma is a decimal point")]
    [InlineData("a,b", "has a comma: write a price like 6.48 or 1038.98")]
    [InlineData("-1", "is less than zero")]
    [InlineData("NaN", "is not a price")]
    [InlineData("1e400", "is not a price")]
    [InlineData("٣", "is not a price")]
    [InlineData("1000000.01", "is more than a million")]
    [InlineData("6.48 each", "is not a price")]
    [InlineData("6.48765", "has more than four decimals")]
    public void Refused_with_the_reason(string? text, string reason) =>
        Assert.Contains(reason, MoneyText.Parse(text).Fault!.Message, StringComparison.Ordinal);

    [Fact]
    public void Four_hundred_digits_are_refused() =>
        Assert.Equal("is too long to be a price", MoneyText.Parse(new string('9', 400)).Fault!.Message);

    [Fact]
    public void Text_reads_back_to_the_same_amount() =>
        Gen.Long[0, MoneyText.Largest.Count]
            .Sample(count => Assert.Equal(Money.FromCount(count), MoneyText.Parse(Money.FromCount(count).ToString()).Value));

    [Fact]
    public void Overflow_is_an_error_and_not_a_wrong_amount()
    {
        Assert.Throws<OverflowException>(() => Money.FromCount(long.MaxValue) + Money.FromCount(1));
        Assert.Throws<OverflowException>(() => Money.FromCount(long.MaxValue) * 2);
        Assert.Throws<OverflowException>(() => Money.FromCount(long.MinValue) - Money.FromCount(1));
    }

    [Fact]
    public void Order_is_by_amount() =>
        Assert.Equal(
            [Money.From(1), Money.From(2), Money.From(3)],
            new[] { Money.From(3), Money.From(1), Money.From(2) }.Order()
        );
}
