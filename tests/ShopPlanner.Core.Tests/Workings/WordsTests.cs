using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>What a figure says of itself reads as a person would write it.</summary>
public sealed class WordsTests
{
    [Theory]
    [InlineData("Red oak", "red oak")]
    [InlineData("Douglas-fir, coast", "Douglas-fir, coast")]
    [InlineData("American beech", "American beech")]
    [InlineData("MDF", "MDF")]
    [InlineData("", "")]
    public void A_wood_s_name_within_a_sentence(string name, string inText) => Assert.Equal(inText, WoodNames.InText(name));

    [Fact]
    public void Advice_is_a_tip_and_a_verdict_is_not()
    {
        var dowels = Asked.Answer("dowels", "thickness=3/4", "width=4", "joint=face").Verdicts;
        Assert.Equal(Severity.Tip, dowels.Single(one => one.Text.StartsWith("Use fluted", StringComparison.Ordinal)).Severity);
        var size = Asked.Answer("convert", "value=12").Verdicts;
        Assert.Equal("OK", SeverityWords.Of(Assert.Single(size).Severity));
        Assert.True(Severity.Tip < Severity.Fine);
    }

    [Theory]
    [InlineData("movement", "width × coefficient × (moisture later − moisture when built)", "width=12")]
    [InlineData("weight", "volume × density", "thickness=1", "width=6", "length=48")]
    public void A_formula_in_words(string form, string formula, params string[] given) =>
        Assert.Equal(formula, Asked.Answer(form, given).Results[0].Formula);

    [Fact]
    public void With_numbers_no_word_is_left_in_place_of_one()
    {
        var given = new[] { "price=10", "width=12", "length=48", "count=3" };
        var feet = WorkingSteps.Of(Asked.Answer("price", given).Results).First(step => step.Name == "Board feet of the parts");
        Assert.Equal("1″ × 12″ × 48″ × 3 ÷ 144 in³", feet.Filled(LengthUnit.Inch));
    }
}
