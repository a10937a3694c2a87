using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Angles;

/// <summary>Angles at which equal sides meet: flat frames, upright boxes and everything that slopes between them.</summary>
internal static class Miters
{
    /// <summary>The formulas.</summary>
    public static readonly SourceNote Compound = new(
        "Geometry of the faces' normals: tan m = sin s × tan(180° ÷ n), sin b = cos s × sin(180° ÷ n)",
        Certainty.Derived
    );

    /// <summary>The formula for butted corners.</summary>
    public static readonly SourceNote Butted = new(
        "Geometry of the faces' normals, four sides with butted corners: tan m = sin s, sin b = sin² s",
        Certainty.Derived
    );

    /// <summary>Angle of the cut on the face, from square.</summary>
    public static Working<double> Gauge(Working<double> sides, Working<double> slope)
    {
        var degrees = Degrees(Math.Atan(Math.Sin(Radians(slope.Value)) * Math.Tan(Math.PI / sides.Value)));
        return Angle(
            "Miter gauge, off square",
            degrees,
            "arctan of sin {slope} × tan(180° ÷ {sides})",
            Compound,
            ("slope", slope),
            ("sides", sides)
        );
    }

    /// <summary>Tilt of the blade from upright, for mitered corners.</summary>
    public static Working<double> Tilt(Working<double> sides, Working<double> slope)
    {
        var degrees = Degrees(Math.Asin(Math.Cos(Radians(slope.Value)) * Math.Sin(Math.PI / sides.Value)));
        return Angle(
            "Blade tilt, from upright",
            degrees,
            "arcsin of cos {slope} × sin(180° ÷ {sides})",
            Compound,
            ("slope", slope),
            ("sides", sides)
        );
    }

    /// <summary>Angle of the cut on the face of a four-sided box with butted corners, from square.</summary>
    public static Working<double> ButtGauge(Working<double> slope) =>
        Angle(
            "Miter gauge, off square",
            Degrees(Math.Atan(Math.Sin(Radians(slope.Value)))),
            "arctan of sin {slope}",
            Butted,
            ("slope", slope)
        );

    /// <summary>Tilt of the blade for butted corners.</summary>
    public static Working<double> ButtTilt(Working<double> slope)
    {
        var sine = Math.Sin(Radians(slope.Value));
        return Angle(
            "Blade tilt, from upright",
            Degrees(Math.Asin(sine * sine)),
            "arcsin of sin² {slope}",
            Butted,
            ("slope", slope)
        );
    }

    /// <summary>Angle between two faces, inside.</summary>
    public static Working<double> Between(Working<double> sides, Working<double> slope)
    {
        var tilt = Math.Asin(Math.Cos(Radians(slope.Value)) * Math.Sin(Math.PI / sides.Value));
        return Angle(
            "Between two faces, inside",
            180 - (2 * Degrees(tilt)),
            "180° − 2 × arcsin of cos {slope} × sin(180° ÷ {sides})",
            Compound,
            ("slope", slope),
            ("sides", sides)
        );
    }

    /// <summary>Length of one side of a figure of equal sides.</summary>
    /// <param name="across">Its size.</param>
    /// <param name="sides">Three or more.</param>
    /// <param name="isCorners">Whether the size is measured over the corners (the circle around it) and not over the flats (the
    /// circle inside it).</param>
    public static Working<Length> Side(Working<Length> across, Working<double> sides, bool isCorners)
    {
        var half = Math.PI / sides.Value;
        var ticks = across.Value.Ticks * (isCorners ? Math.Sin(half) : Math.Tan(half));
        return Working.Of(
            "Length of each side",
            Length.FromTicks((long)Math.Round(ticks)),
            isCorners ? "{across} × sin(180° ÷ {sides})" : "{across} × tan(180° ÷ {sides})",
            Working.Geometry,
            ("across", across),
            ("sides", sides)
        );
    }

    private static Working<double> Angle(
        string name,
        double degrees,
        string template,
        SourceNote source,
        params (string Key, Working Input)[] inputs
    ) => Working.Of(name, degrees, new AngleFigure(degrees), template, source, inputs);

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    private static double Degrees(double radians) => radians * 180 / Math.PI;
}
