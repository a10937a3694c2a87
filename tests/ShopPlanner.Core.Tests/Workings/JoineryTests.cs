using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Doors, grooves, drawers and glue-ups against worked examples and by their geometry.</summary>
public sealed class JoineryTests
{
    [Fact]
    public void A_door_of_15_by_24_geometry()
    {
        string[] door = ["opening-width=15", "opening-height=24", "gap=0", "stile=2 1/4", "groove=3/8", "clearance=1/16"];
        Assert.Equal(Asked.Inch("11 1/4"), Asked.Length("door", "Rail length", door));
        Assert.Equal(Asked.Inch("11 1/8"), Asked.Length("door", "Panel width", door));
        Assert.Equal(Asked.Inch("20 3/16"), Asked.Length("door", "Panel height", door));
        Assert.Equal(Asked.Inch("24"), Asked.Length("door", "Stile length", door));
    }

    [Theory]
    [InlineData("304", "2", "4", "148", "a trade forum: 2 mm at the sides, 4 mm in the middle"), InlineData("304", "1.5", "3", "149", "the same with 1.5 and 3 mm")]
    public void A_pair_of_overlay_doors_on_a_case_of_304_mm(string width, string reveal, string gap, string door, string source)
    {
        // The case's outside less a reveal at each side is an opening with an overlay of nothing.
        var opening = (double.Parse(width, CultureInfo.InvariantCulture) - (2 * double.Parse(reveal, CultureInfo.InvariantCulture))).ToString(CultureInfo.InvariantCulture);
        var outcome = Asked.Run(LengthUnit.Millimetre, "door", "opening-width=" + opening, "opening-height=700", "leaves=2", "fit=overlay", "overlay=0", "gap=" + gap, "stile=50", "clearance=1");
        Assert.True(LengthText.Parse(door, LengthUnit.Millimetre).Value == ((Working<Length>)outcome.Answer!.Results[0]).Value, source);
    }

