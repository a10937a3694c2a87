using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Kerf, squareness and parallelism by geometry, and sizes in both units.</summary>
public sealed class SawTests
{
    [
        Theory,
        InlineData("24", 10, "1", "12 3/4", 0.125),
        InlineData("12", 6, "1 1/2", "2 7/16", 0.09375),
        InlineData("11 1/4", 5, "2", "25/32", 0.09375),
        InlineData("48", 4, "11 7/8", "0", 0.125),
        InlineData("600 mm", 8, "50 mm", "174.4 mm", 0.12598),
        InlineData("2440 mm", 4, "600 mm", "27.2 mm", 0.12598)
    ]
    public void Kerfs_from_strips(string board, int count, string strip, string rest, double kerf) =>
        Assert.Equal(
            kerf,
            Asked.Number("kerf", "Kerf", "board=" + board, $"count={count}", "strip=" + strip, "rest=" + rest),
            0.0002
        );

    [Fact]
    public void A_board_that_is_too_short_for_its_strips_is_refused() =>
        Assert.Equal("rest", Assert.Single(Asked.Run("kerf", "board=12", "count=5", "strip=2", "rest=2").Faults).Field);

    // Each corner is off by a quarter of what the fifth strip shows: the four add up to 360°.
    [
        Theory,
        InlineData("1.250", "1.238", "24", 0.0072, 0.003, 0.00225),
        InlineData("1.015", "1.000", "20", 0.01074, 0.00375, 0.00338),
        InlineData("0.998", "1.004", "30", 0.00286, 0.0015, 0.0009)
    ]
    public void Five_cuts(string far, string near, string length, double degrees, double over, double move)
    {
        string[] given = ["far=" + far, "near=" + near, "length=" + length];
        Assert.Equal(degrees, Asked.Number("five-cuts", "Each cut off square by", given), 0.0002);
        Assert.Equal(over, Asked.Number("five-cuts", "Off over the strip's length", given), 0.0001);
        Assert.Equal(move, Asked.Number("five-cuts", "Move the fence by", given), 0.0001);
    }

    // Cuts a square four times with a fence that is off, in plain geometry, and measures the fifth strip.
    [Theory, InlineData(0.002), InlineData(-0.0015), InlineData(0.0004)]
    public void The_fifth_strip_of_cuts_at_a_known_angle_gives_the_angle_back(double off)
    {
        const double side = 20;
        // Edge 1 lies along x = 0; each new edge turns by 90° + off from the one before, and the fifth cut is edge 1 turned
        // by four times the error: over the side it wanders by four times the error.
        var (near, far) = (1.0, 1.0 - (side * Math.Tan(4 * off)));
        var given = new[] { far, near }
            .Select(width => width.ToString("0.#######", System.Globalization.CultureInfo.InvariantCulture))
            .ToList();
        var degrees = Asked.Number("five-cuts", "Each cut off square by", "far=" + given[0], "near=" + given[1], "length=20");
        Assert.Equal(Math.Abs(off), degrees * Math.PI / 180, 5e-6);
        var says = Asked.Answer("five-cuts", "far=" + given[0], "near=" + given[1], "length=20").Verdicts[0].Text;
        Assert.Contains(off > 0 ? "toward the work" : "away from the work", says, StringComparison.Ordinal);
    }

    [Theory, InlineData("6.000", "5.994", "8", 0.043), InlineData("6.010", "6.000", "9 1/2", 0.060), InlineData("6", "6", "8", 0)]
    public void Fences_off_parallel(string front, string back, string apart, double degrees) =>
        Assert.Equal(
            degrees,
            Asked.Number("parallel", "Off parallel by", "front=" + front, "back=" + back, "length=" + apart),
            0.001
        );

    [
        Theory,
        InlineData("6", "5.99", Severity.Safety),
        InlineData("6", "6", Severity.Fine),
        InlineData("6", "6.01", Severity.Fine),
        InlineData("6", "6.05", Severity.Watch)
    ]
    public void A_fence_that_closes_behind_the_blade_is_a_matter_of_safety(string front, string back, Severity severity) =>
        Assert.Equal(severity, Asked.Answer("parallel", "front=" + front, "back=" + back, "length=10").Verdicts[0].Severity);

