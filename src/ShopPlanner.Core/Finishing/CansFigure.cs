using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Finishing;

/// <summary>Finish as it is bought: whole quarts and gallons, or half liters.</summary>
/// <param name="Litres">That are wanted.</param>
public sealed record CansFigure(double Litres) : Figure
{
    private const double Quart = 3.785411784 / 4;
    private const double QuarterLitre = 0.25;

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

    /// <summary>Returns the cans to ask for, the largest first: gallons and quarts, or 2.5, 1 and half liters; a half pint or
    /// 250 mL where that is enough (sizes that stores carry, common practice). They hold what <see cref="Text"/> says, so no more
    /// than a can of the least size is left over, but for three quarts, which are dearer than a gallon.</summary>
    public ImmutableArray<Can> Cans(LengthUnit unit)
    {
        if (unit == LengthUnit.Inch)
            return Litres <= (Quart / 4) + Noise ? [new("1/2 pt", 1)] : Some(new("1 gal", Quarts / 4), new("1 qt", Quarts % 4));
        var halves = (int)Math.Round(Number(unit)!.Value * 2);
        return Litres <= QuarterLitre + Noise
            ? [new("250 mL", 1)]
            : Some(new("2.5 L", halves / 5), new("1 L", halves % 5 / 2), new("500 mL", halves % 5 % 2));
    }

    private static ImmutableArray<Can> Some(params Can[] cans) => [.. cans.Where(can => can.Count > 0)];

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

/// <summary>Cans of one size.</summary>
/// <param name="Size">As on the shelf: <c>1 qt</c>.</param>
/// <param name="Count">How many.</param>
public sealed record Can(string Size, int Count);
