using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Hardware;

/// <summary>How two pieces are screwed.</summary>
public enum ScrewJoint
{
    /// <summary>At a slant from a pocket in the near piece.</summary>
    Pocket,

    /// <summary>Through the face of the near piece into the face of the far one.</summary>
    Face,

    /// <summary>Through the face of the near piece into the edge or end of the far one.</summary>
    Edge,
}

/// <summary>Why no screw will do.</summary>
/// <param name="OfNearPiece">True where the near piece is to blame, false where the far one is.</param>
/// <param name="Reason">What is wrong with its size, and what would be right.</param>
public sealed record ScrewRefusal(bool OfNearPiece, string Reason);

/// <summary>A screw chosen for a joint.</summary>
/// <param name="Length">Length of the screw.</param>
/// <param name="Gauge">Its gauge and drills.</param>
/// <param name="Penetration">How far it goes into the far piece.</param>
public sealed record ScrewChoice(Working<Length> Length, ScrewGauge Gauge, Working<Length> Penetration)
{
    /// <summary>Wood that is left beyond the point.</summary>
    public static readonly SourceNote Beyond = new(
        "Common practice: stop at least 1/8 in short of the far face",
        Certainty.CommonPractice
    );

    /// <summary>Length of pocket screws.</summary>
    public static readonly SourceNote PocketPractice = new(
        "Common practice: length of pocket screws by the stock's thickness",
        Certainty.CommonPractice
    );

    private static readonly Length Left = Measures.Length.FromInches(0.125m);

    // A pocket screw goes in at a slant, so that less is left straight ahead than along it; sheets sold as 3/4 in take the usual
    // screw.
    private static readonly Length PocketLeft = Measures.Length.FromInches(0.0625m);
    private static readonly Length Thinnest = Inches.Of("1/2");
    private static readonly Length Wanted = Measures.Length.FromInches(1.25m);

    // Up to this thickness, the length of a pocket screw.
    private static readonly (Length To, Length Screw)[] Pockets =
    [
        (Inches.Of("5/8"), Inches.Of("1")),
        (Inches.Of("13/16"), Inches.Of("1 1/4")),
        (Inches.Of("1 1/8"), Inches.Of("1 1/2")),
        (Inches.Of("1 3/8"), Inches.Of("2")),
        (Inches.Of("1 5/8"), Inches.Of("2 1/2")),
    ];

    /// <summary>The screw for a joint.</summary>
    /// <param name="near">Thickness of the near piece.</param>
    /// <param name="into">Wood that the far piece offers in the screw's direction.</param>
    /// <param name="joint">How they meet.</param>
    /// <param name="unit">Of sizes in a refusal.</param>
    /// <returns>The choice, or the reason why no screw will do.</returns>
    public static (ScrewChoice? Choice, ScrewRefusal? Refused) Of(
        Working<Length> near,
        Working<Length> into,
        ScrewJoint joint,
        LengthUnit unit = LengthUnit.Inch
    ) => joint == ScrewJoint.Pocket ? Pocket(near, into, unit) : Through(near, into, unit);

    private static (ScrewChoice?, ScrewRefusal?) Pocket(Working<Length> near, Working<Length> into, LengthUnit unit)
    {
        if (near.Value < Thinnest)
            return (null, new(true, $"is too thin for a pocket screw: at least {Text(Thinnest, unit)}"));
        if (near.Value > Pockets[^1].To)
            return (null, new(true, $"is thicker than most pocket jigs take: at most {Text(Pockets[^1].To, unit)}"));
        var length = Pockets.First(row => near.Value <= row.To).Screw;
        var half = Measures.Length.FromTicks(length.Ticks / 2);
        if (half + PocketLeft > into.Value)
            return (
                null,
                new(
                    false,
                    $"lets a pocket screw of {Text(length, unit)} break through the far piece: at least "
                        + $"{Text(half + PocketLeft, unit)} is needed"
                )
            );
        var screw = Working.Of("Screw length", length, "by thickness {near}", PocketPractice, ("near", near));
        var depth = Working.Of("In the far piece", half, "about half of {screw}", PocketPractice, ("screw", screw));
        return (new(screw, WoodScrews.Numbered(8), depth), null);
    }

    private static (ScrewChoice?, ScrewRefusal?) Through(Working<Length> near, Working<Length> into, LengthUnit unit)
    {
        var usual = WoodScrews.Gauges.IndexOf(WoodScrews.Numbered(GaugeFor(near.Value)));
        var holding = WoodScrews
            .Gauges.SelectMany(
                (gauge, index) => gauge.Lengths.Select(length => (Gauge: gauge, Length: length, Off: index - usual))
            )
            .Where(one => one.Off is >= -1 and <= 2 && one.Length >= near.Value + Least(one.Gauge))
            .ToList();
        if (holding.Count == 0)
            return (null, new(true, TooThick(unit)));
        var fitting = holding.Where(one => one.Length + Left <= near.Value + into.Value).ToList();
        if (fitting.Count == 0)
        {
            var needed = holding.Min(one => one.Length) + Left - near.Value;
            return (
                null,
                new(
                    false,
                    $"is too thin for a screw that is sold to hold without breaking through: at least "
                        + $"{Text(needed, unit)} is needed behind {Text(near.Value, unit)}"
                )
            );
        }

        // Of two that come as near to the thread wanted the longer holds more.
        var best = fitting
            .OrderBy(one => Math.Abs((one.Length - near.Value - Wanted).Ticks))
            .ThenByDescending(one => one.Length)
            .ThenBy(one => Math.Abs(one.Off))
            .First();
        return (Chosen(near, into, best.Gauge, best.Length), null);
    }

    private static ScrewChoice Chosen(Working<Length> near, Working<Length> into, ScrewGauge gauge, Length length)
    {
        var screw = Working.Of(
            "Screw length",
            length,
            "the one sold that is nearest to {near} + 1 1/4 in of thread, at most {near} + {into} − 1/8 in",
            WoodScrews.ThreadSource.And(Beyond).And(WoodScrews.SoldSource),
            ("near", near),
            ("into", into)
        );
        var depth = Working.Of(
            "In the far piece",
            length - near.Value,
            "{screw} − {near}",
            Working.Geometry,
            ("screw", screw),
            ("near", near)
        );
        return new(screw, gauge, depth);
    }

    private static string TooThick(LengthUnit unit)
    {
        var most = WoodScrews.Gauges.Max(gauge => gauge.Lengths[^1] - Least(gauge));
        return $"is too thick for wood screws, which are sold to {Text(WoodScrews.Longest, unit)}: at most "
            + $"{Text(RuleMarks.Down(most, unit), unit)}. Bore a recess for the head, or use structural screws by "
            + "their maker's sheet";
    }

    // Common practice: with less than three diameters of thread a screw is no fastening.
    private static Length Least(ScrewGauge gauge) => gauge.Diameter * 3;

    // Common practice: the thicker the near piece, the stouter the screw.
    private static int GaugeFor(Length near) =>
        near < Inches.Of("3/8") ? 4
        : near < Inches.Of("5/8") ? 6
        : near < Inches.Of("1 1/4") ? 8
        : 10;

    // Rounded up: what is told is enough.
    private static string Text(Length length, LengthUnit unit) =>
        LengthFormat.Plain(LengthSteps.ShownUp(length, unit), unit).Text + (unit == LengthUnit.Inch ? " in" : " mm");
}
