using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Stability;

/// <summary>Whether a standing piece tips forward when doors or drawers are open and something leans on them.</summary>
public static class Tipping
{
    /// <summary>Moments about the front edge of the base.</summary>
    public static readonly SourceNote Statics = new("Statics: moments about the front edge of the base", Certainty.Derived);

    /// <summary>A load that stands for a child on an open drawer.</summary>
    public static readonly SourceNote Child = new(
        "ASTM F2057-23 through 16 CFR 1261: a reaction of 60 lb in one of its tests, as quoted",
        Certainty.Quoted
    );

    /// <summary>Thick carpet lets the front edge sink.</summary>
    public static readonly SourceNote Carpet = new(
        "Our rule: on carpet the edge it tips over sits 1/2 in farther in",
        Certainty.CommonPractice
    );

    /// <summary>The height from which on a piece is always to be fixed to the wall (CPSC pages: clothing storage units of 27 in
    /// and more, 30 lb and more).</summary>
    public static readonly Length TallFrom = Length.FromInches(27);

    /// <summary>The height over the depth of the base from which on a piece counts as tall for its depth.</summary>
    public const double Slender = 1.5;

    private static readonly SourceNote SlenderNote = new(
        "Common practice: a case taller than one and a half times its depth is anchored to the wall",
        Certainty.CommonPractice
    );

    private static readonly Length Sinks = Length.FromInches(0.5m);

    /// <summary>The edge that a piece tips over on a floor: its front, on carpet a little behind it.</summary>
    public static Working<Length> OnFloor(bool carpet)
    {
        var sinks = carpet ? Sinks : Length.Zero;
        return Working.Looked("Edge sinks by", sinks, new LengthFigure(sinks), carpet ? Carpet : Statics);
    }

    /// <summary>Righting moment over tipping moment: below 1 it falls.</summary>
    /// <param name="depth">Of the base.</param>
    /// <param name="weight">Of the piece with what is in it and stays in, kg, taken at the middle of its depth.</param>
    /// <param name="reach">How far the open door or drawer reaches before the front.</param>
    /// <param name="openWeight">What stands out in front, kg, at half the reach.</param>
    /// <param name="leaning">Load at the end of the reach, kg.</param>
    /// <param name="inset">How far behind the front the edge lies that it tips over: <see cref="OnFloor"/>, or a toe
    /// space.</param>
    public static Working<double> Factor(
        Working<Length> depth,
        Working<double> weight,
        Working<Length> reach,
        Working<double> openWeight,
        Working<double> leaning,
        Working<Length> inset
    )
    {
        var (d, r, s) = (Metres(depth.Value), Metres(reach.Value), Metres(inset.Value));
        var righting = weight.Value * ((d / 2) - s);
        var tipping = (openWeight.Value * ((r / 2) + s)) + (leaning.Value * (r + s));
        return Working.Of(
            "Stability factor",
            tipping > 0 ? righting / tipping : double.PositiveInfinity,
            QuantityKind.Bare,
            2,
            "{weight} × ({depth} ÷ 2 − {inset}) ÷ ({open} × ({reach} ÷ 2 + {inset}) + {leaning} × ({reach} + {inset}))",
            Statics.And(Child),
            ("weight", weight),
            ("depth", depth),
            ("inset", inset),
            ("open", openWeight),
            ("reach", reach),
            ("leaning", leaning)
        );
    }

    /// <summary>Height over depth: from <see cref="Slender"/> on, someone who climbs the front pulls the piece over.</summary>
    /// <param name="height">Of the whole piece.</param>
    /// <param name="depth">Of the base.</param>
    public static Working<double> HeightToDepth(Working<Length> height, Working<Length> depth) =>
        Working.Of(
            "Height to depth",
            Metres(height.Value) / Metres(depth.Value),
            QuantityKind.Bare,
            1,
            "{height} ÷ {depth}",
            SlenderNote,
            ("height", height),
            ("depth", depth)
        );

    private static double Metres(Length length) => (double)length.ToMillimetres() / 1000;
}
