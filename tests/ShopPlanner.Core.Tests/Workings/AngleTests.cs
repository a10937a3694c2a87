using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Squareness, tapers, miters and arcs by geometry and by old rafter tables.</summary>
public sealed class AngleTests
{
    [
        Theory,
        InlineData("18", "24", 30),
        InlineData("24", "36", 43.2666),
        InlineData("30", "84", 89.1964),
        InlineData("34 1/2", "23 1/4", 41.6030),
        InlineData("48", "96", 107.3313),
        InlineData("12", "30 1/4", 32.5432)
    ]
    // Carpentry and Woodwork: a court's corner; Handwork in Wood: the rafter table, to a twelfth of an inch.
    [
        InlineData("36 ft", "48 ft", 720),
        InlineData("12 ft", "6 ft", 161),
        InlineData("11 ft", "7 ft 4 in", 158.64),
        InlineData("7 ft", "8 ft 9 in", 134.46)
    ]
    public void Diagonals(string width, string length, double diagonal) =>
        Assert.Equal(
            diagonal,
            Asked.Number("square", "Each diagonal when square", "width=" + width, "length=" + length),
            diagonal > 130 ? 0.05 : 0.001
        );

    [
        Theory,
        InlineData("24", "36", 0.125, 0.1793, 0.1127, 0.0751),
        InlineData("48", "96", 0.125, 0.0834, 0.1398, 0.0699),
        InlineData("30", "84", 0.25, 0.2535, 0.3717, 0.1327),
        InlineData("23 1/4", "34 1/2", 0.1875, 0.2786, 0.1678, 0.1131)
    ]
    public void Diagonals_that_differ_geometry(
        string width,
        string length,
        double difference,
        double degrees,
        double overLength,
        double overWidth
    )
    {
        var diagonal = Asked.Number("square", "Each diagonal when square", "width=" + width, "length=" + length);
        string[] given =
        [
            "width=" + width,
            "length=" + length,
            "first=" + Text(diagonal + (difference / 2)),
            "second=" + Text(diagonal - (difference / 2)),
        ];
        Assert.Equal(degrees, Asked.Number("square", "Corners off square by", given), 0.001);
        Assert.Equal(overLength, Asked.Number("square", "Off over the length", given), 0.0005);
        Assert.Equal(overWidth, Asked.Number("square", "Off over the width", given), 0.0005);
    }

    [Fact]
    public void Equal_diagonals_are_square_and_one_alone_says_nothing()
    {
        var answer = Asked.Answer("square", "width=18", "length=24", "first=30", "second=30");
        Assert.Equal(0, answer.Results[0].Figure.Number(LengthUnit.Inch));
        Assert.All(answer.Verdicts, verdict => Assert.Equal(Severity.Fine, verdict.Severity));
        Assert.Equal("second", Assert.Single(Asked.Run("square", "width=18", "length=24", "first=30").Faults).Field);
    }

    [Fact]
    public void A_misread_diagonal_is_told() =>
        Assert.Contains(
            Asked.Answer("square", "width=18", "length=24", "first=31", "second=30 7/8").Verdicts,
            verdict => verdict.Text.Contains("Measure all four again", StringComparison.Ordinal)
        );

    [
        Theory,
        InlineData("1/2", "24", 1.193, 0.25),
        InlineData("3/4", "28", 1.534, 0.3214),
        InlineData("1", "27", 2.121, 0.4444),
        InlineData("7/8", "18", 2.783, 0.5833),
        InlineData("5/8", "24 1/2", 1.461, 0.3061),
        InlineData("3/16", "16", 0.671, 0.1406)
    ]
    public void Tapers(string offset, string length, double degrees, double inAFoot)
    {
        string[] given = ["offset=" + offset, "length=" + length];
        Assert.Equal(degrees, Asked.Number("taper", "Taper", given), 0.001);
        Assert.Equal(inAFoot, Asked.Number("taper", "Taper in 12 in", given), 0.0002);
    }

    [Theory, InlineData("one", "1"), InlineData("two", "1/2")]
    public void A_leg_is_narrow_by_what_came_off_its_faces(string faces, string narrow) =>
        Assert.Equal(
            Asked.Inch(narrow),
            Asked.Length("taper", "Narrow end", "offset=1/2", "length=20", "start=1 1/2", "faces=" + faces)
        );

    [
        Theory,
        InlineData(4, 5, 4.98, 44.78),
        InlineData(4, 15, 14.51, 43.08),
        InlineData(4, 30, 26.57, 37.76),
        InlineData(4, 45, 35.26, 30.00),
        InlineData(6, 10, 5.73, 29.50),
        InlineData(6, 45, 22.21, 20.70),
        InlineData(8, 20, 8.06, 21.08),
        InlineData(3, 15, 24.15, 56.77),
        InlineData(5, 10, 7.19, 35.37),
        InlineData(12, 20, 5.24, 14.08)
    ]
    public void Splayed_sides(int sides, int slope, double gauge, double tilt)
    {
        string[] given = [$"sides={sides}", $"slope={slope}"];
        Assert.Equal(gauge, Asked.Number("miter", "Miter gauge, off square", given), 0.0051);
        Assert.Equal(tilt, Asked.Number("miter", "Blade tilt, from upright", given), 0.0051);
    }

