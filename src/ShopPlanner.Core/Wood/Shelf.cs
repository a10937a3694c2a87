using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Wood;

/// <summary>A shelf with its load, at any span between its supports.</summary>
/// <param name="Elasticity">GPa.</param>
/// <param name="Depth">Front to back.</param>
/// <param name="Thickness">Of the shelf.</param>
/// <param name="IsFixed">Whether both ends are clamped; else they rest.</param>
/// <param name="Stiffer">Times the stiffness of the bare shelf, for an edge strip; 1 for none.</param>
/// <param name="Creep">How many times the first deflection it comes to in years.</param>
/// <param name="Load">What stands on it at a span, kg.</param>
/// <param name="Own">What it weighs itself at a span, kg; null where that is left out.</param>
public sealed record Shelf(
    Working<double> Elasticity,
    Working<Length> Depth,
    Working<Length> Thickness,
    bool IsFixed,
    Working<double> Stiffer,
    Working<double> Creep,
    Func<Working<Length>, Working<double>> Load,
    Func<Working<Length>, Working<double>>? Own
)
{
    /// <summary>The longest span that is looked at: 20 ft.</summary>
    public static readonly Length LongestSpan = Length.FromFeet(20);

    private static readonly SourceNote Tried = new(
        "Architectural Woodwork Standards 2009, 1.2.21.3: span ÷ 144, tried mark by mark with the same load",
        Certainty.Read
    );

    /// <summary>First deflection under the load.</summary>
    public Working<Length> First(Working<Length> span) => Bent(span, Load(span));

    /// <summary>First deflection under its own weight; null where that is left out.</summary>
    public Working<Length>? ByItself(Working<Length> span) =>
        Own is null ? null : Bent(span, Own(span)).Named("Sag from its own weight, at first");

    /// <summary>Deflection in years, of load and own weight.</summary>
    public Working<Length> Years(Working<Length> span)
    {
        var (metres, first, own) = (Bend(span), First(span), ByItself(span));
        (string, Working)[] inputs = own is null
            ? [("first", first), ("creep", Creep)]
            : [("first", first), ("own", own), ("creep", Creep)];
        return Working.Of(
            "Sag after years",
            Sag.Within(metres, span.Value),
            Sag.Shown(metres, span.Value),
            own is null ? "{first} × {creep}" : "({first} + {own}) × {creep}",
            Creep.Source,
            inputs
        ) with
        {
            OutsideRange = Sag.IsBeyond(metres, span.Value),
        };
    }

    /// <summary>What it may bend: span ÷ 144.</summary>
    public static Working<Length> Limit(Working<Length> span)
    {
        var limit = Length.FromTicks(span.Value.Ticks / Sag.LimitDivisor);
        return Working.Of("Limit", limit, new FineLengthFigure(limit), "{span} ÷ 144", Sag.Limit, ("span", span));
    }

    /// <summary>Whether it keeps to the limit in years.</summary>
    public bool Holds(Length span) => Bend(Working.Given("Span", span)) * Sag.LimitDivisor <= Metres(span);

    /// <summary>The longest span that keeps to the limit in years, down to a mark of the rule: 1/16 in or 1 mm.</summary>
    /// <param name="unit">Of the rule.</param>
    public Working<Length> Longest(LengthUnit unit)
    {
        const string name = "Longest span within the limit";
        var mark = RuleMarks.Up(Length.FromTicks(1), unit);
        var (holds, most) = (0L, LongestSpan / mark);
        if (Holds(mark * most))
            return Working.Looked(name, mark * most, new BoundFigure("at least", mark * most), Tried);
        for (var fails = most; fails - holds > 1; )
        {
            var middle = (holds + fails) / 2;
            (holds, fails) = Holds(mark * middle) ? (middle, fails) : (holds, middle);
        }

        if (holds == 0)
            return Working.Looked(name, Length.Zero, new BoundFigure("less than", mark), Tried);
        var span = Working.Given("Longest span", mark * holds);
        return Working.Of(
            name,
            span.Value,
            "the last mark at which {sag} is no more than {limit}",
            Tried,
            ("sag", Years(span).Named("Sag after years, at that span")),
            ("limit", Limit(span).Named("Limit at that span"))
        );
    }

    private Working<Length> Bent(Working<Length> span, Working<double> load) =>
        Sag.Deflection(Elasticity, span, Depth, Thickness, load, IsFixed, Stiffer);

    // Metres, in years.
    private double Bend(Working<Length> span)
    {
        var load = Load(span).Value + (Own?.Invoke(span).Value ?? 0);
        var ends = IsFixed ? Sag.Ends.Clamped : Sag.Ends.Resting;
        return Sag.Bend(Elasticity.Value, span.Value, Depth.Value, Thickness.Value, load, ends, Stiffer.Value) * Creep.Value;
    }

    private static double Metres(Length length) => (double)length.ToMillimetres() / 1000;
}
