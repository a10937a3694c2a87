using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>Dowels in a joint.</summary>
/// <param name="Diameter">Of the dowel.</param>
/// <param name="DowelLength">Of the dowel.</param>
/// <param name="HoleDepth">In each edge or end.</param>
/// <param name="FaceDepth">In a face; null where both holes are in edges or ends.</param>
/// <param name="Places">Centres from one end of the joint.</param>
public sealed record Dowels(
    Working<Length> Diameter,
    Working<Length> DowelLength,
    Working<Length> HoleDepth,
    Working<Length>? FaceDepth,
    Working<ImmutableArray<Length>> Places
)
{
    /// <summary>Diameter.</summary>
    public static readonly SourceNote DiameterRule = new(
        "Common practice: a third to a half of the thinner piece",
        Certainty.CommonPractice
    );

    /// <summary>Length.</summary>
    public static readonly SourceNote LengthRule = new(
        "Common practice: about five diameters; Carpentry and Woodwork (1910s) shows one, 3/8 in and 2 in long",
        Certainty.CommonPractice
    );

    /// <summary>Spacing and depth.</summary>
    public static readonly SourceNote SpacingRule = new(
        "Common practice: 4 to 6 in apart, 1 1/2 to 2 in from the ends, holes 1/16 in deeper than half the dowel",
        Certainty.CommonPractice
    );

    /// <summary>Depth in a face.</summary>
    public static readonly SourceNote FaceRule = new(
        "Common practice: stop 1/8 in short of the far face, and let the dowel in by at least its diameter",
        Certainty.CommonPractice
    );

    private static readonly ImmutableArray<Length> Rods =
    [
        .. new[] { "3/16", "1/4", "5/16", "3/8", "7/16", "1/2", "5/8", "3/4", "7/8", "1" }.Select(Inches.Of),
    ];

    private static readonly Length Deeper = Inches.Of("1/16");
    private static readonly Length LeftOfFace = Inches.Of("1/8");
    private static readonly Length Step = Inches.Of("1/4");

    /// <summary>The rod nearest to two fifths of a piece; null where none is between a third and a half of it.</summary>
    /// <param name="thickness">Of the thinner piece.</param>
    public static Length? Rod(Length thickness)
    {
        var fitting = Rods.Where(rod => rod * 2 <= thickness && rod * 3 >= thickness).ToList();
        return fitting.Count == 0 ? null : fitting.MinBy(one => Math.Abs((one.Ticks * 5) - (thickness.Ticks * 2)));
    }

    /// <summary>The shortest joint that leaves half a diameter of wood on each side of one dowel.</summary>
    public static Length Narrowest(Length rod) => rod * 2;

    /// <summary>The thinnest face that holds a dowel by its diameter without the hole coming through.</summary>
    public static Length ThinnestFace(Length rod) => rod + Deeper + LeftOfFace;

    /// <summary>Dowels for a joint.</summary>
    /// <param name="thickness">Of the thinner piece: one that has a <see cref="Rod"/>.</param>
    /// <param name="width">Length of the joint along which dowels stand, at least <see cref="Narrowest"/>.</param>
    /// <param name="face">Thickness of the piece that is drilled in its face, at least <see cref="ThinnestFace"/>; null where
    /// both are drilled in edges or ends.</param>
    public static Dowels Of(Working<Length> thickness, Working<Length> width, Working<Length>? face)
    {
        var rod = Rod(thickness.Value)!.Value;
        var diameter = Working.Of(
            "Diameter",
            rod,
            "the rod nearest to 2/5 of {thickness}",
            DiameterRule,
            ("thickness", thickness)
        );
        var steps = ((rod.Ticks * 5) + Step.Ticks - 1) / Step.Ticks;
        var dowel = Working.Of(
            "Length of the dowel",
            Step * steps,
            "5 × {diameter}, rounded up to the next 1/4 in",
            LengthRule,
            ("diameter", diameter)
        );
        var flat = face is null ? null : InFace(dowel, face);
        return new(diameter, dowel, flat is null ? Half(dowel) : Rest(dowel, flat), flat, Centres(width, rod));
    }

    private static Working<Length> Half(Working<Length> dowel) =>
        Working.Of(
            "Depth of each hole",
            Length.FromTicks(dowel.Value.Ticks / 2) + Deeper,
            "{dowel} ÷ 2 + 1/16 in",
            SpacingRule,
            ("dowel", dowel)
        );

    private static Working<Length> InFace(Working<Length> dowel, Working<Length> face) =>
        Working.Of(
            "Hole in the face, deep",
            Length.Min(Half(dowel).Value, face.Value - LeftOfFace),
            "{dowel} ÷ 2 + 1/16 in, at most {face} − 1/8 in",
            FaceRule,
            ("dowel", dowel),
            ("face", face)
        );

    private static Working<Length> Rest(Working<Length> dowel, Working<Length> flat) =>
        Working.Of(
            "Hole in the edge or end, deep",
            dowel.Value - flat.Value + (Deeper * 2),
            "{dowel} − ({face} − 1/16 in) + 1/16 in",
            FaceRule,
            ("dowel", dowel),
            ("face", flat)
        );

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
