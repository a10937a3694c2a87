using System.Collections.Immutable;
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
/// <remarks>
/// From 6 to 14% the handbook's Eq. 13-2 holds, outside of that Eq. 13-3. The moisture is followed from one to the other, each
/// stretch by its own equation on the width reached by then, and Eq. 13-3 is written with the coefficient of Eq. 13-2 (C = S ÷
/// (3000 − 20 S) turned round), so that nothing jumps where the stretches meet.
/// </remarks>
public static class Movement
{
    /// <summary>For 6 to 14%.</summary>
    public static readonly SourceNote Linear = new("Wood Handbook, FPL-GTR-190, Eq. 13-2, for 6 to 14% moisture", Certainty.Read);

    /// <summary>For wider ranges.</summary>
    public static readonly SourceNote Wide = new(
        "Wood Handbook, FPL-GTR-190, Eq. 13-3, with the shrinkage that stands behind the coefficient; formula from memory, "
            + "confirmed by its table of coefficients",
        Certainty.FromMemory
    );

    /// <summary>When a fixed fastening is safe.</summary>
    public static readonly SourceNote FixedRule = new(
        "Common practice: more than about 1/16 in of movement needs slots",
        Certainty.CommonPractice
    );

    private const string Name = "Change in width";
    private const double Low = 6;
    private const double High = 14;
    private const double Agreeing = 0.03;

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
        var value = Mix(sawn, row.RadialCoefficient, row.TangentialCoefficient);
        var coefficient = Working.Looked("Coefficient", value, QuantityKind.Bare, 5, row.CoefficientSource);
        var full = row.Saturation;
        var (start, end) = (Capped(from, full), Capped(to, full));
        var seams = Seams(start.Value, end.Value);
        var change = seams.IsEmpty
            ? Stretch(Name, width, coefficient, start, end)
            : Joined(width, coefficient, start, end, seams);
        return change with
        {
            OutsideRange =
                Math.Max(from.Value, to.Value) > full
                    ? FormattableString.Invariant($"above {full}% this wood hardly moves: only what is below counts")
                    : null,
        };
    }

    /// <summary>What the other table of the handbook, the shrinkage from green to ovendry, makes of it; null where both tables
    /// agree on the wood within 3%.</summary>
    /// <inheritdoc cref="Change" path="/param"/>
    public static Working<Length>? ByShrinkage(
        Shrinkage row,
        Working<Length> width,
        Working<double> from,
        Working<double> to,
        Sawn sawn
    )
    {
        ArgumentNullException.ThrowIfNull(row);
        var other = row with
        {
            RadialCoefficient = Coefficient(row.Radial, row.Saturation),
            TangentialCoefficient = Coefficient(row.Tangential, row.Saturation),
            CoefficientSource = row.ShrinkageSource,
        };
        var ratio =
            Mix(sawn, other.RadialCoefficient, other.TangentialCoefficient)
            / Mix(sawn, row.RadialCoefficient, row.TangentialCoefficient);
        return Math.Abs(ratio - 1) > Agreeing ? Change(other, width, from, to, sawn) : null;
    }

    /// <summary>True when a board may be fastened so that it cannot move.</summary>
    public static bool IsFixedSafe(Length change) => Math.Abs(change.Ticks) <= Safe.Ticks;

    private static Working<double> Capped(Working<double> moisture, double full) =>
        moisture.Value <= full
            ? moisture
            : Working.Of(
                "Moisture that counts",
                full,
                QuantityKind.Percent,
                0,
                "{moisture}, at most the " + FormattableString.Invariant($"{full}%") + " below which this wood moves",
                Wide,
                ("moisture", moisture)
            );

    // Where the equation changes on the way, in the order of the way.
    private static ImmutableArray<double> Seams(double from, double to)
    {
        var seams = new[] { Low, High }.Where(seam => Math.Min(from, to) < seam && seam < Math.Max(from, to));
        return [.. from < to ? seams : seams.Reverse()];
    }

    private static Working<Length> Stretch(
        string name,
        Working<Length> width,
        Working<double> coefficient,
        Working<double> from,
        Working<double> to
    )
    {
        var isLinear = Math.Min(from.Value, to.Value) >= Low && Math.Max(from.Value, to.Value) <= High;
        var share = (to.Value - from.Value) / (isLinear ? 1 / coefficient.Value : (1 / coefficient.Value) - 10 + from.Value);
        var change = Length.FromTicks((long)Math.Round(width.Value.Ticks * share));
        return Working.Of(
            name,
            change,
            new FineLengthFigure(change),
            isLinear
                ? "{width} × {coefficient} × ({to} − {from})"
                : "{width} × ({to} − {from}) ÷ (1 ÷ {coefficient} − 10 + {from})",
            isLinear ? Linear : Wide,
            ("width", width),
            ("coefficient", coefficient),
            ("to", to),
            ("from", from)
        );
    }

    private static Working<Length> Joined(
        Working<Length> width,
        Working<double> coefficient,
        Working<double> from,
        Working<double> to,
        ImmutableArray<double> seams
    )
    {
        var (reached, start, stretches) = (width, from, new List<(string Key, Working Input)>());
        foreach (
            var end in seams
                .Select(seam => Working.Looked("Moisture in between", seam, QuantityKind.Percent, 0, Linear))
                .Append(to)
        )
        {
            var name = FormattableString.Invariant($"Change from {start.Value:0.#} to {end.Value:0.#}%");
            var stretch = Stretch(name, reached, coefficient, start, end);
            stretches.Add(("stretch" + stretches.Count, stretch));
            reached = Working.Of(
                FormattableString.Invariant($"Width at {end.Value:0.#}%"),
                reached.Value + stretch.Value,
                "{width} + {change}",
                Working.Geometry,
                ("width", reached),
                ("change", stretch)
            );
            start = end;
        }

        var change = reached.Value - width.Value;
        var template = string.Join(" + ", stretches.Select(stretch => "{" + stretch.Key + "}"));
        return Working.Of(Name, change, new FineLengthFigure(change), template, Linear.And(Wide), [.. stretches]);
    }

    // The handbook's relation of its two tables, at 10% moisture: C = S ÷ (100 F − (F − 10) S).
    private static double Coefficient(double shrinkage, double full) => shrinkage / ((100 * full) - ((full - 10) * shrinkage));

    private static double Mix(Sawn sawn, double radial, double tangential) =>
        sawn switch
        {
            Sawn.Flat => tangential,
            Sawn.Quarter => radial,
            _ => (radial + tangential) / 2,
        };
}
