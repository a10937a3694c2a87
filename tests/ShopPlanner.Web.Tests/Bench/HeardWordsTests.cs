using ShopPlanner.Web.Features.Bench;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>What is read aloud at the bench.</summary>
public sealed class HeardWordsTests
{
    [Theory]
    [InlineData("just under 21 3/16″ by 1/64″", "just under 21 and 3 sixteenths inches by 1 sixty-fourth inches")]
    [InlineData("9 1/2″", "9 and 1 half inches")]
    [InlineData("⅜″, off the end", "3 eighths inches, off the end")]
    [InlineData("11¼″", "11 and 1 quarter inches")]
    [InlineData("280 mm", "280 millimeters")]
    [InlineData("3/5 of it", "3/5 of it")]
    [InlineData("C1 Rail, keep 3b", "C1 Rail, keep 3b")]
    public void Fractions_and_units_are_words(string written, string heard) => Assert.Equal(heard, HeardWords.Of(written));
}
