using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Angles;

/// <summary>Tapers, by what comes off over a length.</summary>
internal static class Tapers
{
    private static readonly Length Foot = Length.FromInches(12);

    /// <summary>The angle of the cut.</summary>
    public static Working<double> Angle(Working<Length> offset, Working<Length> length)
    {
        var degrees = Math.Atan2(offset.Value.Ticks, length.Value.Ticks) * 180 / Math.PI;
        return Working.Of(
            "Taper",
            degrees,
            new AngleFigure(degrees),
            "arctan of {offset} ÷ {length}",
            Working.Geometry,
            ("offset", offset),
            ("length", length)
        );
    }

    /// <summary>What comes off over another length, such as a jig's or a foot.</summary>
    public static Working<Length> Over(string name, Working<Length> offset, Working<Length> length, Working<Length> other)
    {
        var value = Length.FromTicks((long)Math.Round((double)offset.Value.Ticks * other.Value.Ticks / length.Value.Ticks));
        return Working.Of(
            name,
            value,
            new FineLengthFigure(value),
            "{offset} × {other} ÷ {length}",
            Working.Geometry,
            ("offset", offset),
            ("other", other),
            ("length", length)
        );
    }

    /// <summary>A foot.</summary>
    public static Working<Length> InAFoot(Working<Length> offset, Working<Length> length) =>
        Over("Taper in 12 in", offset, length, Working.Looked("One foot", Foot, new LengthFigure(Foot), Working.Geometry));

    /// <summary>Length of the cut.</summary>
    public static Working<Length> Cut(Working<Length> offset, Working<Length> length)
    {
        var (o, l) = ((double)offset.Value.Ticks, (double)length.Value.Ticks);
        return Working.Of(
            "Length of the cut",
            Length.FromTicks((long)Math.Round(Math.Sqrt((o * o) + (l * l)))),
            "√({offset}² + {length}²)",
            Working.Geometry,
            ("offset", offset),
            ("length", length)
        );
    }

    /// <summary>What is left at the narrow end.</summary>
    public static Working<Length> Narrow(Working<Length> start, Working<Length> offset, int faces) =>
        Working.Of(
            "Narrow end",
            start.Value - (offset.Value * faces),
            faces == 1 ? "{start} − {offset}" : "{start} − 2 × {offset}",
            Working.Geometry,
            ("start", start),
            ("offset", offset)
        );
}
