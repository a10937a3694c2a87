using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>An angle: <c>22.5°</c>.</summary>
/// <param name="Degrees">In degrees.</param>
/// <param name="Digits">Decimals shown.</param>
public sealed record AngleFigure(double Degrees, int Digits = 2) : Figure
{
    /// <inheritdoc />
    public override string Text(LengthUnit unit) =>
        Math.Round(Degrees, Digits, MidpointRounding.AwayFromZero)
            .ToString("0." + new string('#', Digits), CultureInfo.InvariantCulture) + "°";

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => "°";

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => Degrees;
}
