using CsCheck;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Measures;

public sealed class LengthTests
{
    /// <summary>Oracle: the identity n = ⌊(S + k)/(L + k)⌋ for pieces of L from stock S with kerf k, worked by hand.</summary>
    [Theory]
    [InlineData("96", "24", "1/8", 3)]
    [InlineData("96", "23 7/8", "1/8", 4)]
    [InlineData("48", "11 7/8", "1/8", 4)]
    [InlineData("96 1/4", "24", "1/16", 4)]
    [InlineData("2440 mm", "600 mm", "3.2 mm", 4)]
    public void Pieces_from_a_stock(string stock, string piece, string kerf, int count) =>
        Assert.Equal(count, (Of(stock) + Of(kerf)) / (Of(piece) + Of(kerf)));

    /// <summary>Oracle: the same source: four pieces of 23 7/8 with three kerfs use 95 7/8; 2440 − 4 × 600 − 4 × 3.2 = 27.2
    /// mm.</summary>
    [Fact]
    public void What_the_pieces_use_and_leave()
    {
        Assert.Equal(Of("95 7/8"), (4 * Of("23 7/8")) + (3 * Of("1/8")));
        Assert.Equal(Of("27.2 mm"), Of("2440 mm") - (Of("600 mm") * 4) - (Of("3.2 mm") * 4));
    }

    [Fact]
    public void Inches_and_millimetres_are_whole_ticks()
    {
        Assert.Equal(8128, Length.FromMillimetres(25.4m).Ticks);
        Assert.Equal(Length.FromInches(12), Length.FromFeet(1));
        Assert.Equal(Of("34 1/2"), Length.FromInches(34, 1, 2));
    }

    [Fact]
    public void Sums_never_drift() =>
        Gen.Long[-1_000_000, 1_000_000]
            .List[0, 200]
            .Sample(ticks =>
                Assert.Equal(ticks.Sum(), ticks.Aggregate(Length.Zero, (sum, t) => sum + Length.FromTicks(t)).Ticks)
            );

    [Fact]
    public void Overflow_is_an_error_and_not_a_wrong_length()
    {
        var largest = Length.FromTicks(long.MaxValue);
        Assert.Throws<OverflowException>(() => largest + Length.FromTicks(1));
        Assert.Throws<OverflowException>(() => -Length.FromTicks(long.MinValue));
        Assert.Throws<OverflowException>(() => largest * 2);
        Assert.Throws<OverflowException>(() => Length.FromMillimetres(decimal.MaxValue / 1000));
    }

    [Fact]
    public void Order_is_by_size()
    {
        Assert.Equal([Of("1/2"), Of("20 mm"), Of("1")], new[] { Of("1"), Of("1/2"), Of("20 mm") }.Order());
        Assert.Equal((Of("1/2"), Of("1")), (Length.Min(Of("1"), Of("1/2")), Length.Max(Of("1"), Of("1/2"))));
        Assert.True(Of("1") > Of("25 mm") && Of("1") >= Of("25.4 mm") && Of("1") <= Of("25.4 mm") && Of("1/2") < Of("1"));
    }

    private static Length Of(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;
}