    [Fact]
    public void The_move_over_a_longer_fence_is_larger_in_proportion() =>
        Assert.Equal(
            0.03,
            Asked.Number("parallel", "Move the back end by", "front=6", "back=5.99", "length=10", "reach=30"),
            0.0002
        );

    // Calipers read thousandths of an inch or hundredths of a millimeter: no mark of a rule is as fine.
    [
        Theory,
        InlineData("five-cuts", "far=1.250", "near=1.238", "length=24"),
        InlineData("parallel", "front=6", "back=5.994", "length=10")
    ]
    public void Caliper_readings_are_told_in_decimals(string form, params string[] given)
    {
        var steps = WorkingSteps.Of(Asked.Answer(form, given).Results).Concat(Asked.Answer(form, given).Results);
        foreach (var reading in given[..2])
        {
            var read = Asked.Inch(reading.Split('=')[1]);
            var step = steps.First(one => one is Working<Length> { Value: var value } && value == read);
            Assert.Matches(@"^\d\.\d{3}″$", step.Figure.Text(LengthUnit.Inch));
            Assert.Matches(@"^\d+\.\d{2} mm$", step.Figure.Text(LengthUnit.Millimetre));
        }

        Assert.All(
            Asked.Answer(form, given).Results.OfType<Working<Length>>(),
            one => Assert.Matches(@"^\d\.\d{3}″$", one.Figure.Text(LengthUnit.Inch))
        );
    }

    [
        Theory,
        InlineData("32 mm", "32 mm", "32 mm"),
        InlineData("1/2", "½″", "12.7 mm"),
        InlineData("0.703", "0.703″", "17.86 mm"),
        InlineData("3/4", "¾″", "19.05 mm")
    ]
    public void What_was_entered_is_told_as_it_was_read(string entered, string inches, string millimeters)
    {
        var figure = new EnteredFigure(Asked.Inch(entered));
        Assert.Equal((inches, millimeters), (figure.Text(LengthUnit.Inch), figure.Text(LengthUnit.Millimetre)));
    }

    // Cups, bits and the holes of the 32 mm system are metric in every shop.
    [
        Theory,
        InlineData("hinge-overlay", "Cup center from the door's edge", "22.5 mm"),
        InlineData("hinge-overlay", "Cup screws from the door's edge", "32 mm"),
        InlineData("hinges", "Cup center from the door's edge", "22.5 mm", "height=30", "width=15"),
        InlineData("pins", "Setback", "37 mm", "height=20"),
        InlineData("pins", "Depth of the holes", "10 mm", "height=20"),
        InlineData(
            "pins",
            "Heights of the holes",
            "152.4 mm, 184.4 mm, 216.4 mm, 248.4 mm, 280.4 mm, 312.4 mm, 344.4 mm",
            "height=20"
        )
    ]
    public void What_is_made_in_millimeters_is_told_in_them_among_inches(
        string form,
        string result,
        string told,
        params string[] given
    ) => Assert.Equal(told, Asked.Result(form, result, given).Figure.Text(LengthUnit.Inch));

    // By definition: 1 in is 25.4 mm.
    [
        Theory,
        InlineData("1/64", 0.396875),
        InlineData("3/64", 1.190625),
        InlineData("7/64", 2.778125),
        InlineData("11/64", 4.365625),
        InlineData("17/64", 6.746875),
        InlineData("23/64", 9.128125),
        InlineData("29/64", 11.509375),
        InlineData("37/64", 14.684375),
        InlineData("49/64", 19.446875),
        InlineData("63/64", 25.003125)
    ]
    public void Fractions_in_millimeters_are_exact(string fraction, double millimeters)
    {
        Assert.Equal(millimeters, Asked.Number("convert", "Millimeters", "value=" + fraction));
        Assert.Equal(millimeters / 25.4, Asked.Number("convert", "Decimal inches", "value=" + fraction), 1e-12);
    }

    [Fact]
    public void A_size_between_marks_lies_between_them()
    {
        var answer = Asked.Answer("convert", "value=18 mm", "to=16");
        Assert.Equal("just over ¹¹⁄₁₆″", answer.Results[0].Figure.Text(LengthUnit.Inch));
        Assert.Equal(
            (Asked.Inch("11/16"), Asked.Inch("3/4")),
            (
                Asked.Length("convert", "Mark below", "value=18 mm", "to=16"),
                Asked.Length("convert", "Mark above", "value=18 mm", "to=16")
            )
        );
    }
}
