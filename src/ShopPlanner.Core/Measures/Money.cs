using System.Globalization;

namespace ShopPlanner.Core.Measures;

/// <summary>
/// An amount of the builder's own currency, exact: a 64-bit count of ten-thousandths. The currency is a setting of the shop; no
/// amount is ever converted. The default value is nothing; the order is by amount. Arithmetic is checked.
/// </summary>
public readonly record struct Money : IComparable<Money>, IComparable
{
    /// <summary>Counts in one unit of the currency.</summary>
    public const long PerUnit = 10_000;

    private Money(long count) => Count = count;

    /// <summary>No money.</summary>
    public static Money Zero => default;

    /// <summary>The count of ten-thousandths.</summary>
    public long Count { get; }

    /// <summary>An amount of so many ten-thousandths.</summary>
    public static Money FromCount(long count) => new(count);

    /// <summary>An amount, to the nearest ten-thousandth, half away from zero.</summary>
    /// <exception cref="OverflowException">The amount is outside the range.</exception>
    public static Money From(decimal amount) => new(checked((long)Math.Round(amount * PerUnit, MidpointRounding.AwayFromZero)));

    /// <summary>The amount, exact.</summary>
    public decimal Amount => (decimal)Count / PerUnit;

    /// <inheritdoc />
    public int CompareTo(Money other) => Count.CompareTo(other.Count);

    int IComparable.CompareTo(object? obj) => obj is Money other ? CompareTo(other) : 1;

    /// <summary>The sum.</summary>
    public static Money operator +(Money a, Money b) => new(checked(a.Count + b.Count));

    /// <summary>The difference.</summary>
    public static Money operator -(Money a, Money b) => new(checked(a.Count - b.Count));

    /// <summary>So many times the amount.</summary>
    public static Money operator *(Money a, long n) => new(checked(a.Count * n));

    /// <summary>True when less.</summary>
    public static bool operator <(Money a, Money b) => a.Count < b.Count;

    /// <summary>True when more.</summary>
    public static bool operator >(Money a, Money b) => a.Count > b.Count;

    /// <summary>True when no more.</summary>
    public static bool operator <=(Money a, Money b) => a.Count <= b.Count;

    /// <summary>True when no less.</summary>
    public static bool operator >=(Money a, Money b) => a.Count >= b.Count;

    /// <summary>Two decimals, or as many as the amount has up to four: <c>6.48</c>, <c>0.879</c>.</summary>
    public override string ToString() => Amount.ToString("0.00##", CultureInfo.InvariantCulture);
}
