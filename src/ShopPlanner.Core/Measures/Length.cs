using System.Globalization;

namespace ShopPlanner.Core.Measures;

/// <summary>
/// A length, exact: a 64-bit count of ticks of 3.125 µm. One millimetre is 320 ticks, one inch (25.4 mm by definition) is
/// 8128 ticks and one sixty-fourth of an inch is 127 ticks, so both tenths of a millimetre and sixty-fourths of an inch are
/// whole numbers and sums never drift. The default value is zero; the order is by size. Arithmetic is checked.
/// </summary>
public readonly record struct Length : IComparable<Length>, IComparable
{
    /// <summary>Ticks in one millimetre.</summary>
    public const long TicksPerMillimetre = 320;

    /// <summary>Ticks in one inch: 25.4 mm × 320.</summary>
    public const long TicksPerInch = 8128;

    /// <summary>Ticks in one foot of twelve inches.</summary>
    public const long TicksPerFoot = 12 * TicksPerInch;

    private Length(long ticks) => Ticks = ticks;

    /// <summary>No length.</summary>
    public static Length Zero => default;

    /// <summary>The count of ticks of 3.125 µm.</summary>
    public long Ticks { get; }

    /// <summary>A length of so many ticks.</summary>
    public static Length FromTicks(long ticks) => new(ticks);

    /// <summary>A length in millimetres, to the nearest tick, half a tick away from zero.</summary>
    /// <exception cref="OverflowException">The value is outside the range of a 64-bit count of ticks.</exception>
    public static Length FromMillimetres(decimal millimetres) => FromScaled(millimetres, TicksPerMillimetre);

    /// <summary>A length in inches, to the nearest tick, half a tick away from zero.</summary>
    /// <exception cref="OverflowException">The value is outside the range of a 64-bit count of ticks.</exception>
    public static Length FromInches(decimal inches) => FromScaled(inches, TicksPerInch);

    /// <summary>Whole inches and a fraction, e.g. <c>FromInches(34, 1, 2)</c> for 34 1/2 in; to the nearest tick.</summary>
    public static Length FromInches(long whole, long numerator, long denominator) =>
        FromInches(whole + (decimal)numerator / denominator);

    /// <summary>Feet of twelve inches.</summary>
    public static Length FromFeet(decimal feet) => FromScaled(feet, TicksPerFoot);

    /// <summary>A number of the given unit.</summary>
    public static Length From(decimal value, LengthUnit unit) =>
        unit == LengthUnit.Inch ? FromInches(value) : FromMillimetres(value);

    /// <summary>The length in millimetres, exact.</summary>
    public decimal ToMillimetres() => (decimal)Ticks / TicksPerMillimetre;

    /// <summary>The length in inches, to 28 digits.</summary>
    public decimal ToInches() => (decimal)Ticks / TicksPerInch;

    /// <summary>The length in the given unit.</summary>
    public decimal To(LengthUnit unit) => unit == LengthUnit.Inch ? ToInches() : ToMillimetres();

    /// <summary>True for more than zero.</summary>
    public bool IsPositive => Ticks > 0;

    /// <inheritdoc />
    public int CompareTo(Length other) => Ticks.CompareTo(other.Ticks);

    int IComparable.CompareTo(object? obj) => obj is Length other ? CompareTo(other) : 1;

    /// <summary>The smaller of two.</summary>
    public static Length Min(Length a, Length b) => a < b ? a : b;

    /// <summary>The larger of two.</summary>
    public static Length Max(Length a, Length b) => a > b ? a : b;

    /// <summary>The sum.</summary>
    public static Length operator +(Length a, Length b) => new(checked(a.Ticks + b.Ticks));

    /// <summary>The difference, which may be less than zero.</summary>
    public static Length operator -(Length a, Length b) => new(checked(a.Ticks - b.Ticks));

    /// <summary>The opposite.</summary>
    public static Length operator -(Length a) => new(checked(-a.Ticks));

    /// <summary>So many times the length.</summary>
    public static Length operator *(Length a, long n) => new(checked(a.Ticks * n));

    /// <summary>So many times the length.</summary>
    public static Length operator *(long n, Length a) => a * n;

    /// <summary>How many times <paramref name="b"/> goes into <paramref name="a"/> whole.</summary>
    public static long operator /(Length a, Length b) => a.Ticks / b.Ticks;

    /// <summary>True when shorter.</summary>
    public static bool operator <(Length a, Length b) => a.Ticks < b.Ticks;

    /// <summary>True when longer.</summary>
    public static bool operator >(Length a, Length b) => a.Ticks > b.Ticks;

    /// <summary>True when no longer.</summary>
    public static bool operator <=(Length a, Length b) => a.Ticks <= b.Ticks;

    /// <summary>True when no shorter.</summary>
    public static bool operator >=(Length a, Length b) => a.Ticks >= b.Ticks;

    /// <summary>The millimetres with their unit, for logs and test messages; people read <see cref="LengthText"/>.</summary>
    public override string ToString() => ToMillimetres().ToString("0.######", CultureInfo.InvariantCulture) + " mm";

    private static Length FromScaled(decimal value, long ticksPerUnit) =>
        new(checked((long)Math.Round(value * ticksPerUnit, MidpointRounding.AwayFromZero)));
}
