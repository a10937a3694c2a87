using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>How a solid top is fastened so that it can move.</summary>
internal static class TopFastening
{
    /// <summary>How far a fastener must travel.</summary>
    public static readonly SourceNote TravelRule = new(
        "Wood Handbook, FPL-GTR-190, Eq. 13-2, for the distance from the line that stays put",
        Certainty.Read
    );

    /// <summary>Where fasteners sit.</summary>
    public static readonly SourceNote SpacingRule = new(
        "A trade magazine: the first about 2 in from the corner, the others about 20 in apart",
        Certainty.Read
    );

    /// <summary>How high the groove for clips is cut.</summary>
    public static readonly SourceNote ClipRule = new(
        "A trade magazine: groove lower than the clip's offset by 1/32 in, so that the clip draws the top down",
        Certainty.Read
    );

    private static readonly Length FromCorner = Length.FromInches(2);
    private static readonly Length Apart = Length.FromInches(20);
    private static readonly Length Draw = Length.FromInches(1m / 32);

    /// <summary>Change for each percent of moisture, across the grain.</summary>
    public static Working<double> Coefficient(Shrinkage row, Sawn sawn)
    {
        var value = sawn switch
        {
            Sawn.Flat => row.TangentialCoefficient,
            Sawn.Quarter => row.RadialCoefficient,
            // How the rings lie is mixed: the one that moves more is on the safe side.
            _ => Math.Max(row.TangentialCoefficient, row.RadialCoefficient),
        };
        return Working.Looked("Coefficient", value, QuantityKind.Bare, 5, row.CoefficientSource);
    }

    /// <summary>Travel at the fastener that is farthest from the fixed line.</summary>
    public static Working<Length> Travel(
        string name,
        Working<Length> distance,
        Working<double> coefficient,
        Working<double> change
    )
    {
        var travel = Length.FromTicks((long)Math.Ceiling(distance.Value.Ticks * coefficient.Value * change.Value));
        return Working.Of(
            name,
            travel,
            new FineLengthFigure(travel),
            "{distance} × {coefficient} × {change}",
            TravelRule,
            ("distance", distance),
            ("coefficient", coefficient),
            ("change", change)
        );
    }

    /// <summary>Shortest slot in which a screw travels both ways.</summary>
    public static Working<Length> Slot(Working<Length> shank, Working<Length> swells, Working<Length> shrinks)
    {
        var slot = shank.Value + swells.Value + shrinks.Value;
        return Working.Of(
            "Slot, at least long",
            slot,
            new FineLengthFigure(slot),
            "{shank} + {swells} + {shrinks}",
            Working.Geometry,
            ("shank", shank),
            ("swells", swells),
            ("shrinks", shrinks)
        );
    }

    /// <summary>A slot to the next mark of a rule.</summary>
    public static Working<Length> Cut(Working<Length> slot, LengthUnit unit) =>
        Working.Of("Cut the slot", RuleMarks.Up(slot.Value, unit), "{slot}, to the mark above", Working.Geometry, ("slot", slot));

    /// <summary>Fasteners along one rail of the frame, from its end.</summary>
    public static Working<ImmutableArray<Length>> Places(string name, Working<Length> rail)
    {
        ImmutableArray<Length> places =
            rail.Value <= FromCorner * 4 ? [Length.FromTicks(rail.Value.Ticks / 2)] : Along(rail.Value);
        return Working.Of(
            name,
            places,
            new LengthsFigure(places, 16),
            "2 in from each corner of {rail}, at most 20 in apart",
            SpacingRule,
            ("rail", rail)
        );
    }

    /// <summary>Top edge of the groove for clips, from the top of the rail.</summary>
    public static Working<Length> ClipGroove(Working<Length> offset) =>
        Working.Of("Groove from the top of the rail", offset.Value + Draw, "{offset} + 1/32 in", ClipRule, ("offset", offset));

    private static ImmutableArray<Length> Along(Length rail)
    {
        var span = rail - (FromCorner * 2);
        var gaps = (int)((span - Length.FromTicks(1)) / Apart) + 1;
        return [.. Enumerable.Range(0, gaps + 1).Select(i => FromCorner + Length.FromTicks(span.Ticks * i / gaps))];
    }
}
