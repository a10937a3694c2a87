using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>A shelf's bend worked out.</summary>
/// <param name="Asked">What it was worked out from.</param>
internal sealed record SagMade(SagAsked Asked)
{
    private static readonly Length LeastFeet = Length.FromTicks(1);

    private readonly Shelf shelf = Asked.Shelf;

    /// <summary>Whether it bends more than the limit in years.</summary>
    public bool IsOver => !shelf.Holds(Asked.Span.Value);

    /// <summary>Deflection in years for each foot of span.</summary>
    public Length Foot =>
        Length.FromTicks(Years.Value.Ticks * Length.TicksPerFoot / Length.Max(Asked.Span.Value, LeastFeet).Ticks);

    /// <summary>Whether it is so short for its thickness that it bends by shear as well.</summary>
    public bool IsStubby => Asked.Span.Value < Asked.Thickness.Value * 10;

    /// <summary>Deflections, the limit, and the longest span that keeps to it.</summary>
    public IEnumerable<Working?> Deflections =>
        [
            shelf.First(Asked.Span),
            shelf.ByItself(Asked.Span),
            Years,
            Years.Figure is BoundFigure ? null : PerFoot,
            Shelf.Limit(Asked.Span),
            shelf.Longest(Asked.Unit),
        ];

    private Working<Length> Years => field ??= shelf.Years(Asked.Span);

    private Working<Length> PerFoot =>
        Working.Of(
            "Sag per foot, after years",
            Foot,
            new FineLengthFigure(Foot),
            "{years} ÷ {span} in feet",
            Working.Geometry,
            ("years", Years),
            ("span", Asked.Span)
        );
}
