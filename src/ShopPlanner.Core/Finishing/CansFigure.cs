using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Finishing;

/// <summary>Finish as it is bought: whole quarts and gallons, or half liters.</summary>
/// <param name="Litres">That are wanted.</param>
public sealed record CansFigure(double Litres) : Figure
{
    private const double Quart = 3.785411784 / 4;

    // What sums of parts leave behind must not buy a can.
    private const double Noise = 1e-9;

    /// <inheritdoc />
    public override string Text(LengthUnit unit) =>
        unit == LengthUnit.Inch ? Customary : Number(unit)!.Value.ToString("0.#", CultureInfo.InvariantCulture) + " L";

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => QuantityKind.Liquid.Name(unit);

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) =>
        unit == LengthUnit.Inch ? Quarts / 4.0 : Math.Max(1, Math.Ceiling((Litres * 2) - Noise)) / 2;

    // Three quarts are dearer than a gallon.
    private int Quarts
    {
        get
        {
            var quarts = Math.Max(1, (int)Math.Ceiling((Litres / Quart) - Noise));
            return quarts % 4 == 3 ? quarts + 1 : quarts;
        }
    }

    private string Customary =>
        (Quarts / 4, Quarts % 4) switch
        {
            (var gallons, 0) => $"{gallons} gal",
            (0, var quarts) => $"{quarts} qt",
            var (gallons, quarts) => $"{gallons} gal and {quarts} qt",
        };
}
