using ShopPlanner.Core.Measures;
using ShopPlanner.Web.Features.Bench;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>Planned sizes of leftovers as offered for correction: on a mark of the rule, never beyond the size.</summary>
public sealed class OfferedSizeTests
{
    [Theory]
    [InlineData(320, LengthUnit.Inch, "12 19/32")] // 12.5984 in; 12 19/32 is 12.59375
    [InlineData(330, LengthUnit.Inch, "12 63/64")] // 12.9921 in; 12 63/64 is 12.984375
    [InlineData(6.35, LengthUnit.Inch, "1/4")]
    [InlineData(1219.2, LengthUnit.Millimetre, "1219.2")]
    public void A_size_is_offered_down_to_a_mark(double millimetres, LengthUnit unit, string text) =>
        Assert.Equal(text, BenchWords.Offered(Length.FromMillimetres((decimal)millimetres), unit));

    [Theory]
    [InlineData(LengthUnit.Inch)]
    [InlineData(LengthUnit.Millimetre)]
    public void No_size_is_offered_larger_than_it_is(LengthUnit unit)
    {
        for (var ticks = 300_000L; ticks < 310_000; ticks += 7)
        {
            var offered = LengthText.Parse(BenchWords.Offered(Length.FromTicks(ticks), unit), unit).Value;
            Assert.InRange(ticks - offered.Ticks, 0, Length.TicksPerInch / 64);
        }
    }
}
