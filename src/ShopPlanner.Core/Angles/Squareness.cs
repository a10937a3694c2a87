using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Angles;

/// <summary>Whether four sides are square, by their diagonals.</summary>
internal static class Squareness
{
    /// <summary>What is square enough.</summary>
    public static readonly SourceNote Tolerance = new(
        "PS 1-19, squareness of plywood: 1/64 in for each foot of the longest edge",
        Certainty.Quoted
    );

    // 1/64 in for each 12 in.
    private const int TolerancePart = 64 * 12;

    /// <summary>The diagonal of a rectangle.</summary>
    public static Working<Length> Diagonal(Working<Length> width, Working<Length> length)
    {
        var (a, b) = ((double)width.Value.Ticks, (double)length.Value.Ticks);
        return Working.Of(
            "Each diagonal when square",
            Length.FromTicks((long)Math.Round(Math.Sqrt((a * a) + (b * b)))),
            "√({width}² + {length}²)",
            Working.Geometry,
            ("width", width),
            ("length", length)
        );
    }

    /// <summary>The sine of the angle by which the corners are off: (d₁² − d₂²) ÷ (4 × width × length).</summary>
    public static double Sine(Length width, Length length, Length first, Length second)
    {
        double Square(Length one) => (double)one.Ticks * one.Ticks;
        return (Square(first) - Square(second)) / (4.0 * width.Ticks * length.Ticks);
    }

    /// <summary>The angle by which the corners are off, without a sign.</summary>
    public static Working<double> Off(
        Working<Length> width,
        Working<Length> length,
        Working<Length> first,
        Working<Length> second
    )
    {
        var degrees = Math.Abs(Math.Asin(Sine(width.Value, length.Value, first.Value, second.Value))) * 180 / Math.PI;
        return Working.Of(
            "Corners off square by",
            degrees,
            new AngleFigure(degrees, 3),
            "arcsin of ({first}² − {second}²) ÷ (4 × {width} × {length})",
            Working.Geometry,
            ("first", first),
            ("second", second),
            ("width", width),
            ("length", length)
        );
    }

    /// <summary>What a side is off at its end.</summary>
    public static Working<Length> Over(string name, Working<Length> side, Working<double> off)
    {
        var ticks = side.Value.Ticks * Math.Tan(off.Value * Math.PI / 180);
        var over = Length.FromTicks((long)Math.Round(ticks));
        return Working.Of(
            name,
            over,
            new FineLengthFigure(over),
            "{side} × tan {off}",
            Working.Geometry,
            ("side", side),
            ("off", off)
        );
    }

    /// <summary>Whether a side that is off by so much counts as square.</summary>
    public static bool IsSquare(Length over, Length side) => over.Ticks * TolerancePart <= side.Ticks;
}
