using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Plans;

/// <summary>How good a plan is, in words that claim no more than is known.</summary>
public sealed class QualityWordsTests
{
    [Theory]
    [InlineData(PlanStatus.Proven, "40", "40", "Proven cheapest")]
    [InlineData(PlanStatus.BestFound, "40", "37.50", "Could be up to $2.50 cheaper")]
    [InlineData(PlanStatus.BestFound, "40", "40", "No cheaper plan found")]
    [InlineData(PlanStatus.Incomplete, "40", "40", "Some parts are left out")]
    public void Quality_is_said_in_a_sentence(PlanStatus status, string cost, string bound, string words) =>
        Assert.Equal(words, Words.Quality(status, Amount(cost), Amount(bound), "$"));

    private static Money Amount(string text) =>
        Money.From(decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture));
}
