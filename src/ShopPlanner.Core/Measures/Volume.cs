namespace ShopPlanner.Core.Measures;

/// <summary>A volume, exact: a 128-bit count of cubic ticks (a tick is 3.125 µm). The default value is nothing. Arithmetic is
/// checked.</summary>
public readonly record struct Volume : IComparable<Volume>, IComparable
{
    private const decimal TicksPerCubicInch = (decimal)Length.TicksPerInch * Length.TicksPerInch * Length.TicksPerInch;

    private const decimal TicksPerCubicMetre =
        (decimal)Length.TicksPerMillimetre * Length.TicksPerMillimetre * Length.TicksPerMillimetre * 1_000_000_000;

    private Volume(Int128 cubicTicks) => CubicTicks = cubicTicks;

    /// <summary>No volume.</summary>
    public static Volume Zero => default;

    /// <summary>The count of cubic ticks.</summary>
    public Int128 CubicTicks { get; }

    /// <summary>The solid of a face and a thickness.</summary>
    public static Volume Of(Area face, Length thickness) => new(checked(face.SquareTicks * thickness.Ticks));

    /// <summary>In board feet of 144 cubic inches, to 28 digits.</summary>
    public decimal ToBoardFeet() => (decimal)CubicTicks / (TicksPerCubicInch * 144);

    /// <summary>In cubic metres, to 28 digits.</summary>
    public decimal ToCubicMetres() => (decimal)CubicTicks / TicksPerCubicMetre;

    /// <inheritdoc />
    public int CompareTo(Volume other) => CubicTicks.CompareTo(other.CubicTicks);

    int IComparable.CompareTo(object? obj) => obj is Volume other ? CompareTo(other) : 1;

    /// <summary>The sum.</summary>
    public static Volume operator +(Volume a, Volume b) => new(checked(a.CubicTicks + b.CubicTicks));

    /// <summary>The difference.</summary>
    public static Volume operator -(Volume a, Volume b) => new(checked(a.CubicTicks - b.CubicTicks));

    /// <summary>So many times the volume.</summary>
    public static Volume operator *(Volume a, long n) => new(checked(a.CubicTicks * n));

    /// <summary>True when smaller.</summary>
    public static bool operator <(Volume a, Volume b) => a.CubicTicks < b.CubicTicks;

    /// <summary>True when larger.</summary>
    public static bool operator >(Volume a, Volume b) => a.CubicTicks > b.CubicTicks;

    /// <summary>True when no larger.</summary>
    public static bool operator <=(Volume a, Volume b) => a.CubicTicks <= b.CubicTicks;

    /// <summary>True when no smaller.</summary>
    public static bool operator >=(Volume a, Volume b) => a.CubicTicks >= b.CubicTicks;

    /// <summary>Cubic metres with their unit, for logs and test messages.</summary>
    public override string ToString() => FormattableString.Invariant($"{ToCubicMetres():0.#########} m³");
}
