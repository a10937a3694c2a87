using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Shop;

namespace ShopPlanner.Services.Tests.Shop;

/// <summary>What test cuts took, shared among them: (size before − pieces after) ÷ cuts.</summary>
public sealed class KerfTestTests
{
    [Theory]
    [InlineData("12", "11 3/8", 5, "1/8")]
    [InlineData("12", "11 17/32", 5, "3/32")]
    [InlineData("300 mm", "284 mm", 5, "3.2 mm")]
    [InlineData("6", "5 7/8", 1, "1/8")]
    public void The_kerf_is_what_each_cut_took(string before, string after, int cuts, string kerf)
    {
        var working = KerfTest.Of(In(before), In(after), cuts).Value!;
        Assert.Equal(In(kerf), working.Value);
        Assert.Equal("(size before the cuts − pieces together after the cuts) ÷ cuts", working.Formula);
        Assert.Equal(["before", "after", "cuts"], working.Inputs.Select(input => input.Key));
    }

    // A kerf that is too small leaves the last piece short; one that is too large by a tick leaves dust.
    [Fact]
    public void A_kerf_between_two_ticks_is_rounded_up()
    {
        var taken = Length.FromTicks(3 * 1016 + 1);
        Assert.Equal(1017, KerfTest.Of(In("12") + taken, In("12"), 3).Value!.Value.Ticks);
    }

    [Theory]
    [InlineData("12", "12", 5, "after")]
    [InlineData("12", "12 1/8", 5, "after")]
    [InlineData("12", "6", 5, "after")]
    [InlineData("12", "11", 0, "cuts")]
    [InlineData("12", "11", 51, "cuts")]
    public void What_cannot_be_is_named(string before, string after, int cuts, string field) =>
        Assert.Equal(field, Assert.Single(KerfTest.Of(In(before), In(after), cuts).Faults).Field);

    private static Length In(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;
}
