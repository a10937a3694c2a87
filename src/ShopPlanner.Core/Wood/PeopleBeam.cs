using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Wood;

/// <summary>A slat or plank on two supports with people on it: one in the middle, or several side by side, whichever is
/// worse.</summary>
internal static class PeopleBeam
{
    /// <summary>Bending.</summary>
    public static readonly SourceNote Beam = new(
        "Wood Handbook, FPL-GTR-190, Eq. 9-2 and Table 9-1: one load in the middle, or spread over the span",
        Certainty.Read
    );

    /// <summary>Stress.</summary>
    public static readonly SourceNote Stress = new("Statics: stress = 6 × moment ÷ (width × thickness²)", Certainty.Derived);

    /// <summary>What may be asked of wood.</summary>
    public static readonly SourceNote Limit = new(
        "Common practice: a quarter of clear wood's strength where someone can be hurt, a tenth for lumber with knots "
            + "(No. 2 spruce-pine-fir: 875 psi in the design specification)",
        Certainty.CommonPractice
    );

    /// <summary>Share of the clear wood's strength that picked wood may be asked for.</summary>
    public const double Clear = 4;

    /// <summary>Share for wood with knots.</summary>
    public const double Knotty = 10;

    private const double Gravity = 9.80665;

    /// <summary>Greatest bending moment, newton meters.</summary>
    /// <param name="each">One person, kg.</param>
    /// <param name="people">How many sit side by side.</param>
    /// <param name="span">Between supports.</param>
    public static double Moment(double each, double people, Length span) =>
        each * Gravity * Metres(span) * Math.Max(1 / 4.0, people / 8);

    /// <summary>Bending stress, MPa.</summary>
    public static Working<double> Bends(
        Working<double> each,
        Working<double> people,
        Working<Length> span,
        Working<Length> width,
        Working<Length> thickness
    )
    {
        var (b, t) = (Metres(width.Value), Metres(thickness.Value));
        return Working.Of(
            "Bending stress",
            Moment(each.Value, people.Value, span.Value) * 6 / (b * t * t) / 1e6,
            QuantityKind.Pressure,
            0,
            IsSpread(people.Value)
                ? "6 × {people} × {each} × {span} ÷ 8 ÷ ({width} × {thickness}²)"
                : "6 × {each} × {span} ÷ 4 ÷ ({width} × {thickness}²)",
            Stress,
            IsSpread(people.Value)
                ? [("people", people), ("each", each), ("span", span), ("width", width), ("thickness", thickness)]
                : [("each", each), ("span", span), ("width", width), ("thickness", thickness)]
        );
    }

    /// <summary>Deflection in the middle.</summary>
    public static Working<Length> Sags(
        Working<double> each,
        Working<double> people,
        Working<double> elasticity,
        Working<Length> span,
        Working<Length> width,
        Working<Length> thickness
    )
    {
        var (l, b, t) = (Metres(span.Value), Metres(width.Value), Metres(thickness.Value));
        var share = Math.Max(1 / 48.0, people.Value * 5 / 384);
        var metres = share * each.Value * Gravity * l * l * l / (elasticity.Value * 1e9 * b * t * t * t / 12);
        var value = Length.FromMillimetres((decimal)Math.Min(metres, l) * 1000);
        return Working.Of(
            "Gives in the middle by",
            value,
            new FineLengthFigure(value),
            "{people}, each {each}, over {span} of {width} × {thickness}, {elasticity}",
            Beam,
            ("people", people),
            ("each", each),
            ("span", span),
            ("width", width),
            ("thickness", thickness),
            ("elasticity", elasticity)
        );
    }

    /// <summary>The heaviest person whom picked wood may carry, rounded down to a whole pound or kilogram, kg.</summary>
    public static Working<double> Carries(
        Bending wood,
        Working<double> people,
        Working<Length> span,
        Working<Length> width,
        Working<Length> thickness,
        LengthUnit unit
    )
    {
        var (b, t) = (Metres(width.Value), Metres(thickness.Value));
        var kilograms = Most(wood) * 1e6 * b * t * t / 6 / Moment(1, people.Value, span.Value);
        var shown = Math.Floor(QuantityKind.Mass.FromMetric(kilograms, unit));
        return Working.Of(
            IsSpread(people.Value) ? "Carries, for each person" : "Carries in the middle",
            QuantityKind.Mass.ToMetric(shown, unit),
            QuantityKind.Mass,
            0,
            "{limit} × {width} × {thickness}² ÷ 6, over {span} with {people}, rounded down",
            Limit,
            ("limit", LimitOf(wood)),
            ("width", width),
            ("thickness", thickness),
            ("span", span),
            ("people", people)
        );
    }

    /// <summary>Stress that picked wood may be asked for.</summary>
    public static Working<double> LimitOf(Bending wood)
    {
        var strength = Working.Looked(
            "Bending strength of clear " + WoodNames.InText(wood.Name),
            wood.Rupture,
            QuantityKind.Pressure,
            0,
            wood.Source
        );
        return Working.Of(
            "Most stress, picked wood",
            Most(wood),
            QuantityKind.Pressure,
            0,
            "{strength} ÷ 4",
            Limit,
            ("strength", strength)
        );
    }

    private static double Most(Bending wood) => wood.Rupture / Clear;

    // From two people on, side by side is as bad as one in the middle, and worse from three on.
    private static bool IsSpread(double people) => people >= 2;

    private static double Metres(Length length) => (double)length.ToMillimetres() / 1000;
}
