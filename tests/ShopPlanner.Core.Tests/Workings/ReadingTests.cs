using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>What a person types is used, or it is refused and named.</summary>
public sealed class ReadingTests
{
    [Theory]
    [InlineData("weight", "count", "volume=5", "count=10")]
    [InlineData("weight", "volume", "volume=5", "thickness=1", "width=6", "length=96")]
    [InlineData("weight", "volume", "volume=5", "width=6")]
    [InlineData("weight", "volume", "volume=0")]
    [InlineData("spacing", "max-gap", "span=480", "member=1/64", "max-gap=1/64")]
    [InlineData("spacing", "member", "span=10", "member=12", "max-gap=1")]
    [InlineData("spacing", "max-gap", "span=10", "member=9", "max-gap=0.001")]
    [InlineData("movement", "from", "width=10", "from=8%%RHRH")]
    [InlineData("movement", "from", "width=10", "from=RH")]
    [InlineData("movement", "from", "width=10", "from=8 RH RH")]
    [InlineData("moisture", "humidity", "humidity=50%%")]
    [InlineData("board-feet", "Width", "thickness=1", "width=6", "Width=7", "length=8")]
    public void What_cannot_be_used_is_named(string form, string key, params string[] given)
    {
        var outcome = Asked.Run(form, given);
        Assert.Null(outcome.Answer);
        Assert.Equal(key, Assert.Single(outcome.Faults).Field);
    }

    [Theory]
    [InlineData("moisture", "temperature=21 celsius", "temperature=21 C", "humidity=50")]
    [InlineData("moisture", "temperature=70 degrees fahrenheit", "temperature=70 F", "humidity=50")]
    [InlineData("moisture", "temperature=21 °C", "temperature=21 C", "humidity=50")]
    [InlineData("coats", "area=100 sq ft", "area=100 ft²")]
    [InlineData("coats", "area=100 square feet", "area=100 ft²")]
    [InlineData("coats", "area=12 1/2", "area=12.5 ft²")]
    [InlineData("coats", "area=12½ sq. ft.", "area=12.5 ft²")]
    [InlineData("coats", "area=9 sq m", "area=9 m²")]
    [InlineData("coats", "area=9 m^2", "area=9 m²")]
    [InlineData("coats", "area=9 square meters", "area=9 m²")]
    [InlineData("coats", "area=9 square metres", "area=9 m²")]
    [InlineData("sag", "load=40 lb/ft²", "load=40 psf", "span=36")]
    [InlineData("sag", "load=40 lb per sq ft", "load=40 psf", "span=36")]
    [InlineData("sag", "load=75 pounds", "load=75 lb", "span=36")]
    [InlineData("sag", "load=75lbs", "load=75 lb", "span=36")]
    [InlineData("sag", "load=25 pounds per foot", "load=25 lb/ft", "span=36")]
    [InlineData("sag", "load=34 kilograms", "load=34 kg", "span=36")]
    [InlineData("hinges", "weight=12 1/2 lb", "weight=12.5 lb", "height=30", "width=12")]
    [InlineData("weight", "volume=12 1/2", "volume=12.5")]
    [InlineData("movement", "to=65% rh", "to=65 RH", "width=12")]
    [InlineData("movement", "to=11 1/2 %", "to=11.5", "width=12")]
    [InlineData("board-feet", "THICKNESS=1", "thickness=1", "width=6", "length=8")]
    [InlineData("spacing", "Max-Gap=3", "max-gap=3", "span=30", "member=1")]
    public void It_reads_as_a_builder_writes(string form, string written, string plain, params string[] more) =>
        Assert.Equal(Told(Asked.Answer(form, [plain, .. more])), Told(Asked.Answer(form, [written, .. more])));

    [Fact]
    public void A_limit_is_told_in_the_units_of_who_asks()
    {
        var feet = Assert.Single(Asked.Run("coats", "area=0.01").Faults);
        Assert.Contains("ft²", feet.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("m²", feet.Message, StringComparison.Ordinal);
        var metres = Assert.Single(Asked.Run(LengthUnit.Millimetre, "coats", "area=100000").Faults);
        Assert.Contains("m²", metres.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("ft²", metres.Message, StringComparison.Ordinal);
    }

    // A limit that is told is one that is taken.
    [Fact]
    public void A_least_value_that_is_told_is_taken()
    {
        foreach (var unit in Enum.GetValues<LengthUnit>())
        foreach (var (form, key, small, more) in Smallest)
        {
            var fault = Assert.Single(Asked.Run(unit, form, [key + "=" + small, .. more]).Faults);
            var said = fault.Message[(fault.Message.IndexOf("at least ", StringComparison.Ordinal) + 9)..];
            Assert.NotNull(
                Asked.Run(unit, form, [key + "=" + said.Replace("just over ", "", StringComparison.Ordinal), .. more]).Answer
            );
        }
    }

    private static readonly (string Form, string Key, string Small, string[] More)[] Smallest =
    [
        ("coats", "area", "0.0001", []),
        ("coats", "coverage", "0.01", ["area=10 m²"]),
        ("moisture", "temperature", "-200", ["humidity=40"]),
        ("glue-up", "spread", "0.1", ["width=20 in", "length=40 in"]),
        ("pins", "pitch", "1 mm", ["height=30 in"]),
        ("sag", "thickness", "0.5 mm", ["span=30 in"]),
        ("hinges", "width", "3 mm", ["height=30 in"]),
    ];

    [Fact]
    public void A_hardwood_thickness_is_known_as_one_and_that_is_said()
    {
        Assert.Equal(Asked.Inch("13/16"), Asked.Length("actual-size", "Surfaced on two sides", "nominal=4/4"));
        Assert.Contains(
            Asked.Answer("actual-size", "nominal=4/4").Verdicts,
            verdict => verdict.Text.Contains("hardwood", StringComparison.OrdinalIgnoreCase)
        );
        Assert.Equal(Asked.Inch("2 1/2"), Asked.Length("actual-size", "Rough", "nominal=10/4"));
        // What is said to be softwood is not taken for hardwood.
        Assert.NotEmpty(Asked.Run("actual-size", "nominal=4/4", "kind=softwood").Faults);
    }

    private static string Told(Core.Calculators.Answer answer) =>
        string.Join("; ", answer.Results.Select(result => result.Name + " " + result.Figure.Text(LengthUnit.Inch)));
}
