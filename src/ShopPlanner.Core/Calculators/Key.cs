using System.Collections.Immutable;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Keys in few words. A key without a usual text must be given, unless it is <see cref="Optional"/>.</summary>
internal static class Key
{
    /// <summary>A length of more than zero.</summary>
    public static FormKey Length(string name, string label, string? usual = null, string? least = null, string? most = null) =>
        Of(name, label, KeyKind.Length, usual, least, most);

    /// <summary>A length of zero or more.</summary>
    public static FormKey LengthOrZero(string name, string label, string? usual = null, string? most = null) =>
        Of(name, label, KeyKind.LengthOrZero, usual, null, most);

    /// <summary>A whole number.</summary>
    public static FormKey Count(string name, string label, string? usual = null, string? least = null, string? most = null) =>
        Of(name, label, KeyKind.Count, usual, least, most);

    /// <summary>A number.</summary>
    public static FormKey Number(string name, string label, string? usual = null, string? least = null, string? most = null) =>
        Of(name, label, KeyKind.Number, usual, least, most);

    /// <summary>A quantity with a unit.</summary>
    public static FormKey Quantity(
        string name,
        string label,
        QuantityKind kind,
        string? usual = null,
        string? least = null,
        string? most = null
    ) => Of(name, label, KeyKind.Quantity, usual, least, most) with { Quantity = kind };

    /// <summary>One of some words.</summary>
    public static FormKey Choice(string name, string label, string? usual, params ImmutableArray<FormChoice> choices) =>
        Of(name, label, KeyKind.Choice, usual, null, null) with
        {
            Choices = choices,
        };

    /// <summary>A word or size.</summary>
    public static FormKey Text(string name, string label, string usual) => Of(name, label, KeyKind.Text, usual, null, null);

    /// <summary>The key, which may be left out.</summary>
    public static FormKey Optional(this FormKey key) => key with { Optional = true };

    /// <summary>The key with a line of help.</summary>
    public static FormKey Hint(this FormKey key, string hint) => key with { Hint = char.ToUpperInvariant(hint[0]) + hint[1..] };

    private static FormKey Of(string name, string label, KeyKind kind, string? usual, string? least, string? most) =>
        new(name, label, kind)
        {
            Default = usual,
            Least = least,
            Most = most,
        };
}
