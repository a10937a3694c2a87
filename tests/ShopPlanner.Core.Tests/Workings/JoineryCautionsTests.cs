using ShopPlanner.Core.Calculators;

namespace ShopPlanner.Core.Tests.Workings;

public sealed class JoineryCautionsTests
{
    [Fact]
    public void Each_caution_has_a_key_of_its_own_a_text_that_is_short_and_a_source() =>
        Assert.Multiple(
            () => Assert.Equal(Cautions.All.Length, Cautions.All.Select(one => one.Id).Distinct().Count()),
            () => Assert.All(Cautions.All, one => Assert.InRange(one.Text.Length, 60, 420)),
            () => Assert.All(Cautions.All, one => Assert.NotEmpty(one.Source.Text))
        );
}