    [Theory, InlineData("1", "3/16"), InlineData("2", "9/32")]
    public void Inset_doors_with_gaps_of_three_thirty_seconds_trade_forum(string leaves, string less)
    {
        var width = Asked.Length("door", "Door width", "opening-width=24", "opening-height=30", "leaves=" + leaves, "gap=3/32");
        Assert.Equal(Asked.Inch("24") - Asked.Inch(less), width * long.Parse(leaves, CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Doors_and_gaps_fill_the_opening_to_the_tick()
    {
        var chance = new Random(5);
        for (var i = 0; i < 300; i++)
        {
            var (opening, gap, leaves) = (Length.FromTicks(chance.NextInt64(80_000, 400_000)), Length.FromTicks(chance.NextInt64(0, 800)), 1 + chance.Next(2));
            var sizes = Core.Joinery.DoorSizes.Inset(Working.Given("o", opening), Working.Given("h", opening), leaves, Working.Given("g", gap));
            Assert.Equal(opening, (sizes.Width.Value * leaves) + (gap * (leaves + 1)) + sizes.Rest);
            Assert.True(sizes.Rest.Ticks < leaves);
        }
    }

    [Theory, InlineData("3/4", "1/4"), InlineData("1 1/2", "1/2")]
    public void A_groove_is_a_third_of_the_thickness_Handwork_in_Wood(string stock, string groove) =>
        Assert.Equal(Asked.Inch(groove), Asked.Length("groove", "Groove", "stock=" + stock, "groove=1/8"));

    [Fact]
    public void Walls_groove_and_tongue_fill_the_piece()
    {
        string[] given = ["stock=3/4", "groove=1/8", "panel=7/32", "fit=1/64"];
        var (groove, wall, tongue, cheek) = (Asked.Length("groove", "Groove", given), Asked.Length("groove", "Fence to the near side of the blade", given), Asked.Length("groove", "Tongue thickness", given), Asked.Length("groove", "Taken off each face", given));
        Assert.InRange((Asked.Inch("3/4") - (wall * 2) - groove).Ticks, 0, 1);
        Assert.InRange((Asked.Inch("3/4") - (cheek * 2) - tongue).Ticks, 0, 1);
        Assert.Equal(groove - Asked.Inch("1/64"), tongue);
    }

    [Fact]
    public void A_drawer_box_with_its_slides_fills_the_opening()
    {
        string[] given = ["opening-width=15", "opening-height=6", "opening-depth=21", "slide-clearance=1/2", "joint=dado", "side=1/2"];
        Assert.Equal(Asked.Inch("14"), Asked.Length("drawer", "Box width", given));
        Assert.Equal(Asked.Inch("20"), Asked.Length("drawer", "Slide length", given));
        Assert.Equal(Asked.Inch("13 1/2"), Asked.Length("drawer", "Bottom, across", given));
    }

    [Fact]
    public void A_joint_of_36_in_by_three_quarters_at_100_psi_wants_2700_pounds()
    {
        var force = Core.Joinery.GlueUp.Force(
            Working.Given("p", QuantityKind.Pressure.ToMetric(100, LengthUnit.Inch), QuantityKind.Pressure, 0), Working.Given("l", Asked.Inch("36")),
            Working.Given("t", Asked.Inch("3/4")), Working.Given("n", 1, QuantityKind.Bare, 0));
        Assert.Equal(2700, force.Figure.Number(LengthUnit.Inch)!.Value, 0.5);
    }

    [Fact]
    public void A_4_in_board_and_a_1_in_caul_put_clamps_10_in_apart_and_4_along_36_in()
    {
        var spacing = Core.Joinery.GlueUp.Spacing(Working.Given("s", Asked.Inch("4")), Working.Given("c", Asked.Inch("1")));
        Assert.Equal(Asked.Inch("10"), spacing.Value);
        Assert.Equal(4, Core.Joinery.GlueUp.Clamps(Working.Given("l", Asked.Inch("36")), spacing).Value);
    }

    [Fact]
    public void Strips_are_wide_enough_and_no_strip_too_many()
    {
        for (var width = 6; width < 60; width++)
        {
            string[] given = ["width=" + width.ToString(CultureInfo.InvariantCulture), "length=40", "oversize=0"];
            var (strips, strip) = (Asked.Number("glue-up", "Strips", given), Asked.Length("glue-up", "Width of each strip, jointed", given));
            Assert.True(strip * (long)strips >= Length.FromInches(width));
            Assert.True(strip <= Asked.Inch("5 3/8"));
            Assert.True(Asked.Inch("5 3/8") * ((long)strips - 1) < Length.FromInches(width));
        }
    }

    [Theory]
    [InlineData("door", "opening-width", "opening-width=480", "opening-height=24"), InlineData("door", "gap", "opening-width=1", "opening-height=24", "gap=1/2")]
    [InlineData("door", "stile", "opening-width=6", "opening-height=24", "stile=3"), InlineData("door", "clearance", "opening-width=15", "opening-height=24", "clearance=3/8")]
    [InlineData("door", "panel", "opening-width=15", "opening-height=24", "panel=3/4"), InlineData("door", "leaves", "opening-width=15", "opening-height=24", "leaves=3")]
    [InlineData("door", "opening-height", "opening-width=15"), InlineData("door", "colour", "opening-width=15", "opening-height=24", "colour=red")]
    [InlineData("groove", "groove", "stock=3/4", "groove=1/2"), InlineData("groove", "panel", "stock=3/4", "panel=1/2"), InlineData("groove", "stock", "stock=-1")]
    [InlineData("drawer", "opening-depth", "opening-width=15", "opening-height=6", "opening-depth=8"), InlineData("drawer", "bottom", "opening-width=15", "opening-height=6", "opening-depth=20", "bottom=1/2")]
    [InlineData("glue-up", "board", "width=20", "length=40", "board=1/2", "joints=tongue"), InlineData("glue-up", "width", "width=0", "length=40")]
    public void What_cannot_be_is_refused_and_its_key_named(string form, string key, params string[] given)
    {
        var outcome = Asked.Run(form, given);
        Assert.Null(outcome.Answer);
        Assert.Contains(outcome.Faults, fault => fault.Field == key);
    }
}
