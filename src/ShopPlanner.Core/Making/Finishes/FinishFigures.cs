using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>Figures that texts of the finish name, each with its source.</summary>
public static class FinishFigures
{
    /// <summary>Room that a hand with a brush needs.</summary>
    public static readonly Working<Length> Reach = Working.Looked(
        "Room for a hand with a brush",
        Length.FromInches(2),
        new LengthFigure(Length.FromInches(2)),
        FinishSources.Habit
    );

    /// <summary>Lowest temperature for what is thinned with water.</summary>
    public static readonly Working<double> WarmForWater = Of(
        "Lowest temperature for latex",
        10,
        QuantityKind.Temperature,
        FinishSources.Warmth
    );

    /// <summary>How long it must stay so warm.</summary>
    public static readonly Working<double> StaysWarm = Of("Stays as warm for", 24, QuantityKind.Hours, FinishSources.Warmth);

    /// <summary>Lowest temperature for what is thinned with mineral spirits.</summary>
    public static readonly Working<double> WarmForOil = Of(
        "Lowest temperature for oil and alkyd",
        QuantityKind.Temperature.ToMetric(40, LengthUnit.Inch),
        QuantityKind.Temperature,
        FinishSources.Warmth
    );

    /// <summary>Grit to scuff planed softwood with before paint outdoors, the finest of the range.</summary>
    public static readonly Working<double> OutdoorGrit = Of(
        "Grit before paint outdoors",
        80,
        QuantityKind.Bare,
        FinishSources.Outdoors
    );

    /// <summary>How long oil dries before what is thinned with water goes over it.</summary>
    public static readonly Working<double> OilUnderWater = Of(
        "Oil dries before a water-based coat",
        72,
        QuantityKind.Hours,
        FinishSources.Habit
    );

    /// <summary>How long oil dries before shellac goes over it.</summary>
    public static readonly Working<double> OilUnderShellac = Of(
        "Oil dries before shellac",
        48,
        QuantityKind.Hours,
        FinishSources.OilDries
    );

    /// <summary>How long wood dries after it was wetted to raise the grain.</summary>
    public static readonly Working<double> Wetted = Of(
        "Wood dries after it was wetted",
        2,
        QuantityKind.Hours,
        FinishSources.Habit
    );

    /// <summary>How long putty or wood filler dries.</summary>
    public static readonly Working<double> PuttyDries = Of("Putty dries", 2, QuantityKind.Hours, FinishSources.Habit);

    /// <summary>How long shellac on knots dries; it is not rubbed.</summary>
    public static readonly Working<double> KnotsDry = Of("Shellac on knots dries", 2, QuantityKind.Hours, FinishSources.Habit);

    /// <summary>Finest grit that paint holds well on.</summary>
    public static readonly Working<double> FinestForPaint = Of(
        "Finest grit before paint",
        180,
        QuantityKind.Bare,
        FinishSources.Habit
    );

    /// <summary>Coarsest grit whose scratches don't show through a clear finish.</summary>
    public static readonly Working<double> CoarsestForClear = Of(
        "Coarsest last grit before a clear finish",
        180,
        QuantityKind.Bare,
        FinishSources.Habit
    );

    /// <summary>Grit to end with on wood that stays bare.</summary>
    public static readonly Working<double> BareGrit = Of("Last grit on bare wood", 220, QuantityKind.Bare, FinishSources.Habit);

    /// <summary>Most coats of one product that are planned.</summary>
    public static readonly Working<double> MostCoats = Of("Most coats", 10, QuantityKind.Bare, FinishSources.Habit);

    /// <summary>Longest wait that is taken from a can.</summary>
    public static readonly Working<double> LongestWait = Of("Longest wait", 60 * 24, QuantityKind.Hours, FinishSources.Habit);

    /// <summary>Loss in brush, tray and can.</summary>
    public static readonly Working<double> Loss = Of("Waste", 10, QuantityKind.Percent, Coats.Loss);

    /// <summary>All of them.</summary>
    public static readonly ImmutableArray<Working> All =
    [
        Reach,
        WarmForWater,
        StaysWarm,
        WarmForOil,
        OutdoorGrit,
        OilUnderWater,
        OilUnderShellac,
        Wetted,
        PuttyDries,
        KnotsDry,
        FinestForPaint,
        CoarsestForClear,
        BareGrit,
        MostCoats,
        LongestWait,
        Loss,
    ];

    private static Working<double> Of(string name, double value, QuantityKind kind, SourceNote source) =>
        Working.Looked(name, value, kind, 0, source);
}
