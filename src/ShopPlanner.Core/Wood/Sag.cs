using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Wood;

/// <summary>How a shelf bends.</summary>
public static class Sag
{
    /// <summary>Beam formula.</summary>
    public static readonly SourceNote Beam = new(
        "Wood Handbook, FPL-GTR-190, Eq. 9-2 and Table 9-1, uniform load",
        Certainty.Read
    );

    /// <summary>The limit for shelves.</summary>
    public static readonly SourceNote Limit = new("Architectural Woodwork Standards 2009, 1.2.21.3: span ÷ 144", Certainty.Read);

    /// <summary>What looks straight.</summary>
    public static readonly SourceNote Fine = new("Common practice: 0.02 in a foot looks straight", Certainty.CommonPractice);

    /// <summary>Creep of solid wood, plywood, particleboard and MDF.</summary>
    public static readonly SourceNote CreepSource = new(
        "Eurocode 5, Table 3.2, indoor climate: 1.6, 1.8 and 3.25 times the first deflection",
        Certainty.FromMemory
    );

    /// <summary>The span over the limit.</summary>
    public const int LimitDivisor = 144;

    private const double Gravity = 9.80665;

    /// <summary>First deflection at mid-span under a uniform load.</summary>
    /// <param name="elasticity">GPa.</param>
    /// <param name="span">Between supports.</param>
    /// <param name="depth">Front to back.</param>
    /// <param name="thickness">Of the shelf.</param>
    /// <param name="load">All of it, kg.</param>
    /// <param name="isFixed">True where both ends are clamped, false where they rest.</param>
    /// <param name="stiffer">Times the stiffness of the bare shelf, for an edge strip; 1 for none.</param>
    public static Working<Length> Deflection(
        Working<double> elasticity,
        Working<Length> span,
        Working<Length> depth,
        Working<Length> thickness,
        Working<double> load,
        bool isFixed,
        Working<double> stiffer
    )
    {
        var metres = Bend(
            elasticity.Value,
            span.Value,
            depth.Value,
            thickness.Value,
            load.Value,
            isFixed ? Ends.Clamped : Ends.Resting,
            stiffer.Value
        );
        return Working.Of(
            "Sag at first",
            Within(metres, span.Value),
            Shown(metres, span.Value),
            (isFixed ? "1" : "5") + " ÷ 384 × {load} × {span}³ ÷ ({elasticity} × {depth} × {thickness}³ ÷ 12 × {stiffer})",
            Beam,
            ("load", load),
            ("span", span),
            ("elasticity", elasticity),
            ("depth", depth),
            ("thickness", thickness),
            ("stiffer", stiffer)
        ) with
        {
            OutsideRange = IsBeyond(metres, span.Value),
        };
    }

    /// <summary>How many times the first deflection it comes to in years.</summary>
    /// <param name="row">Null for solid wood of any kind.</param>
    public static Working<double> Creep(Strength? row)
    {
        var factor =
            row is null or { IsPanel: false } ? 1.6
            : row.Id.StartsWith("plywood", StringComparison.Ordinal) ? 1.8
            : 3.25;
        return Working.Looked("Creep factor", factor, QuantityKind.Bare, 2, CreepSource);
    }

    /// <summary>What an edge strip under the front adds: its own stiffness, as if it bent side by side with the shelf.</summary>
    /// <param name="depth">Of the shelf.</param>
    /// <param name="thickness">Of the shelf.</param>
    /// <param name="strip">Height of the strip.</param>
    /// <param name="stripThickness">Thickness of the strip, front to back.</param>
    public static Working<double> EdgeStrip(
        Working<Length> depth,
        Working<Length> thickness,
        Working<Length> strip,
        Working<Length> stripThickness
    )
    {
        double Third(Length a) => Math.Pow(Metres(a), 3);
        var shelf = Metres(depth.Value) * Third(thickness.Value);
        return Working.Of(
            "Stiffness with the edge strip, times",
            1 + (Metres(stripThickness.Value) * Third(strip.Value) / shelf),
            QuantityKind.Bare,
            2,
            "1 + {stripthickness} × {strip}³ ÷ ({depth} × {thickness}³)",
            new("Statics: strip and shelf side by side, same material; glued together they are stiffer still", Certainty.Derived),
            ("stripthickness", stripThickness),
            ("strip", strip),
            ("depth", depth),
            ("thickness", thickness)
        );
    }

    /// <summary>How the ends are held: the numerator over 384 of the beam formula.</summary>
    internal enum Ends
    {
        /// <summary>They can't turn.</summary>
        Clamped = 1,

        /// <summary>They rest on something.</summary>
        Resting = 5,
    }

    /// <summary>First deflection in metres.</summary>
    internal static double Bend(double gpa, Length span, Length depth, Length thickness, double kg, Ends ends, double stiffer)
    {
        var (l, b, t) = (Metres(span), Metres(depth), Metres(thickness));
        return (int)ends / 384.0 * kg * Gravity * l * l * l / (gpa * 1e9 * (b * t * t * t / 12 * stiffer));
    }

    /// <summary>The deflection as a length; no more than the span, beyond which nothing hangs between the supports.</summary>
    internal static Length Within(double metres, Length span) =>
        IsMoreThanSpan(metres, span) ? span : Length.FromMillimetres((decimal)metres * 1000);

    /// <summary>The deflection as it is shown.</summary>
    internal static Figure Shown(double metres, Length span) =>
        IsMoreThanSpan(metres, span) ? new BoundFigure("more than", span) : new FineLengthFigure(Within(metres, span));

    /// <summary>Why the beam formula does not hold for such a deflection; null where it does.</summary>
    internal static string? IsBeyond(double metres, Length span) =>
        metres * 10 > Metres(span)
            ? "it sags more than a tenth of its span: the formula is for small deflections, and the shelf would break"
            : null;

    private static bool IsMoreThanSpan(double metres, Length span) => metres > Metres(span);

    private static double Metres(Length length) => (double)length.ToMillimetres() / 1000;
}
