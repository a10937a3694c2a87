using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>A gap as a stack of thin spacers, all alike: playing cards as a rule.</summary>
/// <param name="Count">The whole number of them that comes nearest to the gap; none where the gap is thinner than half of
/// one.</param>
/// <param name="Thickness">Of the stack.</param>
public sealed record Shims(Working<double> Count, Working<Length> Thickness)
{
    /// <summary>How thick a card is.</summary>
    public static readonly SourceNote CardRule = new(
        "Common practice: a playing card is 0.011 to 0.012 in (0.28 to 0.30 mm) thick; measure a stack of ten",
        Certainty.CommonPractice
    );

    /// <summary>The stack for a gap.</summary>
    /// <param name="gap">Zero or more.</param>
    /// <param name="shim">Thickness of one, more than zero.</param>
    public static Shims Of(Working<Length> gap, Working<Length> shim)
    {
        var whole = ((gap.Value.Ticks * 2) + shim.Value.Ticks) / (shim.Value.Ticks * 2);
        var count = Working.Of(
            "Gap in playing cards",
            whole,
            QuantityKind.Bare,
            0,
            "{gap} ÷ {shim}, to the nearest whole",
            CardRule,
            ("gap", gap),
            ("shim", shim)
        );
        var stack = shim.Value * whole;
        return new(
            count,
            Working.Of(
                "Gap those cards set",
                stack,
                new FineLengthFigure(stack),
                "{count} × {shim}",
                CardRule,
                ("count", count),
                ("shim", shim)
            )
        );
    }
}
