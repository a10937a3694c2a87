namespace ShopPlanner.Core.Measures;

/// <summary>An area, exact: a 128-bit count of square ticks (a tick is 3.125 µm), so that the sheets of a large plan can be added
/// up. The default value is nothing. Arithmetic is checked.</summary>
public readonly record struct Area : IComparable<Area>, IComparable
{
    private const decimal TicksPerSquareInch = (decimal)Length.TicksPerInch * Length.TicksPerInch;
    private const decimal TicksPerSquareMetre = (decimal)Length.TicksPerMillimetre * Length.TicksPerMillimetre * 1_000_000;

    private Area(Int128 squareTicks) => SquareTicks = squareTicks;

    /// <summary>No area.</summary>
    public static Area Zero => default;

    /// <summary>The count of square ticks.</summary>
    public Int128 SquareTicks { get; }

    /// <summary>An area of so many square ticks.</summary>
    public static Area FromSquareTicks(Int128 squareTicks) => new(squareTicks);

    /// <summary>A rectangle's.</summary>
    public static Area Of(Length a, Length b) => new(checked((Int128)a.Ticks * b.Ticks));

    /// <summary>In square feet of 144 square inches, to 28 digits.</summary>
    public decimal ToSquareFeet() => (decimal)SquareTicks / (TicksPerSquareInch * 144);

    /// <summary>In square metres, exact.</summary>
    public decimal ToSquareMetres() => (decimal)SquareTicks / TicksPerSquareMetre;

    /// <inheritdoc />
    public int CompareTo(Area other) => SquareTicks.CompareTo(other.SquareTicks);

    int IComparable.CompareTo(object? obj) => obj is Area other ? CompareTo(other) : 1;

    /// <summary>The sum.</summary>
    public static Area operator +(Area a, Area b) => new(checked(a.SquareTicks + b.SquareTicks));

    /// <summary>The difference.</summary>
    public static Area operator -(Area a, Area b) => new(checked(a.SquareTicks - b.SquareTicks));

    /// <summary>So many times the area.</summary>
    public static Area operator *(Area a, long n) => new(checked(a.SquareTicks * n));

    /// <summary>The solid of this face and a thickness.</summary>
    public static Volume operator *(Area a, Length thickness) => Volume.Of(a, thickness);

    /// <summary>True when smaller.</summary>
    public static bool operator <(Area a, Area b) => a.SquareTicks < b.SquareTicks;

    /// <summary>True when larger.</summary>
    public static bool operator >(Area a, Area b) => a.SquareTicks > b.SquareTicks;

    /// <summary>True when no larger.</summary>
    public static bool operator <=(Area a, Area b) => a.SquareTicks <= b.SquareTicks;

    /// <summary>True when no smaller.</summary>
    public static bool operator >=(Area a, Area b) => a.SquareTicks >= b.SquareTicks;

    /// <summary>Square metres with their unit, for logs and test messages.</summary>
    public override string ToString() => FormattableString.Invariant($"{ToSquareMetres():0.######} m²");
}
