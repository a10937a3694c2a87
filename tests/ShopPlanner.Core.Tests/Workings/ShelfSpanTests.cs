using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>The longest span of a shelf: entered again it keeps to the limit, and a mark more does not.</summary>
public sealed class ShelfSpanTests
{
    private const string Span = "Longest span within the limit";
    private static readonly string[] Sheets = ["mdf", "plywood", "particleboard", "pine-ponderosa", "oak-red", "yellow-poplar"];

    // By hand with the Wood Handbook's beam formula (Table 9-1): with the load in all the same, sag grows with the cube of the
    // span and the limit with the span, so the span is √(limit ÷ sag) times as long.
    [Theory]
    [InlineData("mdf", "36", "75 lb", 21.2)]
    [InlineData("mdf", "48", "150 lb", 15.0)]
    [InlineData("pine-eastern-white", "48", "150 lb", 33.0)]
    [InlineData("pine-ponderosa", "36", "75 lb", 47.6)]
    public void A_load_in_all_stays_the_same_at_another_span(string species, string span, string load, double longest) =>
        Assert.Equal(
            longest,
            Asked.Number("sag", Span, "species=" + species, "span=" + span, "load=" + load, "own-weight=left-out"),
            0.08
        );

    [Theory]
    [InlineData(LengthUnit.Inch)]
    [InlineData(LengthUnit.Millimetre)]
    public void Entered_again_it_keeps_to_the_limit_and_a_mark_more_does_not(LengthUnit unit)
    {
        var chance = new Random(1);
        for (var tried = 0; tried < 500; tried++)
        {
            var given = Shelf(chance, unit);
            var longest = Longest(given, unit);
            var mark = unit == LengthUnit.Inch ? 1m / 16 : 1;
            Assert.True(longest >= mark, string.Join(' ', given));
            var told = string.Join(' ', given) + " → " + longest;
            if (Judged(given, longest, unit) == Severity.Fails)
                Assert.Fail(told + " fails");
            if (longest < (decimal)Core.Measures.Length.FromFeet(20).To(unit))
                Assert.True(Judged(given, longest + mark, unit) == Severity.Fails, told + " and a mark more passes");
        }
    }

    [Fact]
    public void A_sag_beyond_the_span_is_told_as_more_than_the_span_and_the_longest_span_stays_true()
    {
        string[] given = ["species=mdf", "span=240", "thickness=1/4", "load=10000 lb"];
        var answer = Asked.Answer("sag", given);
        Assert.Equal("more than 240″", answer.Results[0].Figure.Text(LengthUnit.Inch));
        Assert.Equal(Severity.Fails, answer.Verdicts[0].Severity);
        // At the longest span the limit is met: √ of the ratio from a span at which the formula is not cut off.
        var near = Asked.Number("sag", Span, "species=mdf", "span=2", "thickness=1/4", "load=10000 lb");
        Assert.Equal(near, Asked.Number("sag", Span, given), 9);
    }

    [Fact]
    public void The_shelf_carries_itself()
    {
        // 3/4 in MDF of 24 × 36 in at 48 lb/ft³ weighs 18 lb (geometry).
        string[] given = ["species=mdf", "span=36", "depth=24", "load=18 lb"];
        Assert.Equal(
            Asked.Number("sag", "Sag at first", given),
            Asked.Number("sag", "Sag from its own weight, at first", given),
            0.001
        );
        Assert.Equal(2 * 3.25 * Asked.Number("sag", "Sag at first", given), Asked.Number("sag", "Sag after years", given), 0.003);
    }

    [Fact]
    public void Clamped_ends_come_with_a_word_on_what_does_not_clamp() =>
        Assert.Contains(
            Asked.Answer("sag", "span=36", "support=fixed").Verdicts,
            verdict => verdict.Severity == Severity.Watch && verdict.Text.Contains("dadoes", StringComparison.Ordinal)
        );

    [Fact]
    public void A_stiffness_without_a_material_is_taken_for_the_worst_one() =>
        Assert.True(
            Asked.Number("sag", "Sag after years", "modulus=0.52", "span=36", "load=75 lb")
                >= Asked.Number("sag", "Sag after years", "species=mdf", "span=36", "load=75 lb")
        );

    [Fact]
    public void A_load_on_each_square_foot_is_read() =>
        Assert.Equal(
            Asked.Number("sag", "Sag at first", "span=36", "depth=12", "load=120 lb"),
            Asked.Number("sag", "Sag at first", "span=36", "depth=12", "load=40 lb/ft²"),
            9
        );

    private static string[] Shelf(Random chance, LengthUnit unit)
    {
        var isInch = unit == LengthUnit.Inch;
        var thick = isInch ? $"{chance.Next(4, 25)}/16" : chance.Next(6, 40).ToString(CultureInfo.InvariantCulture);
        var (kilograms, pounds) = (chance.Next(1, 90), chance.Next(1, 200));
        var load = (isInch, chance.Next(3)) switch
        {
            (true, 0) => $"{pounds} lb",
            (true, 1) => $"{pounds} lb/ft",
            (true, _) => $"{pounds} lb/ft²",
            (_, 0) => $"{kilograms} kg",
            (_, 1) => $"{kilograms} kg/m",
            _ => $"{kilograms} kg/m²",
        };
        return
        [
            "species=" + Sheets[chance.Next(Sheets.Length)],
            "thickness=" + thick,
            "depth=" + (isInch ? chance.Next(4, 24) : chance.Next(100, 600)).ToString(CultureInfo.InvariantCulture),
            "load=" + load,
            "support=" + (chance.Next(5) == 0 ? "fixed" : "pinned"),
            "edge-strip=" + (chance.Next(3) == 0 ? "1 1/2 in" : "0"),
        ];
    }

    private static decimal Longest(string[] given, LengthUnit unit)
    {
        var outcome = Asked.Run(unit, "sag", [.. given, unit == LengthUnit.Inch ? "span=30" : "span=760"]);
        Assert.Empty(outcome.Faults);
        return ((Working<Length>)outcome.Answer!.Results.Single(one => one.Name == Span)).Value.To(unit);
    }

    private static Severity Judged(string[] given, decimal span, LengthUnit unit)
    {
        var outcome = Asked.Run(unit, "sag", [.. given, "span=" + span.ToString("0.####", CultureInfo.InvariantCulture)]);
        Assert.Empty(outcome.Faults);
        return outcome.Answer!.Verdicts.Max(verdict => verdict.Severity);
    }
}
