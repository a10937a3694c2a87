using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>A drill bit as it is sold: a fraction of an inch, or tenths of a millimeter, which is as near as bits are
/// made.</summary>
/// <param name="Length">Its diameter, exact.</param>
public sealed record BitFigure(Length Length) : Figure
{
    /// <inheritdoc />
    public override string Text(LengthUnit unit) =>
        unit == LengthUnit.Inch ? LengthFormat.WithUnit(Length, unit) : LengthFormat.Plain(Length, unit).Text + " mm";

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => (double)Length.To(unit);
}
