using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>The clamps of a glue-up.</summary>
/// <param name="Asked">What they were worked out from.</param>
/// <param name="Strip">Width of each jointed strip.</param>
/// <param name="Spacing">From clamp to clamp, at most.</param>
/// <param name="Clamps">How many.</param>
internal sealed record Clamping(GlueUpAsked Asked, Working<Length> Strip, Working<Length> Spacing, Working<double> Clamps)
{
    /// <summary>The least force that each clamp must press with, newtons.</summary>
    public Working<double> Least { get; } = Force("least", Asked.Pressure.Least, Asked, Clamps);

    /// <summary>Clamps, places and forces.</summary>
    public IEnumerable<Working> Results =>
        [
            Clamps,
            Spacing,
            GlueUp.Places(Asked.Length, Clamps),
            Asked.Pressure.Least,
            Asked.Pressure.Most,
            GlueUp.Total(Asked.Pressure.Least, Asked.Length, Asked.Thickness),
            Least,
            Force("most", Asked.Pressure.Most, Asked, Clamps),
        ];

    /// <summary>Whether fewer clamps are at hand than are wanted.</summary>
    public bool IsShort => Asked.Clamps < Clamps.Value;

    /// <summary>What to do with too few clamps.</summary>
    public string Shortage
    {
        get
        {
            var (have, caul) = (Asked.Clamps!.Value, WiderCaul(Asked.Clamps.Value));
            var cauls =
                have > 1 && caul > Asked.Caul.Value
                    ? $", or spread the pressure with stiff cauls at least {LengthFormat.WithUnit(caul, Asked.Unit, 16)} wide."
                    : ".";
            return $"{have} of {Clamps.Value:0} clamps on hand: glue in stages{cauls}";
        }
    }

    public static Clamping Of(GlueUpAsked asked, Working<Length> strip)
    {
        var spacing = GlueUp.Spacing(strip, asked.Caul);
        var clamps = GlueUp.Clamps(asked.Length, spacing);
        var total = GlueUp.Total(asked.Pressure.Least, asked.Length, asked.Thickness);
        if (asked.ClampForce is { } each && GlueUp.ClampsByForce(total, each) is { } strong && strong.Value > clamps.Value)
            clamps = strong;
        return new(asked, strip, spacing, clamps);
    }

    // Fewer clamps reach as far with wider cauls: each covers twice the strip and the caul together.
    private Length WiderCaul(int have) =>
        Length.FromTicks((Asked.Length.Value.Ticks + (2 * have) - 1) / (2 * have)) - Strip.Value;

    private static Working<double> Force(string which, Working<double> pressure, GlueUpAsked asked, Working<double> clamps) =>
        GlueUp.Force(pressure, asked.Length, asked.Thickness, clamps).Named("Force of each clamp, " + which);
}
