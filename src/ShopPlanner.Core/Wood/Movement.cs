using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Wood;

/// <summary>How the rings lie in a board.</summary>
public enum Sawn
{
    /// <summary>Rings along the width.</summary>
    Flat,

    /// <summary>Rings across the width.</summary>
    Quarter,

    /// <summary>Something between: the mean of both is taken.</summary>
    Mixed,
}

/// <summary>How a board's width changes with its moisture.</summary>
public static class Movement
{
    /// <summary>For 6 to 14%.</summary>
    public static readonly SourceNote Linear = new("Wood Handbook, FPL-GTR-190, Eq. 13-2, for 6 to 14% moisture", Certainty.Read);

    /// <summary>For wider ranges.</summary>
    public static readonly SourceNote Wide = new(
        "Wood Handbook, FPL-GTR-190, Eq. 13-3; formula from memory, confirmed by its table of coefficients",
        Certainty.FromMemory
    );

    /// <summary>When a fixed fastening is safe.</summary>
    public static readonly SourceNote FixedRule = new(
        "Common practice: more than about 1/16 in of movement needs slots",
        Certainty.CommonPractice
    );

    private const double Low = 6;
    private const double High = 14;
    private const double FibreSaturation = 30;

    // These woods begin to shrink near 22% (Wood Handbook, ch. 13).
    private const double EarlySaturation = 22;

    private static readonly string[] EarlySaturated = ["redwood-old-growth", "cedar-western-red", "cedar-northern-white"];

    private static readonly Length Safe = Length.FromInches(0.0625m);

    /// <summary>Change in width; less than zero when it shrinks.</summary>
    /// <param name="row">The wood.</param>
    /// <param name="width">Across the grain.</param>
    /// <param name="from">Moisture now, percent.</param>
    /// <param name="to">Moisture then, percent.</param>
    /// <param name="sawn">How the rings lie.</param>
    public static Working<Length> Change(
        Shrinkage row,
        Working<Length> width,
        Working<double> from,
        Working<double> to,
        Sawn sawn
    )
    {
        ArgumentNullException.ThrowIfNull(row);
        return Within(from.Value) && Within(to.Value)
            ? ByCoefficient(row, width, from, to, sawn)
            : ByShrinkage(row, width, from, to, sawn);
    }

    /// <summary>True when a board may be fastened so that it cannot move.</summary>
    public static bool IsFixedSafe(Length change) => Math.Abs(change.Ticks) <= Safe.Ticks;

    private static bool Within(double moisture) => moisture is >= Low and <= High;

    private static Working<Length> ByCoefficient(
        Shrinkage row,
        Working<Length> width,
        Working<double> from,
        Working<double> to,
        Sawn sawn
    )
    {
        var value = Mix(sawn, row.RadialCoefficient, row.TangentialCoefficient);
        var coefficient = Working.Looked("Coefficient", value, QuantityKind.Bare, 5, row.CoefficientSource);
        var change = Length.FromTicks((long)Math.Round(width.Value.Ticks * value * (to.Value - from.Value)));
        return Working.Of(
            "Change in width",
            change,
            new FineLengthFigure(change),
            "{width} × {coefficient} × ({to} − {from})",
            Linear,
            ("width", width),
            ("coefficient", coefficient),
            ("to", to),
            ("from", from)
        );
    }

    private static Working<Length> ByShrinkage(
        Shrinkage row,
        Working<Length> width,
        Working<double> from,
        Working<double> to,
        Sawn sawn
    )
    {
        var value = Mix(sawn, row.Radial, row.Tangential);
        var shrinkage = Working.Looked("Shrinkage", value, QuantityKind.Percent, 1, row.ShrinkageSource);
        var saturation = EarlySaturated.Contains(row.SpeciesId) ? EarlySaturation : FibreSaturation;
        var change = Length.FromTicks(
            (long)Math.Round(width.Value.Ticks * (to.Value - from.Value) / ((saturation * 100 / value) - saturation + from.Value))
        );
        var full = Working.Looked("Moisture at which it begins to shrink", saturation, QuantityKind.Percent, 0, Wide);
        return Working.Of(
            "Change in width",
            change,
            new FineLengthFigure(change),
            "{width} × ({to} − {from}) ÷ (100 × {full} ÷ {shrinkage} − {full} + {from})",
            Wide,
            ("width", width),
            ("to", to),
            ("from", from),
            ("full", full),
            ("shrinkage", shrinkage)
        ) with
        {
            OutsideRange =
                Math.Max(from.Value, to.Value) > saturation
                    ? FormattableString.Invariant(
                        $"above {saturation}% this wood hardly moves, and the formula no longer applies"
                    )
                    : null,
        };
    }

    private static double Mix(Sawn sawn, double radial, double tangential) =>
        sawn switch
        {
            Sawn.Flat => tangential,
            Sawn.Quarter => radial,
            _ => (radial + tangential) / 2,
        };
}
