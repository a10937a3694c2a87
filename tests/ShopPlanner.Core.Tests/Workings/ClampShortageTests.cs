using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Too few clamps for a glue-up: what is told to help does help.</summary>
public sealed partial class ClampShortageTests
{
    private static readonly string[] Panel = ["width=20", "length=40"];

    // By arithmetic: 100 psi on 40 1/2 × 3/4 in is 3,037.5 lb: eleven clamps of 300 lb. No stage and no caul adds to that.
    [Theory]
    [InlineData("clamp-force=300 lbf", "clamps=6")]
    [InlineData("board=4 1/2", "clamps=2")]
    public void Stages_and_cauls_are_not_offered_in_place_of_force(params string[] more)
    {
        var verdict = Asked.Answer("glue-up", [.. Panel, .. more]).Verdicts[0];
        Assert.Equal(Severity.Fails, verdict.Severity);
        Assert.DoesNotContain("glue in stages", verdict.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("cauls at least", verdict.Text, StringComparison.Ordinal);
        Assert.Contains("more clamps", verdict.Text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("shorter panel", verdict.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_panel_that_is_told_to_be_short_enough_is()
    {
        var chance = new Random(4);
        var said = 0;
        for (var tried = 0; tried < 400; tried++)
        {
            string[] given =
            [
                "width=" + chance.Next(8, 40).ToString(CultureInfo.InvariantCulture),
                "board=" + chance.Next(3, 9).ToString(CultureInfo.InvariantCulture),
                "clamp-force=" + chance.Next(100, 1500).ToString(CultureInfo.InvariantCulture) + " lbf",
                "clamps=" + chance.Next(1, 8).ToString(CultureInfo.InvariantCulture),
            ];
            if (Short([.. given, "length=96"]) is not { } told || Length().Match(told) is not { Success: true } match)
                continue;
            said++;
            var length = Asked.Inch(match.Groups["length"].Value);
            var told1 = string.Join(' ', given) + ": " + told;
            Assert.True(Short([.. given, "length=" + (double)length.ToInches()]) is null, told1);
            Assert.True(Short([.. given, "length=" + (double)(length + Asked.Inch("1/16")).ToInches()]) is not null, told1);
        }

        Assert.InRange(said, 150, 400);
    }

    [Fact]
    public void Thousands_of_clamps_are_refused_and_not_listed()
    {
        var fault = Assert.Single(
            Asked.Run("glue-up", "width=20", "length=192", "thickness=6", "species=oak-red", "clamp-force=10 lbf").Faults
        );
        Assert.Equal("clamp-force", fault.Field);
        Assert.Contains("at most 200", fault.Message, StringComparison.Ordinal);
        Assert.NotEmpty(Asked.Run("glue-up", "width=1", "length=192", "board=3/8", "caul=0", "oversize=0", "jointing=0").Faults);
    }

    private static string? Short(string[] given) =>
        Asked
            .Answer("glue-up", given)
            .Verdicts.FirstOrDefault(verdict => verdict.Severity == Severity.Fails && verdict.Text.Contains("on hand"))
            ?.Text;

    [GeneratedRegex("up to (?<length>[^″]+″) long")]
    private static partial Regex Length();
}
