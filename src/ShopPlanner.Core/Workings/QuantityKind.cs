using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>
/// A kind of quantity with its metric unit, in which it is kept, and its customary one. Factors are exact by definition
/// (international yard and pound agreement of 1959; the pound of force with standard gravity 9.80665 m/s²).
/// </summary>
/// <param name="Metric">Name of the metric unit.</param>
/// <param name="Customary">Name of the customary unit.</param>
/// <param name="PerCustomary">Metric units in one customary unit.</param>
/// <param name="Offset">Metric value at a customary value of zero.</param>
public sealed record QuantityKind(string Metric, string Customary, double PerCustomary, double Offset = 0)
{
    private const double Pound = 0.45359237;
    private const double Foot = 0.3048;
    private const double PoundForce = Pound * 9.80665;
    private const double Psi = PoundForce / (0.0254 * 0.0254);

    /// <summary>A bare number or ratio.</summary>
    public static readonly QuantityKind Bare = new("", "", 1);

    /// <summary>Hundredths.</summary>
    public static readonly QuantityKind Percent = new("%", "%", 1);

    /// <summary>Kilograms or pounds.</summary>
    public static readonly QuantityKind Mass = new("kg", "lb", Pound);

    /// <summary>Newtons or pounds of force.</summary>
    public static readonly QuantityKind Force = new("N", "lbf", PoundForce);

    /// <summary>Megapascals (N/mm²) or pounds of force per square inch.</summary>
    public static readonly QuantityKind Pressure = new("MPa", "psi", Psi / 1e6);

    /// <summary>Modulus of elasticity: gigapascals or millions of psi.</summary>
    public static readonly QuantityKind Modulus = new("GPa", "million psi", Psi / 1e3);

    /// <summary>Kilograms per metre or pounds per foot.</summary>
    public static readonly QuantityKind LineLoad = new("kg/m", "lb/ft", Pound / Foot);

    /// <summary>Kilograms per square metre or pounds per square foot.</summary>
    public static readonly QuantityKind AreaLoad = new("kg/m²", "lb/ft²", Pound / (Foot * Foot));

    /// <summary>Kilograms per cubic metre or pounds per cubic foot.</summary>
    public static readonly QuantityKind Density = new("kg/m³", "lb/ft³", Pound / (Foot * Foot * Foot));

    /// <summary>Square metres or square feet.</summary>
    public static readonly QuantityKind Area = new("m²", "ft²", Foot * Foot);

    /// <summary>Litres or US gallons of 231 cubic inches.</summary>
    public static readonly QuantityKind Liquid = new("L", "gal", 3.785411784);

    /// <summary>Millilitres or US fluid ounces, 128 of which are a gallon.</summary>
    public static readonly QuantityKind SmallLiquid = new("mL", "fl oz", 3785.411784 / 128);

    /// <summary>Square metres per litre or square feet per gallon.</summary>
    public static readonly QuantityKind Coverage = new("m²/L", "ft²/gal", Foot * Foot / 3.785411784);

    /// <summary>Degrees Celsius or Fahrenheit.</summary>
    public static readonly QuantityKind Temperature = new("°C", "°F", 5.0 / 9.0, -160.0 / 9.0);

    /// <summary>Hours.</summary>
    public static readonly QuantityKind Hours = new("h", "h", 1);

    /// <summary>Board feet of 144 cubic inches, in both systems.</summary>
    public static readonly QuantityKind BoardFeet = new("bd ft", "bd ft", 1);

    /// <summary>Name of the unit.</summary>
    public string Name(LengthUnit unit) => unit == LengthUnit.Inch ? Customary : Metric;

    /// <summary>A value in the metric unit, in the unit of the system.</summary>
    public double FromMetric(double value, LengthUnit unit) => unit == LengthUnit.Inch ? (value - Offset) / PerCustomary : value;

    /// <summary>A value in the unit of the system, in the metric unit.</summary>
    public double ToMetric(double value, LengthUnit unit) => unit == LengthUnit.Inch ? (value * PerCustomary) + Offset : value;
}
