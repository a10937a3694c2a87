using System.Diagnostics.CodeAnalysis;

namespace ShopPlanner.Core.Measures;

/// <summary>What reading a text gave: a value, or the fault that says why there is none.</summary>
/// <typeparam name="T">The type read.</typeparam>
public readonly record struct Parsed<T>
    where T : struct
{
    private readonly T value;

    private Parsed(T value, Fault? fault)
    {
        this.value = value;
        Fault = fault;
    }

    /// <summary>Why there is no value; null when there is one.</summary>
    public Fault? Fault { get; }

    /// <summary>True when a value was read.</summary>
    [MemberNotNullWhen(false, nameof(Fault))]
    public bool Ok => Fault is null;

    /// <summary>The value read.</summary>
    /// <exception cref="InvalidOperationException">There is none: ask <see cref="Ok"/> first.</exception>
    public T Value => Ok ? value : throw new InvalidOperationException(Fault.ToString());

    /// <summary>A value.</summary>
    public static implicit operator Parsed<T>(T value) => From(value);

    /// <summary>A fault.</summary>
    public static implicit operator Parsed<T>(Fault fault) => From(fault);

    /// <summary>A value.</summary>
    internal static Parsed<T> From(T value) => new(value, null);

    /// <summary>A fault.</summary>
    internal static Parsed<T> From(Fault fault) => new(default, fault);
}
