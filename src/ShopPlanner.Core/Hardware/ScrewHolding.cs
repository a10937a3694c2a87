using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Hardware;

/// <summary>A wood screw as the design specification counts it.</summary>
/// <param name="Gauge">Number: 8.</param>
/// <param name="Diameter">Of the shank, inches.</param>
/// <param name="Root">Under the thread, inches.</param>
/// <param name="Yield">Bending yield strength, psi.</param>
internal sealed record HoldingScrew(int Gauge, double Diameter, double Root, double Yield);

/// <summary>What wood screws hold in side grain: allowable loads, in pounds of force.</summary>
internal static class ScrewHolding
{
    /// <summary>Allowable withdrawal.</summary>
    public static readonly SourceNote Withdrawal = new(
        "Wood Handbook (older rule): allowable withdrawal from side "
            + "grain 2,850 × gravity² × diameter, lb for each inch of thread",
        Certainty.Read
    );

    /// <summary>Withdrawal at failure.</summary>
    public static readonly SourceNote Ultimate = new(
        "Wood Handbook, Eq. 8-10: 15,700 × gravity² × diameter × length, at failure",
        Certainty.FromMemory
    );

    /// <summary>Allowable load sideways.</summary>
    public static readonly SourceNote Lateral = new(
        "The smaller of the Wood Handbook's older rule (a constant × diameter²) and the design specification's yield equations; "
            + "root diameters and yield strengths from memory",
        Certainty.FromMemory
    );

    /// <summary>Distances.</summary>
    public static readonly SourceNote Distances = new(
        "Common practice: 4 diameters from an edge, 10 from an end, always with a pilot hole",
        Certainty.CommonPractice
    );

    /// <summary>Penetration below which a screw counts for nothing sideways, in diameters.</summary>
    public const int LeastDiameters = 6;

    /// <summary>Penetration from which it counts in full.</summary>
    public const int FullDiameters = 10;

    private const double InchMillimetres = 25.4;

    /// <summary>The gauges there are figures for.</summary>
    public static readonly ImmutableArray<HoldingScrew> Screws =
    [
        new(6, 0.138, 0.113, 100_000),
        new(8, 0.164, 0.131, 90_000),
        new(10, 0.190, 0.152, 80_000),
        new(12, 0.216, 0.171, 80_000),
        new(14, 0.242, 0.196, 70_000),
    ];

    /// <summary>What one screw holds against being pulled straight out, kg.</summary>
    public static Working<double> Pull(HoldingScrew screw, Working<double> gravity, Working<Length> thread) =>
        Load(
            "One screw, pulled out",
            2850 * gravity.Value * gravity.Value * screw.Diameter * Inches(thread.Value),
            "2,850 × {gravity}² × {diameter} × {thread}, in pounds and inches",
            Withdrawal,
            ("gravity", gravity),
            ("diameter", Diameter(screw)),
            ("thread", thread)
        );

    /// <summary>What it fails at, kg.</summary>
    public static Working<double> Break(HoldingScrew screw, Working<double> gravity, Working<Length> thread) =>
        Load(
            "One screw fails at about",
            15_700 * gravity.Value * gravity.Value * screw.Diameter * Inches(thread.Value),
            "15,700 × {gravity}² × {diameter} × {thread}, in pounds and inches",
            Ultimate,
            ("gravity", gravity),
            ("diameter", Diameter(screw)),
            ("thread", thread)
        );

    /// <summary>What one screw holds sideways, kg.</summary>
    /// <param name="screw">The screw.</param>
    /// <param name="gravity">Of the wood.</param>
    /// <param name="side">Thickness of the near piece.</param>
    /// <param name="thread">In the far piece.</param>
    public static Working<double> Sideways(
        HoldingScrew screw,
        Working<double> gravity,
        Working<Length> side,
        Working<Length> thread
    )
    {
        var (near, far) = (Inches(side.Value), Inches(thread.Value));
        var byRule = Group(gravity.Value) * screw.Diameter * screw.Diameter;
        var full = Math.Min(byRule, YieldLimit.Of(screw, gravity.Value, near, far, 0));
        var diameters = far / screw.Diameter;
        var share = diameters < LeastDiameters ? 0 : Math.Min(1, diameters / FullDiameters);
        return Load(
            "One screw, sideways",
            full * share,
            "from {gravity}, {diameter}, {side} and {thread}; less under 10 diameters of thread",
            Lateral,
            ("gravity", gravity),
            ("diameter", Diameter(screw)),
            ("side", side),
            ("thread", thread)
        );
    }

    /// <summary>The same for several screws.</summary>
    public static Working<double> Times(string name, Working<double> each, Working<double> count) =>
        Working.Of(
            name,
            each.Value * count.Value,
            QuantityKind.Mass,
            0,
            "{each} × {count}",
            each.Source,
            ("each", each),
            ("count", count)
        );

    /// <summary>A least distance in diameters, up to the next mark of a rule.</summary>
    public static Working<Length> Distance(string name, HoldingScrew screw, int diameters, LengthUnit unit) =>
        Working.Of(
            name,
            RuleMarks.Up(Length.FromInches((decimal)screw.Diameter * diameters), unit),
            $"{diameters} × {{diameter}}, up to the next mark of the rule",
            Distances,
            ("diameter", Diameter(screw))
        );

    // Groups II to IV of the older rule; between two groups the lower one counts, and hardwoods count as group II.
    private static double Group(double gravity) =>
        gravity switch
        {
            >= 0.51 => 3960,
            >= 0.44 => 3240,
            _ => 2520,
        };

    private static Working<Length> Diameter(HoldingScrew screw)
    {
        var diameter = Length.FromInches((decimal)screw.Diameter);
        return Working.Looked(
            $"Shank of a #{screw.Gauge} screw",
            diameter,
            new FineLengthFigure(diameter),
            WoodScrews.DrillSource
        );
    }

    private static Working<double> Load(
        string name,
        double pounds,
        string template,
        SourceNote source,
        params (string Key, Working Input)[] inputs
    ) => Working.Of(name, QuantityKind.Mass.ToMetric(pounds, LengthUnit.Inch), QuantityKind.Mass, 1, template, source, inputs);

    private static double Inches(Length length) => (double)length.ToMillimetres() / InchMillimetres;
}
