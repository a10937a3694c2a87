using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Saws;

/// <summary>What measured cuts say about a saw.</summary>
internal static class SawSetup
{
    /// <summary>How five cuts multiply an error.</summary>
    public static readonly SourceNote FiveCuts = new(
        "Geometry: the corners of four cuts add up to 360°, so the fifth shows four times the error",
        Certainty.Derived
    );

    /// <summary>Error of the corner at the fence, in radians: more than zero where the kept corner is wider than
    /// square.</summary>
    /// <param name="far">Width of the strip at the end far from the fence.</param>
    /// <param name="near">Width of the strip at the fence.</param>
    /// <param name="length">Of the strip.</param>
    public static double Radians(Length far, Length near, Length length) => (near - far).Ticks / (4.0 * length.Ticks);

    /// <summary>The same in degrees, without a sign.</summary>
    public static Working<double> Corner(Working<Length> far, Working<Length> near, Working<Length> length)
    {
        var degrees = Math.Abs(Radians(far.Value, near.Value, length.Value)) * 180 / Math.PI;
        return Working.Of(
            "Each cut off square by",
            degrees,
            new AngleFigure(degrees, 4),
            "({near} − {far}) ÷ (4 × {length}) × 180° ÷ π",
            FiveCuts,
            ("near", near),
            ("far", far),
            ("length", length)
        );
    }

    /// <summary>What an error comes to over a length.</summary>
    public static Working<Length> Over(string name, double radians, Working<double> angle, Working<Length> length)
    {
        var over = Length.FromTicks((long)Math.Round(Math.Abs(radians) * length.Value.Ticks));
        return Working.Of(
            name,
            over,
            new FineLengthFigure(over),
            "{length} × tan {angle}",
            Working.Geometry,
            ("length", length),
            ("angle", angle)
        );
    }

    /// <summary>Width of one cut, from strips sawn off a board.</summary>
    public static Working<Length> Kerf(Working<Length> board, Working<double> strips, Working<Length> strip, Working<Length> rest)
    {
        var ticks = board.Value.Ticks - (strips.Value * strip.Value.Ticks) - rest.Value.Ticks;
        var kerf = Length.FromTicks((long)Math.Round(ticks / strips.Value));
        return Working.Of(
            "Kerf",
            kerf,
            new FineLengthFigure(kerf),
            "({board} − {strips} × {strip} − {rest}) ÷ {strips}",
            Working.Geometry,
            ("board", board),
            ("strips", strips),
            ("strip", strip),
            ("rest", rest)
        );
    }

    /// <summary>Angle between blade or fence and the miter slot.</summary>
    public static Working<double> Parallel(Working<Length> front, Working<Length> back, Working<Length> apart)
    {
        var degrees = Math.Atan2(Math.Abs((front.Value - back.Value).Ticks), apart.Value.Ticks) * 180 / Math.PI;
        return Working.Of(
            "Off parallel by",
            degrees,
            new AngleFigure(degrees, 3),
            "arctan of ({front} − {back}) ÷ {apart}",
            Working.Geometry,
            ("front", front),
            ("back", back),
            ("apart", apart)
        );
    }
}
