using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>An amount of the builder's own currency, shown to the hundredth: <c>32.50</c>.</summary>
/// <param name="Amount">In units of the currency.</param>
public sealed record PriceFigure(double Amount) : Figure
{
    /// <inheritdoc />
    public override string Text(LengthUnit unit) =>
        Math.Round(Amount, 2, MidpointRounding.AwayFromZero).ToString("0.00", CultureInfo.InvariantCulture);

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => "";

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => Amount;
}
