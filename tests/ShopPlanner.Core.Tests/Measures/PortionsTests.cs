using System.Numerics;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Measures;

/// <summary>One amount shared out by weights; the method of largest remainders, worked by hand.</summary>
public sealed class PortionsTests
{
    [Theory]
    [InlineData("10.00", "1 1 1", "3.34 3.33 3.33")]
    [InlineData("8.00", "30 60", "2.67 5.33")]
    [InlineData("0.01", "1 2", "0.00 0.01")]
    [InlineData("7.50", "0 3", "0.00 7.50")]
    [InlineData("0.8791", "1 2", "0.293 0.5861")]
    [InlineData("9.00", "0 0", "4.50 4.50")]
    [InlineData("0.00", "5 7", "0.00 0.00")]
    public void Money_is_shared_to_the_cent(string amount, string weights, string portions) =>
        Assert.Equal(
            portions.Split(' '),
            Portions.Of(MoneyText.Parse(amount).Value, [.. weights.Split(' ').Select(BigInteger.Parse)]).Select(one => $"{one}")
        );

    [Fact]
    public void Portions_add_up_and_are_off_by_less_than_a_step()
    {
        var random = new Random(3);
        for (var n = 0; n < 1000; n++)
        {
            var weights = Enumerable.Range(0, random.Next(1, 12)).Select(_ => new BigInteger(random.Next(1, 500))).ToList();
            var area = Area.Of(Length.FromTicks(random.Next(1, 100_000)), Length.FromTicks(random.Next(1, 100_000)));
            var portions = Portions.Of(area, weights);
            Assert.Equal(area, portions.Aggregate(Area.Zero, (sum, one) => sum + one));
            var all = weights.Aggregate(BigInteger.Zero, (sum, one) => sum + one);
            Assert.All(
                portions.Zip(weights),
                pair =>
                    Assert.True(
                        BigInteger.Abs(((BigInteger)pair.First.SquareTicks * all) - ((BigInteger)area.SquareTicks * pair.Second))
                            < all
                    )
            );
        }
    }
}
