using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Common;

/// <summary>Nothing to report beyond success.</summary>
public sealed record Done
{
    /// <summary>The only value.</summary>
    public static Done Value { get; } = new();
}

/// <summary>How asking for something ended.</summary>
public enum OutcomeKind
{
    /// <summary>It was done, wholly.</summary>
    Ok,

    /// <summary>What was given is wrong; nothing was changed.</summary>
    Faulty,

    /// <summary>Somebody else changed the same thing first; nothing was changed. The faults say what stands there now.</summary>
    Conflict,

    /// <summary>There is no such thing (any more); nothing was changed.</summary>
    Missing,
}

/// <summary>What a service answers: a value when it was done, else the reasons. Everything is done or nothing is.</summary>
/// <typeparam name="T">The value's type.</typeparam>
/// <param name="Kind">How it ended.</param>
/// <param name="Value">Present exactly when <see cref="Kind"/> is <see cref="OutcomeKind.Ok"/>.</param>
/// <param name="Faults">Why not; empty when done.</param>
public sealed record Outcome<T>(OutcomeKind Kind, T? Value, ImmutableArray<Fault> Faults)
    where T : class
{
    /// <summary>True when it was done.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool Ok => Kind == OutcomeKind.Ok;

    /// <summary>Done, with a value.</summary>
    public static implicit operator Outcome<T>(T value) => new(OutcomeKind.Ok, value, []);
}

/// <summary>Makes outcomes.</summary>
public static class Outcome
{
    /// <summary>What was given is wrong.</summary>
    public static Outcome<T> Faulty<T>(params IEnumerable<Fault> faults)
        where T : class => new(OutcomeKind.Faulty, null, [.. faults]);

    /// <summary>Somebody else was first.</summary>
    public static Outcome<T> Conflict<T>(params IEnumerable<Fault> faults)
        where T : class => new(OutcomeKind.Conflict, null, [.. faults]);

    /// <summary>There is no such thing.</summary>
    /// <param name="what">What was asked for, e.g. <c>project</c>.</param>
    public static Outcome<T> Missing<T>(string what)
        where T : class => new(OutcomeKind.Missing, null, [new Fault(what, "", "is no longer there")]);
}
