using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>A length that is the same word in every shop, whatever the rest is measured in: a 35 mm bit, a 5 mm pin.</summary>
/// <param name="Length">Exact.</param>
/// <param name="Own">The unit in which it is made and sold.</param>
public sealed record OwnUnitFigure(Length Length, LengthUnit Own) : Figure
{
    /// <inheritdoc />
    public override string Text(LengthUnit unit) => LengthFormat.WithUnit(Length, Own);

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => Own == LengthUnit.Inch ? "in" : "mm";

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => (double)Length.To(Own);
}
