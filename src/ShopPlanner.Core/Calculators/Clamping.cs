using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>The clamps of a glue-up.</summary>
/// <param name="Asked">What they were worked out from.</param>
/// <param name="Strip">Width of each jointed strip.</param>
/// <param name="Spacing">From clamp to clamp, at most.</param>
/// <param name="Clamps">How many.</param>
/// <param name="AreWeak">Whether it is their force that makes them so many.</param>
internal sealed record Clamping(
    GlueUpAsked Asked,
    Working<Length> Strip,
    Working<Length> Spacing,
    Working<double> Clamps,
    bool AreWeak
)
{
    /// <summary>The most that are told.</summary>
    public const int Most = 200;

    // Fewer would let the strips swing.
    private const int Fewest = 2;

    /// <summary>The least force that each clamp must press with, newtons.</summary>
    public Working<double> Least { get; } = ForceOf("least", Asked.Pressure.Least, Asked, Clamps, true);

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
            ForceOf("most", Asked.Pressure.Most, Asked, Clamps, false),
        ];

    /// <summary>Whether fewer clamps are at hand than are wanted.</summary>
    public bool IsShort => Asked.Clamps < Clamps.Value;

    /// <summary>What to do with too few clamps.</summary>
    public string Shortage
    {
        get
        {
            var have = Asked.Clamps!.Value;
            var stronger = AreWeak ? " or stronger ones" : "";
            var enough = EnoughFor(have) is { } length
                ? $" Your {have} are enough for a panel up to {LengthFormat.WithUnit(length, Asked.Unit, 16)} long."
                : "";
            return $"{have} of {Clamps.Value:0} clamps on hand. Get more clamps{stronger}, or glue up a shorter panel."
                + $"{enough} Neither stages nor cauls add force.";
        }
    }

    public static Clamping Of(GlueUpAsked asked, Working<Length> strip)
    {
        var spacing = GlueUp.Spacing(strip, asked.Caul);
        var clamps = GlueUp.Clamps(asked.Length, spacing);
        var total = GlueUp.Total(asked.Pressure.Least, asked.Length, asked.Thickness);
        return asked.ClampForce is { } each && GlueUp.ClampsByForce(total, each) is { } strong && strong.Value > clamps.Value
            ? new(asked, strip, spacing, strong, true)
            : new(asked, strip, spacing, clamps, false);
    }

    // The longest finished panel that so many clamps press, down to a mark of the rule; null where there is none.
    private Length? EnoughFor(int have)
    {
        if (have < Fewest)
            return null;
        var rough = Spacing.Value * have;
        if (Asked.ClampForce is { } each)
        {
            var perMillimetre = Asked.Pressure.Least.Value * (double)Asked.Thickness.Value.ToMillimetres();
            rough = Length.Min(rough, Length.FromMillimetres((decimal)(each.Value * have / perMillimetre)));
        }

        var finished = RuleMarks.Down(rough - Asked.Oversize, Asked.Unit);
        return finished.IsPositive ? finished : null;
    }

    private static Working<double> ForceOf(
        string which,
        Working<double> pressure,
        GlueUpAsked asked,
        Working<double> clamps,
        bool isLeast
    )
    {
        var force = GlueUp.Force(pressure, asked.Length, asked.Thickness, clamps).Named("Force of each clamp, " + which);
        return isLeast ? force.Shown(new QuantityFigure(force.Value, QuantityKind.Force, 0) { IsLeast = true }) : force;
    }
}
