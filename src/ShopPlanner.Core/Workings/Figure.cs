using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>A value as it is shown: it keeps full precision and is rounded only as text.</summary>
public abstract record Figure
{
    private protected Figure() { }

    /// <summary>For reading, with its unit: <c>34 ½″</c>, <c>9.2%</c>, <c>75 lb</c>.</summary>
    /// <param name="unit">Inches stand for the customary units, millimetres for the metric ones.</param>
    public abstract string Text(LengthUnit unit);

    /// <summary>Name of the unit in which <see cref="Number"/> gives the value; empty for a bare number or words.</summary>
    public abstract string UnitName(LengthUnit unit);

    /// <summary>The value in that unit; null for words and lists.</summary>
    public abstract double? Number(LengthUnit unit);
}

/// <summary>A length.</summary>
/// <param name="Length">Exact.</param>
/// <param name="Denominator">The fraction of an inch it is shown to: 2, 4, … 64.</param>
public sealed record LengthFigure(Length Length, int Denominator = LengthFormat.FinestDenominator) : Figure
{
    /// <inheritdoc />
    public override string Text(LengthUnit unit) => LengthFormat.WithUnit(Length, unit, Denominator);

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => (double)Length.To(unit);
}

/// <summary>A small length that a rule does not show: thousandths of an inch or hundredths of a millimetre, as gauges and
/// deflections are read.</summary>
/// <param name="Length">Exact.</param>
public sealed record FineLengthFigure(Length Length) : Figure
{
    /// <inheritdoc />
    public override string Text(LengthUnit unit) =>
        unit == LengthUnit.Inch
            ? string.Create(CultureInfo.InvariantCulture, $"{Length.To(unit):0.000}″")
            : string.Create(CultureInfo.InvariantCulture, $"{Length.To(unit):0.00} mm");

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => (double)Length.To(unit);
}

/// <summary>Any other quantity.</summary>
/// <param name="Value">In the metric unit of its kind.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Digits">Decimals shown.</param>
public sealed record QuantityFigure(double Value, QuantityKind Kind, int Digits) : Figure
{
    /// <summary>Whether it is the least that will do, so that it is rounded up.</summary>
    public bool IsLeast { get; init; }

    /// <inheritdoc />
    public override string Text(LengthUnit unit)
    {
        var name = UnitName(unit);
        var number = Math.Round(
                Number(unit)!.Value,
                Digits,
                IsLeast ? MidpointRounding.ToPositiveInfinity : MidpointRounding.AwayFromZero
            )
            .ToString("0." + new string('#', Digits), CultureInfo.InvariantCulture);
        return name switch
        {
            "" => number,
            "%" => number + name,
            _ => number + " " + name,
        };
    }

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => Kind.Name(unit);

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => Kind.FromMetric(Value, unit);
}

/// <summary>Words: a yes or no, a name of a size.</summary>
/// <param name="Words">As shown.</param>
public sealed record WordFigure(string Words) : Figure
{
    /// <inheritdoc />
    public override string Text(LengthUnit unit) => Words;

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => "";

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => null;
}

/// <summary>A row of lengths: positions along an edge, from one end. Where all are alike they are told once.</summary>
/// <param name="Lengths">In order.</param>
/// <param name="Denominator">The fraction of an inch they are shown to.</param>
public sealed record LengthsFigure(ImmutableArray<Length> Lengths, int Denominator = LengthFormat.FinestDenominator) : Figure
{
    /// <summary>The unit they are made in whatever the rest is measured in; null for the unit of the rest.</summary>
    public LengthUnit? Own { get; init; }

    /// <summary>Whether a fence or stop is set to them, so that they are told as marks of a rule and sheets of paper.</summary>
    public bool AreSettings { get; init; }

    /// <inheritdoc />
    public override string Text(LengthUnit unit) =>
        Lengths.Length > 1 && Lengths.All(one => one == Lengths[0])
            ? string.Create(CultureInfo.InvariantCulture, $"{Lengths.Length} × {Told(Lengths[0], unit)}")
            : string.Join(", ", Lengths.Select(one => Told(one, unit)));

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => null;

    private string Told(Length one, LengthUnit unit) =>
        AreSettings ? SettingFigure.Of(one, Own ?? unit) : LengthFormat.WithUnit(one, Own ?? unit, Denominator);
}
