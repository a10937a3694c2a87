using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Plans;

/// <summary>How good a plan is, in words that claim no more than is known.</summary>
public sealed class QualityWordsTests
{
    [Theory]
    [InlineData(PlanStatus.Proven, "40", "40", "No cheaper way to buy exists")]
    [InlineData(PlanStatus.BestFound, "40", "37.50", "At most $2.50 cheaper is possible")]
    [InlineData(PlanStatus.BestFound, "40", "40", "No cheaper way to buy was found")]
    [InlineData(PlanStatus.Incomplete, "40", "40", "Some parts are left out")]
    public void Quality_is_said_in_a_sentence(PlanStatus status, string cost, string bound, string words) =>
        Assert.Equal(words, Words.Quality(status, Amount(cost), Amount(bound), "$"));

    private static Money Amount(string text) =>
        Money.From(decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture));
}
