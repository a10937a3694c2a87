using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Angles;

/// <summary>An arc by its chord and rise.</summary>
internal static class Arcs
{
    /// <summary>Radius of the arc: the trammel's length.</summary>
    public static Working<Length> Radius(Working<Length> chord, Working<Length> rise) =>
        Working.Of(
            "Radius",
            Length.FromTicks((long)Math.Round(Exact(chord.Value, rise.Value))),
            "({chord}² ÷ 4 + {rise}²) ÷ (2 × {rise})",
            Working.Geometry,
            ("chord", chord),
            ("rise", rise)
        );

    /// <summary>Heights above the chord from the middle outward, to the nearest half mark of a rule.</summary>
    /// <param name="chord">Straight across.</param>
    /// <param name="rise">In the middle.</param>
    /// <param name="points">Equal steps from the middle to the end.</param>
    /// <param name="unit">Whose marks are meant.</param>
    public static ImmutableArray<Length> Heights(Length chord, Length rise, int points, LengthUnit unit)
    {
        var radius = Exact(chord, rise);
        return
        [
            .. Steps(chord, points)
                .Select(x => Math.Sqrt((radius * radius) - (x * x)) - (radius - rise.Ticks))
                .Select(y => RuleMarks.Nearest(Length.FromTicks((long)Math.Round(y)), unit)),
        ];
    }

    /// <summary>Where the heights are measured, from the middle.</summary>
    public static ImmutableArray<Length> Places(Length chord, int points, LengthUnit unit) =>
        [.. Steps(chord, points).Select(x => RuleMarks.Nearest(Length.FromTicks((long)Math.Round(x)), unit))];

    /// <summary>Length along the curve.</summary>
    public static Working<Length> Along(Working<Length> chord, Working<Length> rise, Working<Length> radius)
    {
        var exact = Exact(chord.Value, rise.Value);
        var half = Math.Asin(Math.Min(1, chord.Value.Ticks / (2 * exact)));
        var isMoreThanHalf = rise.Value.Ticks * 2 > chord.Value.Ticks;
        var angle = isMoreThanHalf ? Math.PI - half : half;
        return Working.Of(
            "Length along the curve",
            Length.FromTicks((long)Math.Round(2 * exact * angle)),
            isMoreThanHalf
                ? "2 × {radius} × (π − arcsin of {chord} ÷ (2 × {radius}))"
                : "2 × {radius} × arcsin of {chord} ÷ (2 × {radius})",
            Working.Geometry,
            ("radius", radius),
            ("chord", chord)
        );
    }

    private static double Exact(Length chord, Length rise)
    {
        var (c, h) = ((double)chord.Ticks, (double)rise.Ticks);
        return ((c * c / 4) + (h * h)) / (2 * h);
    }

    private static IEnumerable<double> Steps(Length chord, int points) =>
        Enumerable.Range(0, points).Select(i => chord.Ticks / 2.0 * i / points);
}
