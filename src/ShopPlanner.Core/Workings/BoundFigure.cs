using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>A length of which only a bound is told: <c>more than 36″</c>.</summary>
/// <param name="Before">The words before it: <c>more than</c>.</param>
/// <param name="Bound">The bound, exact.</param>
public sealed record BoundFigure(string Before, Length Bound) : Figure
{
    /// <inheritdoc />
    public override string Text(LengthUnit unit) => Before + " " + LengthFormat.WithUnit(Bound, unit);

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => (double)Bound.To(unit);
}
