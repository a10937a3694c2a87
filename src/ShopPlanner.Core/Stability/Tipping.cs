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

    private static readonly Length Sinks = Length.FromInches(0.5m);

    /// <summary>Righting moment over tipping moment: below 1 it falls.</summary>
    /// <param name="depth">Of the base.</param>
    /// <param name="weight">Of the piece with what is in it and stays in, kg, taken at the middle of its depth.</param>
    /// <param name="reach">How far the open door or drawer reaches before the front.</param>
    /// <param name="openWeight">What stands out in front, kg, at half the reach.</param>
    /// <param name="leaning">Load at the end of the reach, kg.</param>
    /// <param name="carpet">True on carpet.</param>
    public static Working<double> Factor(
        Working<Length> depth,
        Working<double> weight,
        Working<Length> reach,
        Working<double> openWeight,
        Working<double> leaning,
        bool carpet
    )
    {
        var sinks = carpet ? Sinks : Length.Zero;
        var pivot = Working.Looked("Edge sinks by", sinks, new LengthFigure(sinks), carpet ? Carpet : Statics);
        var (d, r, s) = (Metres(depth.Value), Metres(reach.Value), Metres(sinks));
        var righting = weight.Value * ((d / 2) - s);
        var tipping = (openWeight.Value * ((r / 2) + s)) + (leaning.Value * (r + s));
        return Working.Of(
            "Stability factor",
            tipping > 0 ? righting / tipping : double.PositiveInfinity,
            QuantityKind.Bare,
            2,
            "{weight} × ({depth} ÷ 2 − {sinks}) ÷ ({open} × ({reach} ÷ 2 + {sinks}) + {leaning} × ({reach} + {sinks}))",
            Statics.And(Child),
            ("weight", weight),
            ("depth", depth),
            ("sinks", pivot),
            ("open", openWeight),
            ("reach", reach),
            ("leaning", leaning)
        );
    }

    private static double Metres(Length length) => (double)length.ToMillimetres() / 1000;
}
