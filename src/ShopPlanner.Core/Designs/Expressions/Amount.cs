using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Expressions;

/// <summary>A value of an expression: a bare number or a length (then in ticks, not yet rounded to whole ones).</summary>
/// <param name="Value">The number, or ticks of 3.125 µm.</param>
/// <param name="IsLength">True for a length.</param>
internal readonly record struct Amount(decimal Value, bool IsLength)
{
    public static Amount Of(Length length) => new(length.Ticks, true);

    public static Amount Of(decimal number) => new(number, false);

    /// <summary>To the nearest tick.</summary>
    public Length ToLength() => Length.FromTicks((long)Math.Round(Value, MidpointRounding.AwayFromZero));
}
