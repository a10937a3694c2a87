using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Sag against the Architectural Woodwork Standards (2009), the Wood Handbook's beam formulas and worked
/// figures.</summary>
public sealed class ShelfTests
{
    [Theory]
    [
        InlineData(0.95, "3/4", 40, 40),
        InlineData(0.95, "3/4", 50, 37),
        InlineData(0.95, "1", 40, 53),
        InlineData(0.95, "1", 50, 49)
    ]
    [
        InlineData(1.80, "3/4", 40, 49),
        InlineData(1.80, "3/4", 50, 46),
        InlineData(1.80, "1", 40, 66),
        InlineData(1.80, "1", 50, 61)
    ]
    [
        InlineData(1.82, "3/4", 40, 49),
        InlineData(1.82, "3/4", 50, 46),
        InlineData(1.82, "1", 40, 66),
        InlineData(1.82, "1", 50, 61)
    ]
    public void Published_shelf_spans_AWS_2009(double millionPsi, string thickness, int poundsPerSquareFoot, int span)
    {
        var perMetre = QuantityKind.LineLoad.ToMetric(poundsPerSquareFoot, LengthUnit.Inch);
        Shelf shelf = new(
            Working.Given("E", QuantityKind.Modulus.ToMetric(millionPsi, LengthUnit.Inch), QuantityKind.Modulus, 2),
            Working.Given("Depth", Length.FromInches(12)),
            Working.Given("T", Asked.Inch(thickness)),
            false,
            Working.Given("Strip", 1, QuantityKind.Bare, 0),
            Working.Given("Creep", 1, QuantityKind.Bare, 0),
            at => Working.Given("Load", perMetre * (double)at.Value.ToMillimetres() / 1000, QuantityKind.Mass, 0),
            null
        );
        Assert.InRange((double)(shelf.Longest(LengthUnit.Inch).Value - Length.FromInches(span)).ToInches(), -1, 1);
    }

    [Theory]
    [InlineData("600", 1.51), InlineData("800", 3.59), InlineData("1000", 7.01)]
    public void An_MDF_shelf_under_20_kg_a_European_associations_formula(string span, double millimetres)
    {
        var outcome = Asked.Run(
            LengthUnit.Millimetre,
            "sag",
            "modulus=2.5 GPa",
            "span=" + span,
            "depth=300",
            "thickness=18",
            "load=20 kg"
        );
        Assert.Equal(millimetres, outcome.Answer!.Results[0].Figure.Number(LengthUnit.Millimetre)!.Value, 0.006);
    }

    [Theory]
    [InlineData("pinned", 0.0893), InlineData("fixed", 0.0179)]
    public void A_ponderosa_pine_shelf_of_36_in_under_75_pounds_beam_formula(string support, double inches) =>
        Assert.Equal(inches, Pine("span=36", "load=75 lb", "support=" + support), 0.00013);

    [Theory]
    [InlineData(LengthUnit.Inch, "25 lb/ft (each foot of shelf) or 25 lb (the whole shelf)")]
    [InlineData(LengthUnit.Millimetre, "25 kg/m (each meter of shelf) or 25 kg (the whole shelf)")]
    public void A_load_without_a_unit_is_asked_about(LengthUnit unit, string both)
    {
        var fault = Assert.Single(Asked.Run(unit, "sag", "span=36 in", "load=25").Faults);
        Assert.Equal(("load", "25"), (fault.Field, fault.Value));
        Assert.Contains(both, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_shelf_of_plywood_at_1_1_million_psi_bends_0_1047_in() =>
        Assert.Equal(0.1047, Asked.Number("sag", "Sag at first", "modulus=1.1", "span=36", "load=75 lb"), 0.00006);

    [Fact]
    public void Half_the_span_bends_an_eighth_under_the_same_load_and_a_sixteenth_under_the_same_load_for_each_foot_Record()
    {
        Assert.Equal(Pine("span=40", "load=80 lb") / 8, Pine("span=20", "load=80 lb"), 0.0005);
        Assert.Equal(Pine("span=40", "load=30 lb/ft") / 16, Pine("span=20", "load=30 lb/ft"), 0.0005);
    }

    [Fact]
    public void Twice_the_thickness_bends_an_eighth_Record() =>
        Assert.Equal(Pine("span=40", "load=80 lb") / 8, Pine("span=40", "load=80 lb", "thickness=1 1/2"), 0.0005);

    [Fact]
    public void Clamped_ends_bend_a_fifth_Wood_Handbook_Table_9_1() =>
        Assert.Equal(Pine("span=40", "load=200 lb") / 5, Pine("span=40", "load=200 lb", "support=fixed"), 0.0005);

    [Fact]
    public void An_edge_strip_makes_it_stiffer() =>
        Assert.True(Pine("span=36", "load=75 lb", "edge-strip=1 1/2") < Pine("span=36", "load=75 lb"));

    [Fact]
    public void The_limit_is_span_over_144_AWS() => Assert.Equal(0.25, Asked.Number("sag", "Limit", "span=36", "load=75 lb"), 6);

    [Fact]
    public void The_longest_span_passes_and_a_longer_one_does_not()
    {
        var longest = (double)Asked.Length("sag", "Longest span within the limit", "span=36", "load=25 lb/ft").ToInches();
        Assert.NotEqual(Severity.Fails, Judged(longest - 0.25));
        Assert.Equal(Severity.Fails, Judged(longest + 0.25));
    }

    private static Severity Judged(double span) =>
        Asked
            .Answer("sag", "span=" + span.ToString("0.####", CultureInfo.InvariantCulture), "load=25 lb/ft")
            .Verdicts[0]
            .Severity;

    private static double Pine(params string[] given) =>
        Asked.Number("sag", "Sag at first", ["species=pine-ponderosa", .. given]);
}
