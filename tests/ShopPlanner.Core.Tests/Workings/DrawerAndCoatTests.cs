using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Drawers on runners and with planted bottoms; finish in the units of who buys it.</summary>
public sealed class DrawerAndCoatTests
{
    private static readonly string[] Opening = ["opening-width=15", "opening-height=6", "opening-depth=21"];

    [Fact]
    public void On_wood_runners_no_room_for_slides_is_left()
    {
        var width = Asked.Length("drawer", "Box width", [.. Opening, "slides=none"]);
        Assert.InRange((double)(Asked.Inch("15") - width).ToInches(), 1.0 / 32, 3.0 / 16);
        Assert.Equal(Asked.Inch("14"), Asked.Length("drawer", "Box width", Opening));
    }

    [Fact]
    public void A_planted_bottom_takes_its_thickness_from_the_height()
    {
        Assert.Equal(
            Asked.Length("drawer", "Box height", Opening) - Asked.Inch("3/8"),
            Asked.Length("drawer", "Box height", [.. Opening, "groove=0", "bottom=3/8"])
        );
    }

    [Fact]
    public void The_groove_has_a_width_and_a_height()
    {
        string[] given = [.. Opening, "bottom=3/8"];
        Assert.Equal(Asked.Inch("3/8"), Asked.Length("drawer", "Groove width", given));
        Assert.Equal(Asked.Inch("1/4"), Asked.Length("drawer", "Groove above the lower edge", given));
        Assert.Equal("groove-height", Assert.Single(Asked.Run("drawer", [.. given, "groove-height=5"]).Faults).Field);
    }

    [Fact]
    public void Finish_is_bought_in_liters_where_liters_are_asked_for()
    {
        var outcome = Asked.Run(LengthUnit.Millimetre, "coats", "area=10");
        var buy = outcome.Answer!.Results.Single(one => one.Name == "To buy").Figure.Text(LengthUnit.Millimetre);
        Assert.Contains(" L", buy, StringComparison.Ordinal);
        Assert.DoesNotContain("gal", buy, StringComparison.Ordinal);
        Assert.DoesNotContain("qt", buy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("enamel")]
    [InlineData("stain")]
    public void What_may_hold_a_drying_oil_comes_with_the_caution_for_rags(string product) =>
        Assert.Contains(Asked.Answer("coats", "area=10", "product=" + product).Cautions, caution => caution.Id == "oily-rags");

    [Fact]
    public void Holes_at_another_pitch_are_not_called_the_system_of_32_mm()
    {
        Assert.Contains("32 mm", Asked.Answer("pins", "height=30").Results[0].Source.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "32 mm",
            Asked.Answer("pins", "height=30", "pitch=1").Results[0].Source.Text,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("sag", "span=36")]
    [InlineData("sag", "span=36", "edge-strip=1 1/2")]
    public void A_figure_that_is_raised_to_a_power_stands_in_brackets(string form, params string[] given)
    {
        foreach (var unit in Enum.GetValues<LengthUnit>())
        {
            var filled = Asked.Run(unit, form, [.. given.Select(one => one.Replace("36", "36 in", StringComparison.Ordinal))]);
            Assert.All(
                filled.Answer!.Results.SelectMany(Below),
                working =>
                {
                    Assert.DoesNotContain("″³", working.Filled(unit), StringComparison.Ordinal);
                    Assert.DoesNotContain("mm³", working.Filled(unit), StringComparison.Ordinal);
                }
            );
        }
    }

    private static IEnumerable<Working> Below(Working working) =>
        working.Inputs.SelectMany(input => Below(input.Working)).Prepend(working);
}