    // The angle between two faces by their normals, worked out here from the geometry alone.
    [Fact]
    public void The_tilt_is_half_of_what_two_faces_lack_of_a_straight_line()
    {
        for (var sides = 3; sides <= 16; sides++)
        for (var slope = 0; slope <= 90; slope += 7)
        {
            var (turn, lean) = (2 * Math.PI / sides, slope * Math.PI / 180);
            var cosine = (Math.Cos(lean) * Math.Cos(lean) * Math.Cos(turn)) + (Math.Sin(lean) * Math.Sin(lean));
            var between = 180 - (Math.Acos(Math.Clamp(cosine, -1, 1)) * 180 / Math.PI);
            string[] given = [$"sides={sides}", $"slope={slope}"];
            Assert.Equal(between, Asked.Number("miter", "Between two faces, inside", given), 1e-5);
            Assert.Equal((180 - between) / 2, Asked.Number("miter", "Blade tilt, from upright", given), 1e-5);
        }
    }

    [
        Theory,
        InlineData(5, 0.44),
        InlineData(10, 1.73),
        InlineData(15, 3.84),
        InlineData(20, 6.72),
        InlineData(30, 14.48),
        InlineData(45, 30.00)
    ]
    public void Butted_corners_of_a_splayed_box(int slope, double tilt) =>
        Assert.Equal(tilt, Asked.Number("miter", "Blade tilt, from upright", "corner=butt", $"slope={slope}"), 0.0051);

    [
        Theory,
        InlineData(3, 60),
        InlineData(4, 45),
        InlineData(5, 36),
        InlineData(6, 30),
        InlineData(7, 25.714),
        InlineData(8, 22.5),
        InlineData(12, 15)
    ]
    public void Flat_frames_are_cut_by_the_gauge_alone(int sides, double gauge)
    {
        string[] given = [$"sides={sides}", "slope=90"];
        Assert.Equal(gauge, Asked.Number("miter", "Miter gauge, off square", given), 0.001);
        Assert.Equal(0, Asked.Number("miter", "Blade tilt, from upright", given), 0.001);
    }

    [
        Theory,
        InlineData(6, "14", "corners", 7),
        InlineData(6, "12", "flats", 6.928),
        InlineData(8, "16", "flats", 6.627),
        InlineData(8, "12", "flats", 4.971)
    ]
    public void Sides_by_the_size_across(int sides, string across, string measure, double side) =>
        Assert.Equal(
            side,
            Asked.Number("miter", "Length of each side", $"sides={sides}", "across=" + across, "measure=" + measure),
            0.001
        );

    [Fact]
    public void Butted_corners_are_for_four_sides() =>
        Assert.Equal("corner", Assert.Single(Asked.Run("miter", "sides=6", "corner=butt").Faults).Field);

    [
        Theory,
        InlineData("24", "2", 37, 24.442, 1.8782, 1.5103, 0.8887),
        InlineData("36", "3", 55.5, 36.663, 2.8173, 2.2654, 1.3331),
        InlineData("48", "6", 51, 49.976, 5.6458, 4.5681, 2.7179),
        InlineData("60", "4 1/2", 102.25, 60.896, 4.2246, 3.3938, 1.9937),
        InlineData("17 1/2", "3/4", 51.4167, 17.586, 0.7034, 0.5635, 0.3295),
        InlineData("30", "1", 113, 30.089, 0.9378, 0.7508, 0.4386),
        InlineData("12", "6", 6, 18.850, 5.8095, 5.1962, 3.9686),
        InlineData("10", "8", 5.5625, 22.521, 7.8577, 7.4065, 6.5459)
    ]
    public void Arcs(string chord, string rise, double radius, double along, double first, double second, double third)
    {
        string[] given = ["chord=" + chord, "rise=" + rise];
        Assert.Equal(radius, Asked.Number("arc", "Radius", given), 0.001);
        Assert.Equal(along, Asked.Number("arc", "Length along the curve", given), 0.002);
        var heights = (
            (Working<ImmutableArray<Length>>)Asked.Result("arc", "Heights above the chord, from the middle out", given)
        ).Value;
        double[] expected = [(double)Asked.Inch(rise).ToInches(), first, second, third];
        // To the nearest thirty-second.
        Assert.All(heights.Zip(expected), pair => Assert.Equal(pair.Second, (double)pair.First.ToInches(), 0.0158));
    }

    [Theory, InlineData("600", "50", 925), InlineData("1000", "80", 1602.5)]
    public void Arcs_in_millimeters(string chord, string rise, double radius)
    {
        var outcome = Asked.Run(LengthUnit.Millimetre, "arc", "chord=" + chord, "rise=" + rise);
        Assert.Equal(radius, outcome.Answer!.Results[0].Figure.Number(LengthUnit.Millimetre)!.Value, 0.01);
    }

    [Fact]
    public void A_rise_beyond_all_circles_is_refused() =>
        Assert.Equal("rise", Assert.Single(Asked.Run("arc", "chord=10", "rise=21").Faults).Field);

    private static string Text(double inches) => inches.ToString("0.######", CultureInfo.InvariantCulture);
}
