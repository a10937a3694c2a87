using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>Dowels in a joint.</summary>
/// <param name="Diameter">Of the dowel.</param>
/// <param name="DowelLength">Of the dowel.</param>
/// <param name="HoleDepth">In each piece.</param>
/// <param name="Places">Centres from one end of the joint.</param>
public sealed record Dowels(
    Working<Length> Diameter,
    Working<Length> DowelLength,
    Working<Length> HoleDepth,
    Working<ImmutableArray<Length>> Places
)
{
    /// <summary>Diameter.</summary>
    public static readonly SourceNote DiameterRule = new(
        "Common practice: a third to a half of the thinner piece",
        Certainty.CommonPractice
    );

    /// <summary>Length: an example gives 2 in for 3/8 in.</summary>
    public static readonly SourceNote LengthRule = new(
        "Carpentry and Woodwork (1910s): a 3/8 in dowel 2 in long in 7/8 in oak, so somewhat over five diameters",
        Certainty.Read
    );

    /// <summary>Spacing and depth.</summary>
    public static readonly SourceNote SpacingRule = new(
        "Common practice: 4 to 6 in apart, 1 1/2 to 2 in from the ends, holes 1/16 in deeper than half the dowel",
        Certainty.CommonPractice
    );

    private static readonly ImmutableArray<Length> Rods =
    [
        .. new[] { "3/16", "1/4", "5/16", "3/8", "7/16", "1/2", "5/8", "3/4", "7/8", "1" }.Select(Inches.Of),
    ];
    private static readonly Length Deeper = Inches.Of("1/16");
    private static readonly Length Step = Inches.Of("1/4");

    /// <summary>Dowels for a joint; null where the piece is too thin for the thinnest rod.</summary>
    /// <param name="thickness">Of the thinner piece.</param>
    /// <param name="width">Length of the joint along which dowels stand.</param>
    public static Dowels? Of(Working<Length> thickness, Working<Length> width)
    {
        var fitting = Rods.Where(rod => rod * 2 <= thickness.Value && rod * 3 >= thickness.Value).ToList();
        if (fitting.Count == 0)
            return null;
        var rod = fitting.MinBy(one => Math.Abs((one.Ticks * 5) - (thickness.Value.Ticks * 2)));
        var diameter = Working.Of(
            "Diameter",
            rod,
            "the rod nearest to 2/5 of {thickness}",
            DiameterRule,
            ("thickness", thickness)
        );
        var length = Length.FromTicks(
            (rod.Ticks * 5 / Step.Ticks * Step.Ticks) + (rod.Ticks * 5 % Step.Ticks == 0 ? 0 : Step.Ticks)
        );
        var dowel = Working.Of(
            "Length of the dowel",
            length,
            "5 × {diameter}, rounded up to the next 1/4 in",
            LengthRule,
            ("diameter", diameter)
        );
        var depth = Working.Of(
            "Depth of each hole",
            Length.FromTicks(length.Ticks / 2) + Deeper,
            "{dowel} ÷ 2 + 1/16 in",
            SpacingRule,
            ("dowel", dowel)
        );
        return new(diameter, dowel, depth, Centres(width, rod));
    }

    private static Working<ImmutableArray<Length>> Centres(Working<Length> width, Length rod)
    {
        var wide = width.Value;
        var end = wide >= Inches.Of("6") ? Inches.Of("1 1/2") : Length.Max(rod, Length.FromTicks(wide.Ticks / 4));
        var count = wide < rod * 4 ? 1 : 2 + (int)Math.Max(0, ((wide - (end * 2)).Ticks - 1) / Inches.Of("6").Ticks);
        ImmutableArray<Length> places =
            count == 1
                ? [Length.FromTicks(wide.Ticks / 2)]
                : [.. Enumerable.Range(0, count).Select(i => end + Length.FromTicks((wide - (end * 2)).Ticks * i / (count - 1)))];
        return Working.Of(
            "Centers from one end",
            places,
            new LengthsFigure(places),
            "along {width}, at most 6 in apart",
            SpacingRule,
            ("width", width)
        );
    }
}
