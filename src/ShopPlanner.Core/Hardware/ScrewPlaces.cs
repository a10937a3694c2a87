using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Hardware;

/// <summary>Where screws go along a joint, so that the wood stays whole around them.</summary>
/// <param name="Gauge">Of the screws.</param>
/// <param name="Wood">Of the far piece.</param>
/// <param name="Joint">How the pieces meet.</param>
public sealed record ScrewPlaces(ScrewGauge Gauge, PilotWood Wood, ScrewJoint Joint)
{
    /// <summary>Distances in wood and plywood.</summary>
    public static readonly SourceNote WoodRule = new(
        "Common practice: with a pilot, 4 diameters from an edge and from each other, 7 from an end; at most 6 in apart",
        Certainty.CommonPractice
    );

    /// <summary>Distances in MDF.</summary>
    public static readonly SourceNote MdfRule = new(
        "A European association of MDF makers: in a face 12 mm from an edge and 25 mm from a corner, in an edge 70 mm "
            + "from a corner",
        Certainty.Read
    );

    private static readonly Length FarthestApart = Length.FromInches(6);
    private static readonly Length UsualFromEnd = Length.FromInches(1.5m);

    /// <summary>From an edge of a piece to a screw's center, at least.</summary>
    public Working<Length> FromEdge(LengthUnit unit) =>
        Wood == PilotWood.Mdf
            ? Working.Looked("Keep from an edge", RuleMarks.Up(MdfEdge, unit), Marked(MdfEdge, unit), MdfRule)
            : Diameters("Keep from an edge", 4, unit);

    /// <summary>From an end, or from a corner of MDF, to a screw's center, at least.</summary>
    public Working<Length> FromEnd(LengthUnit unit) =>
        Wood == PilotWood.Mdf
            ? Working.Looked("Keep from a corner", RuleMarks.Up(MdfCorner, unit), Marked(MdfCorner, unit), MdfRule)
            : Diameters("Keep from an end", 7, unit);

    /// <summary>Whether the joint is too narrow for the distances that even one screw wants.</summary>
    /// <param name="width">Of the joint.</param>
    public bool IsCramped(Length width) => width < FromSide * 2;

    /// <summary>Centers along the joint, from one end of it: one in the middle where two would be too near.</summary>
    /// <param name="width">Of the joint.</param>
    public Working<ImmutableArray<Length>> Along(Working<Length> width)
    {
        var wide = width.Value;
        var end = Length.Max(FromSide, Length.Min(Length.FromTicks(wide.Ticks / 4), UsualFromEnd));
        var between = wide - (end * 2);
        ImmutableArray<Length> places =
            between < Gauge.Diameter * 4
                ? [Length.FromTicks(wide.Ticks / 2)]
                : [.. Spread(end, between, 2 + (int)((between.Ticks - 1) / FarthestApart.Ticks))];
        return Working.Of(
            "Screw positions from one end",
            places,
            new LengthsFigure(places, 32),
            "along {width}, at most 6 in apart",
            Wood == PilotWood.Mdf ? MdfRule : WoodRule,
            ("width", width)
        );
    }

    private static Length MdfEdge => Length.FromMillimetres(12);

    private Length MdfCorner => Length.FromMillimetres(Joint == ScrewJoint.Edge ? 70 : 25);

    // Along a joint its ends are edges of the pieces, or corners of a sheet.
    private Length FromSide => Wood == PilotWood.Mdf ? Length.Max(MdfCorner, Gauge.Diameter * 4) : Gauge.Diameter * 4;

    private static IEnumerable<Length> Spread(Length end, Length between, int count) =>
        Enumerable.Range(0, count).Select(i => end + Length.FromTicks(between.Ticks * i / (count - 1)));

    private Working<Length> Diameters(string name, int count, LengthUnit unit)
    {
        var exact = Gauge.Diameter * count;
        var diameter = Working.Looked("Screw's diameter", Gauge.Diameter, new FineLengthFigure(Gauge.Diameter), WoodRule);
        return Working.Of(
            name,
            RuleMarks.Up(exact, unit),
            Marked(exact, unit),
            FormattableString.Invariant($"{count} × {{diameter}}, up to the next mark of the rule"),
            WoodRule,
            ("diameter", diameter)
        );
    }

    private static LengthFigure Marked(Length exact, LengthUnit unit) => new(RuleMarks.Up(exact, unit));
}
