using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>Lengths that drawer slides are sold in.</summary>
public static class Slides
{
    /// <summary>Lengths sold.</summary>
    public static readonly SourceNote Lengths = new(
        "Common practice: 10 to 28 in by 2 in, or 250 to 700 mm by 50 mm; the maker's sheet comes first",
        Certainty.CommonPractice
    );

    private static readonly ImmutableArray<Length> Inches = [.. Enumerable.Range(5, 10).Select(n => Length.FromInches(2 * n))];
    private static readonly ImmutableArray<Length> Metric =
    [
        .. Enumerable.Range(5, 10).Select(n => Length.FromMillimetres(50 * n)),
    ];

    /// <summary>All lengths, the shortest first.</summary>
    /// <param name="unit">Which series.</param>
    public static ImmutableArray<Length> Sold(LengthUnit unit) => unit == LengthUnit.Inch ? Inches : Metric;

    /// <summary>The longest slide that a depth takes; null where none is so short.</summary>
    /// <param name="depth">From the back of the front to the back of the case.</param>
    /// <param name="unit">Which series.</param>
    public static Working<Length>? Longest(Working<Length> depth, LengthUnit unit)
    {
        var fitting = Sold(unit).Where(one => one <= depth.Value).ToList();
        return fitting.Count == 0
            ? null
            : Working.Of("Slide length", fitting[^1], "the longest slide within {depth}", Lengths, ("depth", depth));
    }
}
