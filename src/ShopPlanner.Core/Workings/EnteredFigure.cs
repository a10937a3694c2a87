using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>A length as somebody entered it: a mark of a rule; among inches a metric size as one; else a reading in decimals.
/// So 32
/// mm stays 32 mm among inches, and 0.703″ isn't told as just under a fraction.</summary>
/// <param name="Length">Exact.</param>
public sealed record EnteredFigure(Length Length) : Figure
{
    /// <inheritdoc />
    public override string Text(LengthUnit unit)
    {
        if (IsMark(unit))
            return LengthFormat.WithUnit(Length, unit);
        return IsMark(LengthUnit.Millimetre)
            ? LengthFormat.WithUnit(Length, LengthUnit.Millimetre)
            : new FineLengthFigure(Length).Text(unit);
    }

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => (double)Length.To(unit);

    private bool IsMark(LengthUnit unit) => LengthFormat.Plain(Length, unit).Remainder == Length.Zero;
}
