using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>A shelf's bend worked out.</summary>
/// <param name="Span">Between supports.</param>
/// <param name="First">Deflection at once.</param>
/// <param name="Creep">How many times as much it is in years.</param>
internal sealed record SagMade(Working<Length> Span, Working<Length> First, Working<double> Creep)
{
    /// <summary>Whether it bends more than the limit in years.</summary>
    public bool IsOver => Years > Limit.Value;

    /// <summary>Deflection in years for each foot of span.</summary>
    public Length Foot => Length.FromTicks((long)(Years.Ticks / Math.Max(1e-9, (double)Span.Value.ToInches() / 12)));

    /// <summary>Deflections, the limit, and the longest span that keeps to it.</summary>
    public IEnumerable<Working> Deflections => [First, LongTerm, PerFoot, Limit, Sag.LongestSpan(LongTerm, Span)];

    private Length Years => Length.FromTicks((long)Math.Min(First.Value.Ticks * Creep.Value, long.MaxValue / 4.0));

    private Working<Length> LongTerm =>
        Working.Of(
            "Sag after years",
            Years,
            new FineLengthFigure(Years),
            "{first} × {creep}",
            Creep.Source,
            ("first", First),
            ("creep", Creep)
        ) with
        {
            OutsideRange = First.OutsideRange,
        };

    private Working<Length> PerFoot =>
        Working.Of(
            "Sag per foot, after years",
            Foot,
            new FineLengthFigure(Foot),
            "{years} ÷ {span} in feet",
            Working.Geometry,
            ("years", LongTerm),
            ("span", Span)
        );

    private Working<Length> Limit =>
        Working.Of(
            "Limit",
            Length.FromTicks(Span.Value.Ticks / 144),
            new FineLengthFigure(Length.FromTicks(Span.Value.Ticks / 144)),
            "{span} ÷ 144",
            Sag.Limit,
            ("span", Span)
        );

    public static SagMade Of(SagAsked asked) =>
        new(
            asked.Span,
            Sag.Deflection(asked.Elasticity, asked.Span, asked.Depth, asked.Thickness, asked.Load, asked.IsFixed, asked.Stiffer),
            Sag.Creep(asked.Material)
        );
}
